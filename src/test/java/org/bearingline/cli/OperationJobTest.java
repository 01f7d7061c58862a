package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bearingline.external.ExternalProgram;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parts whose operations a job names, from the command to files read back. */
class OperationJobTest {

  private static final String TOP =
      """
      job: Trial
      stock: {thickness: 3/4in}
      template-thickness: 3/4in
      parts:
        - name: front
          shape: cloud-lift-rail
          measures: {length: 15-1/2in, width: 5in}
          operations:
      """;

  @TempDir Path folder;

  private CommandRun layout(String operations) throws IOException {
    Path job = folder.resolve("job.yaml");
    Files.writeString(job, TOP + operations.indent(6));
    return layoutOf(job);
  }

  private CommandRun layoutOf(Path job) {
    return CommandRun.of("layout", job.toString(), "--into", folder.resolve("out").toString());
  }

  /** Each template of a part has its picture on the card, under what it makes. */
  @Test
  void theCardShowsTheSecondTemplateToo() {
    CommandRun run = layoutOf(Path.of("output-samples/drop-in-plate/job.yaml"));
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("its tightest place takes a bit of 1/2 in at most."), run.out());
    String card =
        ExternalProgram.named("pdftotext").run(folder.resolve("out/bench-top-card.pdf"), "-");
    assertTrue(card.contains("Template 2: opening"), card);
    assertTrue(card.contains("2 opening"), card);
    assertFalse(card.contains("never comes onto"), card);
  }

  /**
   * Cutting edge 1-1/2, bearing 3/16 high and half of it on the template, 3/4 in of plate: on it
   * from 1-1/2 + 3/32 - 3/4 = 27/32 in deep, and the stock is 3/4 in.
   */
  @Test
  void aPartWithoutOperationsTellsHowItsBitRidesTheTemplate() {
    CommandRun run = layoutOf(Path.of("cloud-lift-rail"));
    assertEquals(0, run.status(), run.err());
    String card =
        ExternalProgram.named("pdftotext")
            .run(folder.resolve("out/cloud-lift-rail-card.pdf"), "-")
            .replaceAll("\\s+", " ");
    assertTrue(card.contains("above it until the bit is 27/32 in deep"), card);
    assertTrue(card.contains("stands out of the work by 3/32 in"), card);
  }

  @Test
  void oneTemplateMakesTheDrawerFrontOnBothFaces() {
    CommandRun run = layoutOf(Path.of("output-samples/drawer-front/job.yaml"));
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("template 1 makes outline, pull and bottom groove."), run.out());
    assertFalse(Files.exists(folder.resolve("out/drawer-front-template-2.svg")));
    String script =
        """
        import sys, ezdxf, ezdxf.path
        from ezdxf.math import BoundingBox2d
        doc = ezdxf.readfile(sys.argv[1])
        assert not doc.audit().errors
        sizes = []
        for e in doc.modelspace().query('LWPOLYLINE[layer=="TEMPLATE"]'):
            box = BoundingBox2d(ezdxf.path.make_path(e).flattening(0.0001))
            sizes.append((box.size.x, box.size.y))
        sizes.sort()
        for x, y in sizes:
            print(repr(float(x)), repr(float(y)))
        """;
    String[] sizes =
        ExternalProgram.pythonWith("ezdxf")
            .run("-c", script, folder.resolve("out/drawer-front.dxf"))
            .strip()
            .split("\\s+");
    assertEquals(6, sizes.length, "plate, pull and groove");
    // The pull is flush: 2-1/2 in between centres and 1-1/4 in wide.
    assertEquals(3.75 * 25.4, Double.parseDouble(sizes[0]), 0.001);
    assertEquals(1.25 * 25.4, Double.parseDouble(sizes[1]), 0.001);
    // Collar offset rule, common practice: opening = slot + (OD − d) = slot + 1/4 in.
    assertEquals(14.5 * 25.4, Double.parseDouble(sizes[2]), 0.001);
    assertEquals(0.5 * 25.4, Double.parseDouble(sizes[3]), 0.001);
  }

  @Test
  void paperForTheBackIsPrintedMirroredAndSaysSo() throws IOException {
    CommandRun run =
        layout(
            """
            - recess: catch
              face: B
              circle: {centre: [3in, 3in], diameter: 2in}
              depth: 1/4in
              bit: 1/2in
              cutting-length: 1/2in
            """);
    assertEquals(0, run.status(), run.err());
    String words =
        ExternalProgram.named("pdftotext").run(folder.resolve("out/front-sheets.pdf"), "-");
    assertTrue(words.replaceAll("\\s+", " ").contains("Printed mirrored"), words);
  }

  @Test
  void theCardTellsTheOrderOfWorkAndTheReportItsFigures() throws IOException {
    CommandRun run = layoutOf(Path.of("output-samples/drop-in-plate/job.yaml"));
    assertEquals(0, run.status(), run.err());
    // A woodworking programme's tip sheet on plates: the recess first, then the opening.
    String words =
        ExternalProgram.named("pdftotext")
            .run("-layout", folder.resolve("out/bench-top-card.pdf"), "-");
    String flat = words.replaceAll("\\s+", " ");
    assertTrue(flat.matches(".*Order of work .* 1 ledge A .* 2 opening .*"), flat);
    // 1-1/2 in in equal passes of 1/8 in: twelve, the stop coming down by 1/8 in from 1-3/8 in.
    assertTrue(flat.contains("12 × 1/8 in"), flat);
    assertTrue(flat.contains("1-3/8 in down"), flat);
    String report = Files.readString(folder.resolve("out/report.json"));
    assertTrue(report.indexOf("\"ledge\"") < report.indexOf("\"through opening\""), report);
    assertTrue(report.contains("\"grain\" : null"), "sheet stock has no grain");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "groove: g, bit: 2in, bearing: 1-1/2in, width: 1/4in, from-face: 3/4in | g",
        "recess: r, circle: {centre: [3in; 3in]; diameter: 2in}, depth: 3/4in | through the stock",
        "recess: r, circle: {centre: [0in; 3in]; diameter: 2in}, depth: 1/4in | over the edge",
        "hinge-cups: h, side: top, at: [3in], depth: 3/4in | through the other face",
        "ledge: l, around: none, width: 1in, depth: 1/4in | none",
        "recess: r, circle: {centre: [3in; 3in]; diameter: 1/4in}, depth: 1/4in, bit: 1/2in | r",
        "rabbet: r, depth: 1/4in | no operation"
      })
  void aMistakeGetsOneSentenceAndNothingIsWritten(String operation, String says)
      throws IOException {
    CommandRun run = layout("- {" + operation.replace(';', ',') + "}\n");
    assertEquals(2, run.status(), run.toString());
    assertEquals(1, run.err().strip().lines().count(), run.err());
    assertTrue(run.err().contains("job.yaml"), run.err());
    assertTrue(run.err().contains(says), run.err());
    assertFalse(Files.exists(folder.resolve("out/report.json")));
  }
}
