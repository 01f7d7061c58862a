package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A drawing kept as a shape file, from the command to a layout; and drawings that cannot be. */
class KeepDrawingTest {

  @TempDir Path folder;

  private Path svg(String name, String frame, String inside) throws IOException {
    return Files.writeString(
        folder.resolve(name),
        "<svg xmlns='http://www.w3.org/2000/svg' " + frame + ">" + inside + "</svg>");
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private CommandRun keep(Path drawing, String... options) {
    return CommandRun.of(
        Stream.concat(
                Stream.of("keep", drawing.toString(), "--units=mm", "--into", into().toString()),
                Stream.of(options))
            .toArray(String[]::new));
  }

  private Path into() {
    return folder.resolve("kept");
  }

  @Test
  void aBoardIsKeptAndLaidOutLonger() throws IOException {
    Path drawing =
        svg("My Board.svg", "viewBox='0 0 60 20'", "<path d='M0 0H60V10L45 20H15L0 10Z'/>");
    CommandRun run = keep(drawing, "--width", "300mm", "--symmetric", "left-right");
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("300 mm wide and 100 mm high, 6 lines"), run.out());
    assertTrue(run.out().contains("measure length"), run.out());
    assertEquals(
        List.of("my-board-preview.png", "my-board-preview.svg", "my-board.yaml"), names(into()));
    CommandRun reach =
        CommandRun.of(
            "layout",
            into().resolve("my-board.yaml").toString(),
            "--set",
            "length=360mm",
            "--into",
            folder.resolve("out").toString());
    assertEquals(0, reach.status(), reach.err());
    String report = Files.readString(folder.resolve("out/report.json"));
    assertTrue(report.matches("(?s).*\"width\" : 360(\\.0)?,.*"), report);
  }

  @Test
  void wordsTellOfGapsAndOfWhatIsLeftOut() throws IOException {
    Path drawing =
        svg(
            "loose.svg",
            "width='200mm' height='100mm' viewBox='0 0 200 100'",
            "<path d='M0 0H100.0625M100 0V50M0 0L0 50L50 51L100 50' fill='none' stroke='red'/>"
                + "<text x='1' y='5'>no part</text>");
    CommandRun run = keep(drawing);
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("1 gap was closed, of 0.063 mm."), run.out());
    assertTrue(run.out().contains("Left out of the drawing: 1 text."), run.out());
  }

  /** A board with a hole 0.03 mm right of its middle. */
  @Test
  void halvesThatAreAlmostAlikeAreTold() throws IOException {
    String size = "width='200mm' height='100mm' viewBox='0 0 200 100'";
    String board = "<path d='M0 0H150V70H0Z'/><circle fill='#fff' cx='%s' cy='30' r='9'/>";
    CommandRun almost = keep(svg("almost.svg", size, board.formatted("75.03")));
    String told = "Left and right are mirror images to within 0.060 mm; symmetric left-right";
    assertTrue(almost.out().contains(told), almost.out());
    CommandRun alike = keep(svg("alike.svg", size, board.formatted("75")));
    assertTrue(!alike.out().contains("mirror image"), alike.out());
    CommandRun other = keep(svg("other.svg", size, board.formatted("78")));
    assertTrue(!other.out().contains("mirror image"), other.out());
  }

  /** Places are those of the file, y down, in its own units: here 2 mm each. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M10 10H50V30H10V12|the line ends here|x 10, y 10 of the file",
        "M10 10L50 40V10L10 40Z|the outline crosses itself|x 30, y 25 of the file",
        "M10 10H50V40L30 10L10 40Z|the outline touches itself|x 30, y 10 of the file",
        "M10 10H50V40H10ZM50 10H70V40H50Z|the outline crosses itself|x 50, y",
        "M10 10H50H10Z|nothing here encloses an area|x 10, y 10 of the file",
      })
  void faultsAreShownInAPreviewAndNothingElseIsWritten(String path, String what, String where)
      throws IOException {
    Path drawing =
        svg(
            "faulty.svg",
            "width='200mm' height='100mm' viewBox='0 0 100 50'",
            "<path d='" + path + "' fill='none' fill-rule='evenodd' stroke='black'/>");
    CommandRun run = keep(drawing);
    assertEquals(2, run.status(), run.out());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains(what) && run.err().contains(where), run.err());
    assertTrue(run.err().contains("faulty-preview.png show where"), run.err());
    assertEquals(List.of("faulty-preview.png", "faulty-preview.svg"), names(into()));
    String preview = Files.readString(into().resolve("faulty-preview.svg"));
    assertTrue(preview.contains("aria-label=\"1\""), "a numbered mark");
    assertTrue(preview.contains(where), "the place in the words below");
  }

  @Test
  void aFaultLeavesAnEarlierShapeAsItWas() throws IOException {
    String frame = "width='200mm' height='100mm' viewBox='0 0 200 100'";
    Path drawing = svg("part.svg", frame, "<path d='M0 0H100V60H0Z'/>");
    assertEquals(0, keep(drawing).status());
    String kept = Files.readString(into().resolve("part.yaml"));
    svg("part.svg", frame, "<path d='M0 0L100 60V0L0 60Z'/>");
    assertEquals(2, keep(drawing).status());
    assertEquals(kept, Files.readString(into().resolve("part.yaml")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--dpi|300|--dpi: this is for a photo or scan",
        "--tolerance|0mm|--tolerance: a tolerance from",
        "--gap|2m|--gap: a gap from",
        "--symmetric|sideways|--symmetric: “sideways” is no symmetry",
        "--layer|edge|--layer: ",
        "--width|10km|--width",
        "--symmetric|left-right|has no partner across the middle line",
      })
  void whatIsSaidWronglyIsOneSentenceAndNothingIsWritten(
      String option, String value, String sentence) throws IOException {
    Path drawing =
        svg(
            "part.svg",
            "width='200mm' height='100mm' viewBox='0 0 200 100'",
            "<path d='M0 0H100V60H0ZM20 20H30V30H20Z' fill-rule='evenodd'/>");
    CommandRun run = keep(drawing, option, value);
    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().contains(sentence), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertFalse(Files.exists(into()));
  }

  @Test
  void severalPartsAreNamedWithTheirPlaces() throws IOException {
    Path drawing =
        svg(
            "two.svg",
            "width='200mm' height='100mm' viewBox='0 0 100 50'",
            "<path d='M0 0H20V20H0ZM40 0H60V20H40Z'/>");
    CommandRun run = keep(drawing);
    assertEquals(2, run.status());
    assertTrue(run.err().contains("40.0 × 40.0 mm round x 10, y 10 of the file"), run.err());
    assertFalse(Files.exists(into().resolve("two.yaml")));
  }
}
