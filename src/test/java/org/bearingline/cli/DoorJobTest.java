package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** A framed door from its job file to files on the disk, and what is refused of it. */
class DoorJobTest {

  private static final Path DOOR = Path.of("output-samples/garden-room-door/job.yaml");

  @TempDir Path folder;

  private CommandRun layout(Path job) {
    return CommandRun.of("layout", job.toString(), "--into", folder.resolve("out").toString());
  }

  private CommandRun changed(String from, String to) throws IOException {
    String text = Files.readString(DOOR);
    assertTrue(text.contains(from), from);
    return layout(Files.writeString(folder.resolve("job.yaml"), text.replace(from, to)));
  }

  @Test
  void theDoorHasItsPanelAndItsCutList() throws IOException {
    CommandRun run = layout(DOOR);
    assertEquals(0, run.status(), run.err());
    for (String name : new String[] {"panel.dxf", "panel-card.pdf", "job-card.pdf"}) {
      assertTrue(Files.exists(folder.resolve("out").resolve(name)), name);
    }
    String rail = Files.readString(folder.resolve("out/top-rail.dxf"));
    assertTrue(rail.contains("GROOVE"));
    String report = Files.readString(folder.resolve("out/report.json"));
    assertTrue(report.contains("\"cutList\"") && report.contains("\"packing\""), report);
    // Stiles 33 in by 2-1/4 in, sawn to size: 838.2 by 57.15 mm.
    assertTrue(report.contains("838.2") && report.contains("57.15"), report);
  }

  /** Plywood stays 1/32 in off every floor: 16 in + 2 (3/8 in − 1/32 in) = 423.8625 mm. */
  @Test
  void aSheetPanelByTheClosedFormula() throws IOException {
    CommandRun run =
        changed(
            "    sawn: quarter\n    moisture: 8%\n    humidity: [35%, 60%]\n",
            "    species: plywood\n");
    // The rack holds no plywood.
    assertTrue(run.err().contains("no board of its material"), run.err());
    String text = Files.readString(DOOR);
    String sheet =
        text.substring(0, text.indexOf("# What lies")).replace("sawn: quarter", "species: plywood");
    assertEquals(0, layout(Files.writeString(folder.resolve("sheet.yaml"), sheet)).status());
    String report = Files.readString(folder.resolve("out/report.json"));
    assertTrue(report.contains("423.8625"), report);
    assertTrue(report.contains("\"packing\" : null"), report);
  }

  /**
   * Wood Handbook (FPL-GTR-190), equation 13-2 with the radial coefficient of white oak, 0.00180:
   * from 8 % to the air's driest and dampest. Each side moves by half of it: what is held falls by
   * half the shrinkage from the day the panel is put in.
   */
  @Test
  void theReportSaysHowThePanelSits() throws IOException {
    CommandRun run = layout(DOOR);
    assertTrue(run.out().contains("driest to dampest: "), run.out());
    // Every JSON is YAML too.
    Object report =
        new Load(LoadSettings.builder().build())
            .loadFromString(Files.readString(folder.resolve("out/report.json")));
    Object panel = at(report, "parts", 3, "panel");
    double wide = number(panel, "made", "width");
    double driest = number(panel, "moisture", "driest");
    double dampest = number(panel, "moisture", "dampest");
    // Table 4-2 of the handbook: 7.0 and 11.0 % at 20 C, 35 and 60 % relative humidity.
    assertEquals(7.0, driest, 0.15);
    assertEquals(11.0, dampest, 0.15);
    assertEquals(wide * 0.00180 * (8 - driest), number(panel, "shrinks"), 1e-6);
    assertEquals(wide * 0.00180 * (dampest - 8), number(panel, "swells"), 1e-6);
    assertEquals(4, ((List<?>) at(panel, "seats")).size());
    for (Object seat : (List<?>) at(panel, "seats")) {
      double held = number(seat, "driest", "held");
      assertTrue(held >= number(panel, "leastSeat"), seat.toString());
      if (at(seat, "side").equals("left")) {
        double lost = number(seat, "assembled", "held") - held;
        assertEquals(number(panel, "shrinks") / 2, lost, 1e-6);
        double gap = number(seat, "driest", "gap");
        assertEquals(number(panel, "grooveDepth"), held + gap, 1e-6);
      }
    }
  }

  private static Object at(Object tree, Object... steps) {
    Object here = tree;
    for (Object step : steps) {
      here =
          step instanceof Integer index
              ? ((List<?>) here).get(index)
              : ((Map<?, ?>) here).get(step);
    }
    return here;
  }

  private static double number(Object tree, Object... steps) {
    return ((Number) at(tree, steps)).doubleValue();
  }

  @Test
  void aSingleShapeHasNoCutList() throws IOException {
    CommandRun.of("layout", "arched-rail", "--into", folder.resolve("one").toString());
    assertFalse(Files.exists(folder.resolve("one/job-card.pdf")));
    assertFalse(Files.readString(folder.resolve("one/report.json")).contains("cutList"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '$',
      value = {
        "bearing: 1-1/8in, width | bearing: 1-5/8in, width | job.yaml:34:13: ",
        "humidity: [35%, 60%] | humidity: [20%, 95%] | job.yaml:34:13: ",
        "moisture: 8% | moisture: 20% | job.yaml:37:15: ",
        "sawn: quarter | gap-across: 0in | job.yaml:36:17: the panel cannot move",
        "sawn: quarter | sawn: crooked | job.yaml:36:11: ",
        "top-rail: top-rail | top-rail: top-rial | did you mean top-rail?",
        "width: 16in, height | width: 15in, height | job.yaml:30:15: the top rail is",
        "bearing: 1-1/8in, width | bearing: 2in, width | job.yaml:34:13: ",
        "length: 84in | length: 30in | offcuts",
        "paper: Letter | template-thickness: 1/2in | of its material and thickness is listed",
        "for: templates | for: jigs | “jigs” is nothing a board is for",
        "length: 44in, width | long: 44in, width | job.yaml:45:25: ",
        "length: 48in | length: 0in | job.yaml:47:53: give a length above 0",
        "thickness: 1/4in} | quantity: 0} | job.yaml:47:",
        "opening: 33in | opening: 32in | job.yaml:32:13: this stile is 32 in long",
        "stiles: stile | stiles: stil | did you mean stile?",
        "stiles: stile | left-stile: bottom-rail | this upright is 16 in long between",
        "quantity: 2 | quantity: 1 | job.yaml:32:13: a frame has two of these",
        "tenon: 0in | tenon: 0in, groove: 1/4in | and the measure “groove” says 1/4 in",
        "sawn: quarter | stile-grooves: open | job.yaml:36:20: “open” is no way to groove a stile",
        "sawn: quarter | left-stile: stile | job.yaml:36:17: “stiles” names both",
        "sawn: quarter | foot: 1/4in | too little for the groove",
        "sawn: quarter | tongue: 1in | job.yaml:36:5: ",
        "moisture: 8% | fibres: askew | job.yaml:37:13: ",
        "width: 1/4in} | width: 1/4in, into: 1/4in} | job.yaml:34:66: this cutter goes 3/8 in",
      })
  void whatCannotBeIsRefusedAtItsLine(String from, String to, String says) throws IOException {
    CommandRun run = changed(from, to);
    assertEquals(2, run.status(), run.out());
    String wanted = says.equals("offcuts") ? "not everything can be cut from these" : says;
    assertTrue(run.err().contains(wanted), run.err());
    assertEquals(1, run.err().strip().lines().count(), run.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }
}
