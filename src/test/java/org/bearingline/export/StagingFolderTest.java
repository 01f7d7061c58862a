package org.bearingline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StagingFolderTest {

  @TempDir Path root;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Every file below a folder with its content, and every folder. */
  private static TreeMap<String, String> contents(Path folder) throws IOException {
    TreeMap<String, String> found = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.toList()) {
        String name = folder.relativize(path).toString();
        found.put(name, Files.isDirectory(path) ? "folder" : Files.readString(path));
      }
    }
    return found;
  }

  private static void writeThree(Path target, Mover mover) {
    try (StagingFolder folder = StagingFolder.into(target, mover)) {
      folder.write("a.svg", bytes("new a"));
      folder.write("b.dxf", bytes("new b"));
      folder.write("report.json", bytes("{}"));
      folder.commit();
    }
  }

  @Test
  void filesStandInPlaceAndNothingElse() throws IOException {
    Path target = root.resolve("made/on/the way");
    writeThree(target, Mover::atomically);
    assertEquals(
        "{=folder, a.svg=new a, b.dxf=new b, report.json={}}", contents(target).toString());
  }

  @Test
  void formerFilesAreReplacedAndOthersStay() throws IOException {
    Files.writeString(root.resolve("a.svg"), "old a");
    Files.writeString(root.resolve("mine.txt"), "mine");
    writeThree(root, Mover::atomically);
    assertEquals(
        "{=folder, a.svg=new a, b.dxf=new b, mine.txt=mine, report.json={}}",
        contents(root).toString());
  }

  @Test
  void nothingIsMadeBeforeTheFirstFile() throws IOException {
    Path target = root.resolve("out");
    StagingFolder folder = StagingFolder.into(target);
    assertFalse(Files.exists(target));
    folder.close();
    assertFalse(Files.exists(target));
  }

  @Test
  void closedWithoutCommitLeavesNothing() throws IOException {
    Path target = root.resolve("out/deep");
    try (StagingFolder folder = StagingFolder.into(target)) {
      folder.write("a.svg", bytes("a"));
    }
    assertEquals("{=folder}", contents(root).toString());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void whicheverMoveFailsEverythingIsAsBefore(int failing) throws IOException {
    Path target = Files.createDirectory(root.resolve("out"));
    Files.writeString(target.resolve("a.svg"), "old a");
    Files.writeString(target.resolve("report.json"), "old report");
    TreeMap<String, String> before = contents(root);
    int[] moves = {0};
    Mover mover =
        (from, to) -> {
          // Five moves: a former file out of the way, three files in, and one more former one.
          if (++moves[0] == failing) {
            throw new IOException("the disk is full");
          }
          Mover.atomically(from, to);
        };
    Problem problem = assertThrows(Problem.class, () -> writeThree(target, mover));
    assertEquals(Place.option("--into"), problem.place());
    assertTrue(problem.getMessage().contains("nothing was changed"), problem.getMessage());
    assertEquals(before, contents(root));
  }

  @Test
  void failedMoveIntoANewFolderTakesTheFolderAway() throws IOException {
    Mover never =
        (from, to) -> {
          throw new IOException("no");
        };
    assertThrows(Problem.class, () -> writeThree(root.resolve("x/y"), never));
    assertEquals("{=folder}", contents(root).toString());
  }

  @Test
  void targetThatIsAFileIsRefused() throws IOException {
    Path file = Files.writeString(root.resolve("file"), "mine");
    for (Path target : List.of(file, file.resolve("below"))) {
      Problem problem = assertThrows(Problem.class, () -> StagingFolder.into(target));
      assertEquals(Place.option("--into"), problem.place());
      assertTrue(problem.getMessage().contains("is a file"), problem.getMessage());
    }
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void folderThatMayNotBeWrittenToIsRefused() {
    // No one may make files there, not even root.
    Path target = Path.of("/proc/bearingline-trial");
    Assumptions.assumeTrue(Files.isDirectory(Path.of("/proc/self")), "no /proc here");
    Problem problem = assertThrows(Problem.class, () -> writeThree(target, Mover::atomically));
    assertEquals(Place.option("--into"), problem.place());
  }

  @Test
  void folderInTheWayOfAFileIsRefused() throws IOException {
    Files.createDirectory(root.resolve("b.dxf"));
    TreeMap<String, String> before = contents(root);
    Problem problem = assertThrows(Problem.class, () -> writeThree(root, Mover::atomically));
    assertTrue(problem.getMessage().contains("b.dxf is a folder"), problem.getMessage());
    assertEquals(before, contents(root));
  }

  @Test
  void oneNameTwiceIsRefusedWhateverItsCapitals() {
    try (StagingFolder folder = StagingFolder.into(root)) {
      folder.write("Rail.svg", bytes("1"));
      Problem problem = assertThrows(Problem.class, () -> folder.write("rail.svg", bytes("2")));
      assertTrue(problem.getMessage().contains("different names"));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"../a", "a/b", "/a"})
  void onlyPlainNamesAreTaken(String name) {
    try (StagingFolder folder = StagingFolder.into(root)) {
      assertThrows(IllegalArgumentException.class, () -> folder.write(name, bytes("x")));
    }
  }
}
