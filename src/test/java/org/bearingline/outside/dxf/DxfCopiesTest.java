package org.bearingline.outside.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Blocks inserted many times: what takes time counts, whether it draws a line or not. */
class DxfCopiesTest {

  /** What does not end would go on for hours; a loaded machine may take its time. */
  private static final Duration LIMIT = Duration.ofMinutes(3);

  private static final String LINE = " 0 LINE 10 1 20 2 11 3 21 4";

  private static String tags(String words) {
    return String.join("\n", words.strip().split("\\s+")) + "\n";
  }

  private static Sketch read(String blocks, String entities) {
    String text = "0 SECTION 2 BLOCKS " + blocks + " 0 ENDSEC 0 SECTION 2 ENTITIES " + entities;
    byte[] bytes = (tags(text + " 0 ENDSEC 0 EOF")).getBytes(StandardCharsets.UTF_8);
    return assertTimeoutPreemptively(
        LIMIT, () -> DxfReader.read("a.dxf", bytes, ReadingSettings.USUAL));
  }

  private static String block(String name, String inside) {
    return " 0 BLOCK 2 " + name + " 10 0 20 0 " + inside + " 0 ENDBLK";
  }

  private static String array(String name, int side) {
    return " 0 INSERT 2 " + name + " 10 0 20 0 70 " + side + " 71 " + side;
  }

  @ParameterizedTest
  @CsvSource({
    "0 TEXT, 1 words, 100, elements",
    "0 LWPOLYLINE, 10 1 20 1, 1000, repeats",
    "0 LWPOLYLINE, 40 1, 3000, repeats",
    "0 POLYLINE, 0 VERTEX 70 16, 1000, repeats",
    "0 CIRCLE 10 1 20 1 40 5, 210 0 220 1, 3000, repeats",
  })
  void whatDrawsNoLineIsCounted(String head, String many, int times, String says) {
    String inside = head + (" " + many).repeat(times);
    String blocks = block("A", inside) + block("B", array("A", 300));
    Problem problem = assertThrows(Problem.class, () -> read(blocks, array("B", 300) + LINE));
    assertTrue(problem.getMessage().contains(says), problem.spoken());
  }

  @Test
  void arraysOfArraysOfNothingAreCounted() {
    String blocks = block("A", "") + block("B", array("A", 300));
    Problem problem = assertThrows(Problem.class, () -> read(blocks, array("B", 300) + LINE));
    assertTrue(problem.getMessage().contains("repeats"), problem.spoken());
    assertEquals(1, read(blocks, array("B", 3) + LINE).figures().size());
  }

  @Test
  void anArrayOfManyIsRead() {
    String blocks = block("A", LINE + " 0 CIRCLE 10 5 20 5 40 2");
    assertEquals(80_000, read(blocks, array("A", 200) + " 44 9 45 9").figures().size());
  }

  /** Each point of such a spline costs the cube of its degree. */
  @Test
  void aLongSplineOfAHighDegreeIsRefused() {
    StringBuilder spline = new StringBuilder("0 SPLINE 71 25");
    for (int i = 0; i < 100_025; i++) {
      spline.append(" 40 ").append(i);
    }
    spline.append(" 40 100025");
    for (int i = 0; i < 100_000; i++) {
      spline.append(" 10 ").append(i % 97).append(" 20 ").append(i % 89);
    }
    Problem problem = assertThrows(Problem.class, () -> read("", spline.toString()));
    assertTrue(problem.getMessage().contains("4,000,000 points"), problem.spoken());
  }
}
