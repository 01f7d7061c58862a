package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A drawing named as the source of a command or in a job file. */
class DrawnPartTest {

  private static final Path SAMPLE = Path.of("output-samples", "drawn-bracket");

  @TempDir Path folder;

  private static List<String> reach(String... args) {
    List<String> all = new ArrayList<>(List.of("reach"));
    all.addAll(List.of(args));
    CommandRun run = CommandRun.of(all.toArray(String[]::new));
    assertTrue(run.status() < 2, run.toString());
    return run.out().lines().toList();
  }

  /** The values of a JSON text with the path of each, texts left out. */
  private static List<String> names(String json, List<Double> numbers) throws IOException {
    List<String> names = new ArrayList<>();
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token.isNumeric()) {
          names.add(parser.getParsingContext().pathAsPointer().toString());
          numbers.add(parser.getDoubleValue());
        }
      }
    }
    return names;
  }

  /** One bracket drawn twice: with paths in SVG, with loose lines, an arc and a spline in DXF. */
  @ParameterizedTest
  @ValueSource(strings = {"1/2in", "1in", "1-1/2in"})
  void theSameBracketInSvgAndDxfGivesTheSameReport(String bit) throws IOException {
    List<Double> ofSvg = new ArrayList<>();
    List<Double> ofDxf = new ArrayList<>();
    List<String> names = names(report("drawing.svg", bit), ofSvg);
    assertEquals(names, names(report("drawing.dxf", bit), ofDxf));
    assertTrue(names.size() > 20, names.toString());
    double worst = 0;
    for (int i = 0; i < names.size(); i++) {
      boolean isArea = names.get(i).toLowerCase(Locale.ROOT).endsWith("area");
      // An area may differ by 0.01 mm along the whole of an edge, 1 m here.
      double off = Math.abs(ofSvg.get(i) - ofDxf.get(i)) / (isArea ? 1000 : 1);
      assertTrue(off < 0.01, bit + " " + names.get(i) + " differs by " + off);
      worst = Math.max(worst, off);
    }
    System.out.printf("%s: SVG and DXF differ by %.1e at most%n", bit, worst);
  }

  private String report(String drawing, String bit) throws IOException {
    Path into = folder.resolve(drawing.replace('.', '-'));
    CommandRun run =
        CommandRun.of(
            "layout",
            SAMPLE.resolve(drawing).toString(),
            "--sawn-edges=left,top",
            "--bit",
            bit,
            "--into",
            into.toString());
    assertEquals(0, run.status(), run.err());
    return Files.readString(into.resolve("report.json"));
  }

  private Path svg(String name, String frame, String inside) throws IOException {
    return Files.writeString(
        folder.resolve(name),
        "<svg xmlns='http://www.w3.org/2000/svg' " + frame + ">" + inside + "</svg>");
  }

  private static final String BOARD = "<path d='M0 0H60V10L45 20H15L0 10Z'/>";

  @Test
  void aDrawingWithoutUnitsIsSizedByTheMaker() throws IOException {
    String drawing = svg("board.svg", "viewBox='0 0 60 20'", BOARD).toString();
    CommandRun refused = CommandRun.of("reach", drawing);
    assertEquals(2, refused.status());
    assertTrue(refused.err().contains("--drawn-in"), refused.err());
    assertEquals("600 200", bounds(drawing, "--width", "600mm"));
    assertEquals("1500 500", bounds(drawing, "--height", "500mm"));
    assertEquals("60 20", bounds(drawing, "--drawn-in", "mm"));
    assertEquals("1524 508", bounds(drawing, "--drawn-in", "in"));
    // By CSS: 96 px, or 72 pt, are an inch.
    assertEquals("15.875 5.292", bounds(drawing, "--drawn-in", "px"));
    assertEquals("21.167 7.056", bounds(drawing, "--drawn-in", "PT"));
    assertEquals("600 200", bounds(drawing, "--width", "600mm", "--height", "200mm"));
    CommandRun both = CommandRun.of("reach", drawing, "--width", "600mm", "--height", "300mm");
    assertEquals(2, both.status());
    assertTrue(both.err().contains("--height: "), both.err());
  }

  private static String bounds(String... args) throws IOException {
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--json", "--bit=1/2in"));
    List<Double> numbers = new ArrayList<>();
    List<String> names = names(String.join("\n", reach(all.toArray(String[]::new))), numbers);
    double width = numbers.get(names.indexOf("/parts/0/bounds/width"));
    double height = numbers.get(names.indexOf("/parts/0/bounds/height"));
    return String.format(Locale.ROOT, "%.3f %.3f", width, height).replace(".000", "");
  }

  @Test
  void allFilesAreWrittenAndSayWhatBecameOfTheDrawing() throws IOException {
    Path into = folder.resolve("out");
    CommandRun run =
        CommandRun.of(
            "layout",
            SAMPLE.resolve("drawing.svg").toString(),
            "--sawn-edges",
            "top,left",
            "--into",
            into.toString());
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("Left out of the drawing: 1 text."), run.out());
    assertTrue(run.out().contains("3 are drilled"), run.out());
    String report = Files.readString(into.resolve("report.json"));
    assertTrue(report.contains("\"leftOut\" : [\n"), report);
    assertTrue(report.contains("\"largestMove\""), report);
    assertTrue(Files.exists(into.resolve("drawing-card.pdf")));
  }

  @Test
  void theDrawingItselfIsNeverWrittenOver() throws IOException {
    Path drawing = svg("board.svg", "width='300mm' viewBox='0 0 60 20'", BOARD);
    String before = Files.readString(drawing);
    CommandRun run = CommandRun.of("layout", drawing.toString(), "--into", folder.toString());
    assertEquals(2, run.status());
    assertTrue(run.err().contains("--into: board.svg would be written over"), run.err());
    assertEquals(before, Files.readString(drawing));
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(List.of(drawing), left.toList());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "drawing: board.svg, shape: oval-top | 1:50: a part with a drawing has no shape",
        "drawing: board.svg, measures: {a: 1in} | a part with a drawing has no measures",
        "drawing: board.yaml | “board.yaml” is no drawing",
        "drawing: none.svg | there is no such file",
        "drawing: board.svg, width: 0mm | 1:50: a width from 0.1 mm",
        "drawing: board.svg, symmetric: both | 1:54: “both” is no symmetry",
        "drawing: board.svg, sawn-edges: [north] | “north” is no side",
        "drawing: board.svg, sawn-edges: front | “front” is no side",
        "drawing: board.svg, drawn-in: ells | “ells” is no unit",
        "drawing: board.svg, layer: edge | no group",
        "drawing: board.svg, gap: -1mm | ",
        "shape: oval-top, gap: 1mm | gap belongs to a drawing",
      })
  void mistakesInAJobFileAreTold(String part, String says) throws IOException {
    svg("board.svg", "width='300mm' viewBox='0 0 60 20'", BOARD);
    Path job =
        Files.writeString(folder.resolve("job.yaml"), "parts: [{name: board, " + part + "}]\n");
    CommandRun run =
        CommandRun.of("layout", job.toString(), "--into", folder.resolve("o").toString());
    assertEquals(2, run.status(), run.toString());
    assertEquals(1, run.err().strip().lines().count(), run.err());
    if (says != null) {
      assertTrue(run.err().contains(says), run.err());
    }
    assertFalse(Files.exists(folder.resolve("o")));
  }

  @ParameterizedTest
  @CsvSource({
    "oval-top, --width=3in, --width: this belongs to a drawing",
    "oval-top, --layer=edge, --layer: this belongs to a drawing",
    "board.svg, --set=rise=1in, --set: a drawing has no measures",
    "round.svg, --sawn-edges=bottom, along its bottom",
    "two.svg, --bit=1/2in, 2 separate outlines",
    "tiny.svg, --bit=1/2in, --drawn-in",
    "drawing.dwg, --bit=1/2in, DWG",
  })
  void mistakesOfACommandAreTold(String source, String option, String says) throws IOException {
    svg("board.svg", "width='300mm' viewBox='0 0 60 20'", BOARD);
    svg("two.svg", "width='300mm' viewBox='0 0 60 20'", BOARD + "<circle cx='90' r='9'/>");
    svg("round.svg", "width='300mm' viewBox='0 0 60 20'", "<circle r='9'/>");
    svg("tiny.svg", "width='0.3mm' viewBox='0 0 60 20'", BOARD);
    Files.writeString(folder.resolve("drawing.dwg"), "AC1032");
    String named = source.contains(".") ? folder.resolve(source).toString() : source;
    CommandRun run = CommandRun.of("reach", named, option);
    assertEquals(2, run.status(), run.toString());
    assertEquals(1, run.err().strip().lines().count(), run.err());
    assertTrue(run.err().contains(says), run.err());
  }

  /** Operations beside a drawing may name its width and height. */
  @Test
  void operationsCountFromTheLowerLeftCorner() throws IOException {
    svg(
        "board.svg",
        "width='300mm' viewBox='-500 -700 60 20'",
        "<g transform='translate(-500 -700)'>" + BOARD + "</g>");
    Path job =
        Files.writeString(
            folder.resolve("job.yaml"),
            """
            parts:
              - name: board
                drawing: board.svg
                sawn-edges: top
                operations:
                  - edge: outline
                    bit: 1/2in
                  - recess: pull
                    rectangle: {centre: [width / 2, height / 2], size: [80mm, 40mm], radius: 10mm}
                    depth: 10mm
                    bit: 1/2in
            """);
    CommandRun run =
        CommandRun.of("layout", job.toString(), "--into", folder.resolve("o").toString());
    assertEquals(0, run.status(), run.err());
  }
}
