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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Filled shapes over each other in drawings that a command or a job file names. */
class UnitedDrawingTest {

  @TempDir Path folder;

  /** A plate of 100 × 60 mm, a circle of 20 mm over its upper right corner, and holes. */
  private static final String SVG =
      "<rect x='20' y='40' width='100' height='60'/><circle cx='120' cy='40' r='20'/>"
          + "<circle cx='120' cy='40' r='4'/><circle cx='40' cy='80' r='10'/>";

  private Path svg(String inside) throws IOException {
    return Files.writeString(
        folder.resolve("bracket.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='120mm' viewBox='0 0 200"
            + " 120'>"
            + inside
            + "</svg>");
  }

  /** The same, the plate of four loose lines. */
  private Path dxf() throws IOException {
    String line = "0\nLINE\n8\n0\n10\n%d\n20\n%d\n11\n%d\n21\n%d\n";
    String circle = "0\nCIRCLE\n8\n0\n10\n%d\n20\n%d\n40\n%d\n";
    return Files.writeString(
        folder.resolve("bracket.dxf"),
        "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n"
            + line.formatted(0, 0, 100, 0)
            + line.formatted(100, 60, 0, 60)
            + line.formatted(100, 0, 100, 60)
            + line.formatted(0, 60, 0, 0)
            + circle.formatted(100, 60, 20)
            + circle.formatted(100, 60, 4)
            + circle.formatted(20, 20, 10)
            + "0\nENDSEC\n0\nEOF\n");
  }

  private JsonNode report(List<String> options) throws IOException {
    List<String> command = new ArrayList<>(List.of("layout"));
    command.addAll(options);
    command.addAll(List.of("--bit=1/4in", "--into", folder.resolve("out").toString()));
    CommandRun run = CommandRun.of(command.toArray(String[]::new));
    assertEquals(0, run.status(), run.err());
    return new ObjectMapper()
        .readTree(folder.resolve("out").resolve("report.json").toFile())
        .path("parts")
        .path(0);
  }

  @Test
  void theRefusalNamesTheWish() throws IOException {
    for (Path drawing : List.of(svg(SVG), dxf())) {
      CommandRun run = CommandRun.of("reach", drawing.toString());
      assertEquals(2, run.status());
      assertTrue(
          run.err().contains("two outlines cross or touch each other at x ")
              && run.err().contains("ask for --unite to make one of them, or unite them in the"),
          run.err());
    }
  }

  /** Of the circle on the corner three quarters stand out. */
  @Test
  void anSvgAndADxfGiveTheSameBracket() throws IOException {
    double formula = 6000 + 0.75 * Math.PI * 400;
    for (Path drawing : List.of(svg(SVG), dxf())) {
      JsonNode part = report(List.of(drawing.toString(), "--unite"));
      JsonNode united = part.path("drawing").path("united");
      assertEquals(2, united.path("shapes").asInt());
      assertEquals(1, united.path("outlines").asInt());
      assertEquals(6000 + 400 * Math.PI, united.path("drawnArea").asDouble(), 1e-6);
      assertEquals(formula, united.path("area").asDouble(), 1e-6);
      assertEquals(120, part.path("bounds").path("width").asDouble(), 1e-9);
      assertEquals(80, part.path("bounds").path("height").asDouble(), 1e-9);
      assertEquals(4, part.path("drawing").path("lines").asInt());
      assertEquals(1, part.path("drawing").path("arcs").asInt());
      assertEquals(2, part.path("drawing").path("circles").asInt());
      assertEquals(1, part.path("drawing").path("drilled").asInt());
    }
  }

  @Test
  void whatWasUnitedIsSaid() throws IOException {
    CommandRun run = CommandRun.of("reach", svg(SVG).toString(), "--unite", "--units=mm");
    assertTrue(run.status() < 2, run.err());
    CommandRun keep =
        CommandRun.of(
            "keep",
            svg(SVG).toString(),
            "--unite",
            "--units=mm",
            "--into",
            folder.resolve("kept").toString());
    assertEquals(0, keep.status(), keep.err());
    assertTrue(
        keep.out()
            .contains(
                "2 shapes of 72.57 cm² in all were united into 1 of 69.42 cm²; what lay double"
                    + " counts once."),
        keep.out());
    CommandRun inches =
        CommandRun.of(
            "keep", svg(SVG).toString(), "--unite", "--into", folder.resolve("kept").toString());
    assertTrue(inches.out().contains("united into 1 of 10.76 in²"), inches.out());
    CommandRun apart =
        CommandRun.of(
            "keep",
            svg("<rect width='80' height='50'/>").toString(),
            "--unite",
            "--into",
            folder.resolve("kept").toString());
    assertTrue(apart.out().contains("Nothing was united"), apart.out());
  }

  @Test
  void aJobFileAsksForIt() throws IOException {
    svg(SVG);
    Path job = folder.resolve("job.yaml");
    String start = "parts:\n  - {name: bracket, drawing: bracket.svg, unite: ";
    Files.writeString(job, start + "yes}\n");
    assertEquals(2, report(List.of(job.toString())).at("/drawing/united/shapes").asInt());
    Files.writeString(job, start + "no}\n");
    CommandRun refused = CommandRun.of("reach", job.toString());
    assertTrue(refused.err().contains("--unite"), refused.err());
    Files.writeString(job, start + "all}\n");
    CommandRun wrong = CommandRun.of("reach", job.toString());
    assertEquals(2, wrong.status());
    assertTrue(wrong.err().contains("2:50: “all” is no answer here"), wrong.err());
    Files.writeString(job, "parts:\n  - {name: rail, shape: cloud-lift-rail, unite: yes}\n");
    CommandRun shape = CommandRun.of("reach", job.toString());
    assertTrue(shape.err().contains("unite belongs to a drawing"), shape.err());
    CommandRun named = CommandRun.of("reach", "cloud-lift-rail", "--unite");
    assertEquals(2, named.status());
    assertTrue(named.err().startsWith("bearingline: --unite: "), named.err());
  }

  @Test
  void whatIsNotUnitedIsRefusedInWords() throws IOException {
    String line = "<g fill='none' stroke='black'>" + SVG + "</g>";
    CommandRun lines = CommandRun.of("reach", svg(line).toString(), "--unite");
    assertEquals(2, lines.status());
    assertTrue(
        lines.err().contains("one of them without a fill at x ")
            && lines.err().contains("--unite takes filled shapes alone, so fill it"),
        lines.err());
    String touch = "<circle cx='40' cy='50' r='20'/><circle cx='80' cy='50' r='20'/>";
    CommandRun point = CommandRun.of("reach", svg(touch).toString(), "--unite");
    assertTrue(
        point
            .err()
            .contains(
                "two shapes hold together here by a point or next to nothing at x 60, y 50 of the"
                    + " file"),
        point.err());
    Path picture = Files.write(folder.resolve("scan.png"), new byte[] {1, 2, 3});
    CommandRun scan =
        CommandRun.of("keep", picture.toString(), "--unite", "--into", folder.toString());
    assertTrue(scan.err().contains("--unite: this is for a drawing"), scan.err());
    assertFalse(Files.exists(folder.resolve("scan.yaml")));
  }

  @Test
  void unitingGoesWithTheOtherWishes() throws IOException {
    JsonNode part =
        report(
            List.of(
                svg("<rect x='20' y='20' width='100' height='30'/><circle cx='20' cy='35' r='20'/>"
                        + "<circle cx='120.004' cy='35' r='20'/>")
                    .toString(),
                "--unite",
                "--symmetric=left-right",
                "--width=280mm"));
    assertEquals(280, part.path("bounds").path("width").asDouble(), 0.01);
    assertEquals(3, part.at("/drawing/united/shapes").asInt());
    assertTrue(part.at("/drawing/symmetryMove").asDouble() < 0.01);
  }
}
