package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One of several parts on a sheet, chosen by its number, against the same part drawn alone. */
class OutlineChoiceTest {

  @TempDir Path folder;

  /** A plate of 150 × 100 mm, a rail of 200 × 60 mm with a curve, an eye of 50 × 130 mm. */
  private static final List<String> SVG =
      List.of(
          "M10 10H160V110H10Z M40 40H90V70H40Z M110 60a10 10 0 0 0 20 0a10 10 0 0 0 -20 0Z",
          "M10 130H210V150C170 150 150 190 110 190C70 190 50 150 10 150Z",
          "M230 50a25 25 0 0 1 50 0v80a25 25 0 0 1 -50 0Z M250 50a5 5 0 0 0 10 0a5 5 0 0 0 -10 0Z");

  private static String lines(int... xy) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i + 3 < xy.length; i += 2) {
      all.append(
          "0\nLINE\n8\n0\n10\n%d\n20\n%d\n11\n%d\n21\n%d\n"
              .formatted(xy[i], 200 - xy[i + 1], xy[i + 2], 200 - xy[i + 3]));
    }
    return all.toString();
  }

  private static String spline(int... xy) {
    StringBuilder all = new StringBuilder("0\nSPLINE\n8\n0\n70\n0\n71\n3\n72\n8\n73\n4\n74\n0\n");
    all.append("40\n0\n".repeat(4)).append("40\n1\n".repeat(4));
    for (int i = 0; i < xy.length; i += 2) {
      all.append("10\n%d\n20\n%d\n30\n0\n".formatted(xy[i], 200 - xy[i + 1]));
    }
    return all.toString();
  }

  private static String arc(int x, int y, int radius, int from, int to) {
    return "0\nARC\n8\n0\n10\n%d\n20\n%d\n40\n%d\n50\n%d\n51\n%d\n"
        .formatted(x, 200 - y, radius, from, to);
  }

  private static String circle(int x, int y, int radius) {
    return "0\nCIRCLE\n8\n0\n10\n%d\n20\n%d\n40\n%d\n".formatted(x, 200 - y, radius);
  }

  /** The same in loose lines. */
  private static final List<String> DXF =
      List.of(
          lines(10, 10, 160, 10, 160, 110, 10, 110, 10, 10)
              + circle(120, 60, 10)
              + lines(40, 40, 90, 40, 90, 70, 40, 70, 40, 40),
          spline(210, 150, 170, 150, 150, 190, 110, 190)
              + lines(10, 150, 10, 130, 210, 130, 210, 150)
              + spline(110, 190, 70, 190, 50, 150, 10, 150),
          lines(230, 50, 230, 130)
              + circle(255, 50, 5)
              + arc(255, 50, 25, 0, 180)
              + arc(255, 130, 25, 180, 360)
              + lines(280, 50, 280, 130));

  private Path svg(String name, String inside) throws IOException {
    return Files.writeString(
        folder.resolve(name),
        "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='200mm' viewBox='0 0 300"
            + " 200'><g fill='none' stroke='black'>"
            + inside
            + "</g></svg>");
  }

  private static String path(String d) {
    return "<path d='" + d + "'/>";
  }

  /** Parts of a sheet, or one of them; of SVG the first two in one path, as they are saved. */
  private Path sheet(String kind) throws IOException {
    return kind.equals("svg")
        ? svg("sheet.svg", path(SVG.get(2)) + path(SVG.get(0) + SVG.get(1)))
        : dxf("sheet.dxf", DXF.get(1) + DXF.get(2) + DXF.get(0));
  }

  private Path alone(String kind, int part) throws IOException {
    return kind.equals("svg")
        ? svg("alone.svg", path(SVG.get(part)))
        : dxf("alone.dxf", DXF.get(part));
  }

  private Path dxf(String name, String entities) throws IOException {
    return Files.writeString(
        folder.resolve(name),
        "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n"
            + entities
            + "0\nENDSEC\n0\nEOF\n");
  }

  private JsonNode report(Path drawing, String... options) throws IOException {
    List<String> command = new ArrayList<>(List.of("layout", drawing.toString()));
    command.addAll(List.of(options));
    command.addAll(List.of("--bit=1/4in", "--into", folder.resolve("out").toString()));
    CommandRun run = CommandRun.of(command.toArray(String[]::new));
    assertEquals(0, run.status(), run.err());
    return new ObjectMapper()
        .readTree(folder.resolve("out/report.json").toFile())
        .path("parts")
        .path(0);
  }

  /** Every value with its path. */
  private static void collect(String path, JsonNode node, Map<String, JsonNode> into) {
    if (node.isValueNode()) {
      into.put(path, node);
    }
    node.properties().forEach(one -> collect(path + "/" + one.getKey(), one.getValue(), into));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      collect(path + "/" + i, node.get(i), into);
    }
  }

  private static void assertAlike(JsonNode alone, JsonNode chosen) {
    Map<String, JsonNode> expected = new TreeMap<>();
    Map<String, JsonNode> found = new TreeMap<>();
    collect("", alone, expected);
    collect("", chosen, found);
    found.keySet().removeIf(path -> path.startsWith("/drawing/leftOut"));
    assertEquals(expected.keySet(), found.keySet());
    assertTrue(expected.size() > 40, expected.toString());
    double worst = 0;
    for (Map.Entry<String, JsonNode> one : expected.entrySet()) {
      JsonNode other = found.get(one.getKey());
      if (one.getValue().isNumber()) {
        double off = Math.abs(one.getValue().asDouble() - other.asDouble());
        assertEquals(0, off, 1e-6, one.getKey());
        worst = Math.max(worst, off);
      } else {
        assertEquals(
            one.getValue().asText().replace("alone", "sheet"),
            other.asText().replace("alone", "sheet"),
            one.getKey());
      }
    }
    System.out.printf("%d values, %.1e apart at most%n", expected.size(), worst);
  }

  /** Plate, rail and eye are 13,186, 8,000 and 5,885 mm² large: their numbers. */
  @ParameterizedTest
  @CsvSource({"svg, 0", "svg, 1", "svg, 2", "dxf, 0", "dxf, 1", "dxf, 2"})
  void theChosenPartIsTheSameAsThePartDrawnAlone(String kind, int part) throws IOException {
    JsonNode chosen = report(sheet(kind), "--outline=" + (part + 1));
    assertAlike(report(alone(kind, part)), chosen);
    assertEquals("2 other outlines", chosen.at("/drawing/leftOut/0").asText());
  }

  /** The middle of the rail is not that of the sheet; one of its corners is 0.2 mm off. */
  @ParameterizedTest
  @ValueSource(strings = {"left-right", "top-bottom"})
  void theChosenPartIsMirroredInItsOwnMiddle(String how) throws IOException {
    String part =
        how.equals("left-right")
            ? "M10 130H210V150C170 150 150 190 110 190C70 190 50 150 10 150.2Z"
            : "M10 120H200C220 130 220 161 200 170.2H10Z";
    Path sheet = svg("sheet.svg", path(SVG.get(0)) + path(SVG.get(2)) + path(part));
    JsonNode chosen = report(sheet, "--outline=2", "--symmetric=" + how);
    assertAlike(report(svg("alone.svg", path(part)), "--symmetric=" + how), chosen);
    assertTrue(chosen.at("/drawing/symmetryMove").asDouble() > 0.05);
    CommandRun all = CommandRun.of("reach", sheet.toString(), "--symmetric=" + how);
    assertTrue(all.err().contains("holds 3 separate outlines (1: 150.0 × 100.0 mm"), all.err());
  }

  /** At a sheet twice as wide the part is as large as drawn alone at twice its width. */
  @Test
  void theWidthIsThatOfTheSheet() throws IOException {
    JsonNode chosen = report(sheet("svg"), "--outline=3", "--width=540mm");
    assertAlike(report(alone("svg", 2), "--width=100mm"), chosen);
  }

  /** A part laid into the opening of a frame, and a line that the fill of a plate covers. */
  @ParameterizedTest
  @CsvSource({"0, 1", "1, 3", "2, 2"})
  void partsInsideEachOtherAreToldApart(int part, int number) throws IOException {
    List<String> parts =
        List.of(
            path("M10 10H160V190H10Z M30 30V170H140V30Z"),
            path("M60 60H110V140H60Z M80 80H90V100H80Z"),
            "<path fill='black' d='M200 20H290V120H200Z M201 40H240V80H201Z'/>");
    Path sheet = svg("sheet.svg", parts.get(1) + parts.get(2) + parts.get(0));
    JsonNode chosen = report(sheet, "--outline=" + number);
    assertAlike(report(svg("alone.svg", parts.get(part))), chosen);
    assertEquals(part == 2 ? 1 : 0, chosen.at("/drawing/notes").size());
  }

  @Test
  void shapesAreUnitedAndThenChosen() throws IOException {
    String united =
        "<g fill='black'><rect x='20' y='20' width='80' height='30'/>"
            + "<circle cx='100' cy='35' r='20'/></g>";
    Path sheet = svg("sheet.svg", path(SVG.get(1)) + path(SVG.get(2)) + united);
    JsonNode chosen = report(sheet, "--unite", "--outline=3");
    assertAlike(report(svg("alone.svg", united), "--unite"), chosen);
    assertEquals(2, chosen.at("/drawing/united/shapes").asInt());
  }

  @Test
  void theRefusalNumbersTheOutlines() throws IOException {
    for (String kind : List.of("svg", "dxf")) {
      CommandRun run = CommandRun.of("reach", sheet(kind).toString());
      assertEquals(2, run.status());
      assertTrue(
          run.err().contains("holds 3 separate outlines (1: 150.0 × 100.0 mm round x 85, y ")
              && run.err().contains("; 2: 200.0 × ")
              && run.err().contains("; 3: 50.0 × 130.0 mm round x 255, y ")
              && run.err().contains("choose one with --outline 1, or its layer with --layer"),
          run.err());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4|the drawing holds 3 separate outlines and none of number 4; choose from 1, the",
        "0|“0” is no number of an outline; write 1 for the largest",
        "-1|“-1” is no number of an outline",
        "rail|“rail” is no number of an outline",
        "1.5|“1.5” is no number of an outline",
      })
  void aNumberThatIsNoneIsRefusedWithItsPlace(String number, String says) throws IOException {
    Path sheet = sheet("svg");
    CommandRun run = CommandRun.of("reach", sheet.toString(), "--outline=" + number);
    assertEquals(2, run.status());
    assertTrue(run.err().startsWith("bearingline: --outline: " + says), run.err());
    assertEquals(1, run.err().strip().lines().count());
    Path job = folder.resolve("job.yaml");
    Files.writeString(
        job, "parts:\n  - {name: rail, drawing: sheet.svg, outline: " + number + "}\n");
    CommandRun written = CommandRun.of("reach", job.toString());
    assertEquals(2, written.status());
    assertTrue(written.err().contains("job.yaml:2:47: " + says), written.err());
  }

  @Test
  void aSingleOutlineIsTheFirst() throws IOException {
    Path alone = alone("dxf", 0);
    JsonNode first = report(alone, "--outline=1");
    assertAlike(report(alone), first);
    assertEquals(0, first.at("/drawing/leftOut").size());
    CommandRun second = CommandRun.of("reach", alone.toString(), "--outline=2");
    assertTrue(
        second.err().contains("--outline: the drawing holds a single outline and none"),
        second.err());
    CommandRun shape = CommandRun.of("reach", "cloud-lift-rail", "--outline=1");
    assertTrue(shape.err().startsWith("bearingline: --outline: this belongs to"), shape.err());
    Path picture = Files.write(folder.resolve("scan.png"), new byte[] {1, 2, 3});
    CommandRun scan =
        CommandRun.of("keep", picture.toString(), "--outline=1", "--into", folder.toString());
    assertTrue(scan.err().contains("--outline: this is for a drawing"), scan.err());
  }

  @Test
  void aJobFileMakesAllPartsOfOneSheet() throws IOException {
    sheet("dxf");
    Path job = folder.resolve("job.yaml");
    StringBuilder text = new StringBuilder("parts:\n");
    for (int i = 1; i <= 3; i++) {
      text.append("  - {name: part-%d, drawing: sheet.dxf, outline: %d}\n".formatted(i, i));
    }
    Files.writeString(job, text);
    report(job);
    JsonNode parts =
        new ObjectMapper().readTree(folder.resolve("out/report.json").toFile()).path("parts");
    assertEquals(3, parts.size());
    double[] widths = {150, 200, 50};
    for (int i = 0; i < 3; i++) {
      assertEquals(widths[i], parts.get(i).at("/bounds/width").asDouble(), 1e-6);
    }
    Files.writeString(job, "parts:\n  - {name: part, drawing: sheet.dxf}\n");
    CommandRun none = CommandRun.of("reach", job.toString());
    assertTrue(none.err().contains("choose one with --outline 1"), none.err());
    Files.writeString(job, "parts:\n  - {name: rail, shape: cloud-lift-rail, outline: 1}\n");
    CommandRun shape = CommandRun.of("reach", job.toString());
    assertTrue(shape.err().contains("outline belongs to a drawing"), shape.err());
  }

  @Test
  void keepShowsTheNumbersAndKeepsTheChosenOne() throws IOException {
    String sheet = sheet("svg").toString();
    String into = folder.resolve("kept").toString();
    CommandRun run = CommandRun.of("keep", sheet, "--into", into);
    assertEquals(2, run.status());
    assertTrue(run.err().contains("sheet-preview.png show which)"), run.err());
    assertFalse(Files.exists(folder.resolve("kept/sheet.yaml")));
    String preview = Files.readString(folder.resolve("kept/sheet-preview.svg"));
    for (String shown : List.of("\"1\"", "\"2\"", "\"3\"", "2: 200.0 × 60.0 mm round x 110, y 1")) {
      assertTrue(preview.contains(shown), shown);
    }
    CommandRun kept = CommandRun.of("keep", sheet, "--outline=2", "--units=mm", "--into", into);
    assertEquals(0, kept.status(), kept.err());
    assertTrue(kept.out().contains("200 mm wide and "), kept.out());
    assertTrue(kept.out().contains("Left out of the drawing: 2 other outlines."), kept.out());
    assertFalse(
        Files.readString(folder.resolve("kept/sheet-preview.svg")).contains("\"2\""), "a number");
  }

  /** Two squares that hang together by a line drawn there and back are one stroke. */
  @Test
  void outlinesOfOneStrokeAreRefused() throws IOException {
    Path sheet = svg("sheet.svg", path("M10 10H50V30H100V10H140V50H100V30H50V50H10Z"));
    CommandRun run = CommandRun.of("reach", sheet.toString(), "--outline=1");
    assertEquals(2, run.status(), run.out());
    assertTrue(
        run.err().contains("--outline: outline 1 is drawn in one stroke with another; draw"),
        run.err());
  }
}
