package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every mistake gets one clear sentence, exit status 2, and leaves the folder as it was. */
class WrongInputTest {

  @TempDir Path folder;

  private static Arguments wrong(String says, String... args) {
    return Arguments.of(says, List.of(args));
  }

  static Stream<Arguments> mistakes() {
    return Stream.of(
        wrong("did you mean cloud-lift-rail?", "cloud-lift-rial"),
        wrong("such file", "missing/shape.yaml"),
        wrong("did you mean radius?", "cloud-lift-rail", "--set", "raduis=1in"),
        wrong("length", "cloud-lift-rail", "--set", "length=900in"),
        wrong("--bit: ", "cloud-lift-rail", "--bit", "0in"),
        wrong("--bit: ", "cloud-lift-rail", "--bit", "-1/2in"),
        wrong("--bit: ", "cloud-lift-rail", "--bit", "1/2"),
        wrong("--bit: ", "cloud-lift-rail", "--bit", "NaN"),
        wrong("--bit: ", "cloud-lift-rail", "--bit", "1e12mm"),
        wrong("radius", "cloud-lift-rail", "--set", "radius=infinity"),
        wrong("radius", "cloud-lift-rail", "--set", "radius=1e12mm"),
        wrong("radius", "cloud-lift-rail", "--set", "radius=(1in"),
        wrong("collar", "cloud-lift-rail", "--bit", "1/2in", "--collar", "3/8in"),
        wrong("opening", "drop-in-plate", "--bit", "4in", "--set", "plate_width=3in"),
        wrong("--paper: ", "cloud-lift-rail", "--paper", "10mmx10mm"),
        wrong("did you mean", "cloud-lift-rail", "--paper", "Leter"),
        wrong("--printed", "cloud-lift-rail", "--printed", "99.4"),
        wrong("--printed", "cloud-lift-rail", "--printed", "40,99"),
        wrong("--units: ", "cloud-lift-rail", "--units", "furlong"),
        wrong("--allowance: ", "cloud-lift-rail", "--allowance", "0mm"),
        wrong("--kerf: ", "cloud-lift-rail", "--kerf", "3in"),
        wrong("--collar: ", "cloud-lift-rail", "--collar", "1in", "--bearing", "1in"),
        wrong("--set: “rise” sets no measure", "cloud-lift-rail", "--set", "rise"),
        wrong(
            "--set: rise is set twice",
            "cloud-lift-rail",
            "--set",
            "rise=1in",
            "--set",
            "rise=2in"),
        wrong("--saw-blade: ", "cloud-lift-rail", "--saw-blade", "9in"),
        wrong("this is a folder", "."),
        wrong("--nothing", "cloud-lift-rail", "--nothing"));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void aMistakeGetsOneSentenceAndNothingIsWritten(String says, List<String> args)
      throws IOException {
    Path into = folder.resolve("out");
    Files.createDirectory(into);
    Files.writeString(into.resolve("mine.txt"), "kept");
    List<String> all = new ArrayList<>(List.of("layout"));
    all.addAll(args);
    all.addAll(List.of("--into", into.toString()));
    CommandRun run = CommandRun.of(all.toArray(String[]::new));
    checkRefusal(run, says);
    try (Stream<Path> left = Files.list(into)) {
      assertEquals(List.of(into.resolve("mine.txt")), left.toList());
    }
  }

  private static void checkRefusal(CommandRun run, String says) {
    assertEquals(2, run.status(), run.toString());
    assertTrue(run.err().contains(says), run.err());
    assertEquals(1, run.err().strip().lines().count(), run.err());
    // One style for all: small after the place, no full stop.
    assertFalse(run.err().strip().endsWith("."), run.err());
    assertFalse(run.err().matches("(?s).*: [A-Z][a-z]+ [a-z].*"), run.err());
    assertFalse(run.err().contains("org.bearingline"), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
    assertEquals("", run.out());
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void aJobNamesTheLineOfAnUnknownShape() throws IOException {
    Path job = file("job.yaml", "job: table\nparts:\n  - name: leg\n    shape: taperd-leg\n");
    CommandRun run =
        CommandRun.of("layout", job.toString(), "--into", folder.resolve("out").toString());
    checkRefusal(run, "job.yaml:4:12: ");
    assertTrue(run.err().contains("tapered-leg"), run.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void aJobNamesTheLineOfAnUnknownField() throws IOException {
    Path job = file("job.yaml", "job: table\nprats:\n  - name: leg\n");
    checkRefusal(CommandRun.of("reach", job.toString()), "job.yaml:2:1: “prats” is not known here");
  }

  @Test
  void aBrokenFileNamesLineAndColumn() throws IOException {
    Path shape = file("broken.yaml", "name: rail\noutline: [a, b\nnext: 1\n");
    checkRefusal(CommandRun.of("reach", shape.toString()), "broken.yaml:3:");
  }

  @Test
  void aFolderThatIsAFileIsRefused() throws IOException {
    Path taken = file("taken", "a file");
    checkRefusal(
        CommandRun.of("layout", "cloud-lift-rail", "--into", taken.toString()), "--into: ");
    assertEquals("a file", Files.readString(taken));
  }

  @Test
  void aKitThatDoesNotExistIsRefused() {
    checkRefusal(
        CommandRun.of("reach", "cloud-lift-rail", "--kit", folder.resolve("kit.yaml").toString()),
        "kit.yaml");
  }

  @Test
  void aCommandThatDoesNotExistIsRefusedWithTheNearest() {
    checkRefusal(CommandRun.of("layuot"), "layout");
  }

  /** What a job file says is told with the file's line, not with an option that nobody gave. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '$',
      value = {
        "allowance: 0in | 2:12: give a length above 0",
        "saw-blade: 9in | 2:12: no smallest radius",
        "kerf: 30mm | 2:7: a kerf",
        "paper: Lettr | 2:8: no paper is called",
        "bit: 0in | 2:6: a bit needs",
        "stock: {thickness: 0in} | 2:20: give a length above 0",
      })
  void aJobNamesTheLineOfAWrongValue(String line, String says) throws IOException {
    Path job =
        file("job.yaml", "job: J\n" + line + "\nparts: [{name: a, shape: cloud-lift-rail}]\n");
    Path into = folder.resolve("out");
    checkRefusal(
        CommandRun.of("layout", job.toString(), "--into", into.toString()), "job.yaml:" + says);
    assertFalse(Files.exists(into));
  }

  @Test
  void aPartIsNamedWhereItsBitDoesNotEnter() throws IOException {
    Path job =
        file(
            "job.yaml",
            "parts:\n  - {name: a, shape: oval-top}\n  - {name: b, shape: track-slot}\n");
    checkRefusal(
        CommandRun.of("layout", job.toString(), "--bit", "3in", "--into", "out"),
        "job.yaml:3:5: slot: the bit is wider than this opening");
  }

  @Test
  void theCommandsOwnOptionIsNamedWhereItOutdoesTheJob() throws IOException {
    Path job = file("job.yaml", "bit: 1/2in\nparts: [{name: a, shape: oval-top}]\n");
    checkRefusal(
        CommandRun.of("reach", job.toString(), "--bit", "0in"), "bearingline: --bit: a bit needs");
  }

  @Test
  void aPartFollowsABearingOrACollar() throws IOException {
    Path job =
        file("job.yaml", "parts:\n  - {name: a, shape: oval-top, bearing: 1in, collar: 1in}\n");
    checkRefusal(CommandRun.of("reach", job.toString()), "job.yaml:2:54: a bit follows");
  }

  @ParameterizedTest
  @CsvSource({"kit", "shape"})
  void filesThatAreNoTextAreRefusedAlike(String room) throws IOException {
    Path latin = Files.write(folder.resolve("a.yaml"), new byte[] {'a', ':', ' ', (byte) 0xe4});
    CommandRun run =
        room.equals("kit")
            ? CommandRun.of("kit", latin.toString())
            : CommandRun.of("reach", latin.toString());
    checkRefusal(run, "a.yaml: the file is not text in UTF-8; save it as UTF-8");
  }

  @Test
  void anEmptyFolderNameIsRefused() {
    checkRefusal(CommandRun.of("layout", "cloud-lift-rail", "--into", ""), "--into: name a folder");
  }
}
