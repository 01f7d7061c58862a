package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Shape files with one mistake each; the first line holds what a maker is told, place and all. */
class BrokenShapesTest {

  @TestFactory
  Stream<DynamicTest> everyBrokenFile() {
    return ShapeFixtures.in(ShapeFixtures.TEST_FILES.resolve("broken")).stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
  }

  private static void check(Path file) {
    String text = ShapeFixtures.text(file);
    String told = text.lines().findFirst().orElseThrow().substring(2);
    Problem problem =
        assertThrows(Problem.class, () -> ShapeFixtures.part(ShapeFixtures.read(file), Map.of()));
    assertEquals(told, problem.spoken());
  }

  @Test
  void anEmptyFileIsRefused() {
    assertTold("empty.yaml: the file is empty; write a name and what it needs", "empty.yaml", "");
  }

  @Test
  void aFileOfMoreThanAMillionLettersIsRefused() {
    String text = "name: x\nabout: x\noutline: []\nnotes: [" + "a".repeat(1_000_001) + "]\n";
    Problem problem = assertThrows(Problem.class, () -> ShapeReader.read("big.yaml", text));
    assertTrue(problem.spoken().startsWith("big.yaml"), problem.spoken());
  }

  @Test
  void deepNestingIsRefused() {
    for (int depth : new int[] {100, 100_000}) {
      String text = "name: x\nabout: x\noutline: " + "[".repeat(depth) + "]".repeat(depth) + "\n";
      Problem problem = assertThrows(Problem.class, () -> ShapeReader.read("deep.yaml", text));
      assertTrue(problem.spoken().startsWith("deep.yaml"), problem.spoken());
      assertTrue(problem.getMessage().contains("nests"), problem.spoken());
    }
  }

  @Test
  void aListInItselfIsRefused() {
    Problem problem =
        assertThrows(
            Problem.class,
            () -> ShapeReader.read("ring.yaml", "name: x\nabout: x\noutline: &a [*a, *a]\n"));
    assertTrue(problem.spoken().startsWith("ring.yaml"), problem.spoken());
  }

  @Test
  void aTagMakesNoObject() {
    Problem problem =
        assertThrows(
            Problem.class,
            () ->
                ShapeReader.read("tag.yaml", "name: !!java.io.File [x]\nabout: x\noutline: []\n"));
    assertTrue(problem.spoken().startsWith("tag.yaml:1:"), problem.spoken());
  }

  private static void assertTold(String told, String file, String text) {
    Problem problem = assertThrows(Problem.class, () -> ShapeReader.read(file, text));
    assertEquals(told, problem.spoken());
  }
}
