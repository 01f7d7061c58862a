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
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Figures that no tool, plate or printer has are mostly slips of a unit or of the keyboard: each is
 * told at its own line, and nothing is written.
 */
class SlipsOfUnitTest {

  @TempDir Path folder;

  private CommandRun layout(String source) {
    return CommandRun.of("layout", source, "--into", folder.resolve("out").toString());
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private void checkRefused(CommandRun run, String says) {
    assertEquals(2, run.status(), run.toString());
    assertTrue(run.err().contains(says), run.err());
    assertEquals(1, run.err().strip().lines().count(), run.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bit: 19in | 2:6: no bit is wider than 4 in",
        "bit: 0.2mm | 2:6: no bit is thinner than 1/64 in",
        "bearing: 12in | 2:10: no bearing is wider than 4 in",
        "collar: 30in | 2:9: no collar is wider than 3 in",
        "allowance: 2in | 2:12: more than 1 in (25.4 mm) of waste",
        "run-out: 40in | 2:10: a template that goes on by more than 12 in",
        "router-base: 6mm | 2:14: a router's base is 2 in",
        "router-base: 60in | 2:14: a router's base is 2 in",
        "template-thickness: 0mm | 2:21: a template is thicker than 0",
        "template-thickness: 18in | 2:21: a template is thicker than 0",
        "margin: 5in | 2:9: the paper “Letter” is too small",
        "kerf: 20,5mm | 2:7: “20,5mm” has a comma; write the point, as in 20.5mm",
        "sawing: {kerf: 3in} | 2:16: no saw takes more than 1/2 in",
      })
  void aFigureOfTheWrongSizeIsToldAtItsLine(String line, String says) throws IOException {
    String offcuts =
        line.startsWith("sawing") ? "offcuts:\n  - {name: b, length: 40in, width: 9in}\n" : "";
    String text =
        "job: table\n%s\n%sparts:\n  - {name: rail, shape: cloud-lift-rail}\n"
            .formatted(line, offcuts);
    checkRefused(layout(file("job.yaml", text).toString()), "job.yaml:" + says);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bits: [30in] | kit.yaml:2:8: no bit is wider than 4 in",
        "collars: [12mm, 200mm] | kit.yaml:2:17: no collar is wider than 3 in",
        "collars: [{outside: 16mm, tube: 14in}] | kit.yaml:2:33: no collar's tube is longer than 2 in",
        "bearings: [0mm] | kit.yaml:2:12: a length above 0 is wanted here",
      })
  void aKitIsHeldToTheSame(String line, String says) throws IOException {
    Path kit = file("kit.yaml", "name: mine\n" + line + "\n");
    checkRefused(
        CommandRun.of(
            "layout",
            "cloud-lift-rail",
            "--kit",
            kit.toString(),
            "--into",
            folder.resolve("out").toString()),
        says);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "job: x\\n\\tparts: 3\\n | a tab stands here",
        "job: x\\nparts:\\n  - {name: a, shape: oval-top\\n | a { opened before here is not closed",
        "job: x\\nparts: [a, b\\n | a [ opened before here is not closed",
        "job: x: y\\nparts: 3\\n | a colon is not expected here",
        "job: x\\nparts:\\n  - name: a\\n   shape: b\\n | this line is not indented like those",
        "job: \"x\\nparts: 3\\n | a quoted text is not closed",
      })
  void brokenYamlIsToldInPlainWords(String text, String says) throws IOException {
    checkRefused(
        layout(file("job.yaml", text.replace("\\n", "\n").replace("\\t", "\t")).toString()), says);
  }

  @ParameterizedTest
  @ValueSource(strings = {"rail.png", "rail.JPG", "rail.tif"})
  void aPictureIsSentToBeTraced(String name) throws IOException {
    checkRefused(layout(file(name, "no matter what").toString()), "a picture is traced first");
  }

  @ParameterizedTest
  @ValueSource(strings = {"rail.pdf", "rail.eps"})
  void anotherProgramsFileIsToldApart(String name) throws IOException {
    checkRefused(layout(file(name, "%PDF-1.4").toString()), "save the drawing as SVG");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--itno", "--inot=x"})
  void aSlipInAnOptionsNameComesBeforeTheMissingOption(String option) {
    CommandRun run = CommandRun.of("layout", "cloud-lift-rail", option);
    assertEquals(2, run.status());
    assertTrue(run.err().contains("did you mean --into?"), run.err());
  }

  /** ISO 216: A4 is 210 × 297 mm; ASME Y14.1: size A is 8-1/2 × 11 in. */
  @ParameterizedTest
  @ValueSource(strings = {"in", "mm"})
  void papersAreListedInTheUnitsTheyAreMadeBy(String units) {
    CommandRun run = CommandRun.of("kit", "--units", units);
    assertTrue(run.out().matches("(?s).*\\nA4 +210 mm +297 mm\\n.*"), run.out());
    assertTrue(run.out().matches("(?s).*\\nLetter +8-1/2 in +11 in\\n.*"), run.out());
  }

  /** A kit's wide bits do not enter a narrow opening: they are told apart, the others compared. */
  @Test
  void reachGoesOnWhereABitOfTheKitDoesNotEnter() {
    CommandRun run = CommandRun.of("reach", "mortise-guide");
    assertEquals(0, run.status(), run.toString());
    assertTrue(run.out().contains("1/2 in bit on a flush bearing: leaves nothing."), run.out());
    assertTrue(run.out().contains("5/8 in bit: mortise: the bit is wider"), run.out());
    CommandRun asked = CommandRun.of("reach", "mortise-guide", "--bit", "5/8in");
    assertEquals(2, asked.status(), asked.toString());
  }

  /** The job's units hold for the lengths of its parts too. */
  @Test
  void bareNumbersOfAPartAreInTheJobsUnits() throws IOException {
    Path job =
        file(
            "job.yaml",
            "job: x\nunits: mm\nparts:\n"
                + "  - {name: a, shape: cloud-lift-rail, bit: 12.7, allowance: 2}\n");
    CommandRun run = CommandRun.of("reach", job.toString());
    assertTrue(run.out().contains("12.7 mm bit on a flush bearing"), run.toString());
  }

  /** A bit that the kit holds without a bearing cannot ride one: the smallest collar leads it. */
  @ParameterizedTest
  @CsvSource({"1/4in,3/8 in collar", "3/8in,flush bearing"})
  void aBitWithoutABearingIsLedByACollar(String bit, String follower) {
    CommandRun run = CommandRun.of("reach", "cloud-lift-rail", "--bit", bit);
    assertTrue(run.out().contains("bit on a " + follower + ": leaves nothing."), run.out());
  }

  @ParameterizedTest
  @CsvSource({"in,1/16 in", "mm,1.5 mm"})
  void whatNobodySaysIsRoundInTheMakersUnits(String units, String allowance) throws IOException {
    Path job =
        file(
            "job.yaml",
            "job: x\nunits: " + units + "\nparts:\n  - {name: a, shape: cloud-lift-rail}\n");
    CommandRun run = layout(job.toString());
    assertEquals(0, run.status(), run.toString());
    try (Stream<Path> written = Files.list(folder.resolve("out"))) {
      assertTrue(written.anyMatch(path -> path.endsWith("a-card.pdf")));
    }
    List<String> report = Files.readAllLines(folder.resolve("out/report.json"));
    double mm = units.equals("mm") ? 1.5 : 25.4 / 16;
    assertTrue(
        report.stream().anyMatch(line -> line.contains("\"allowance\" : " + mm)),
        () -> allowance + " in " + report);
  }
}
