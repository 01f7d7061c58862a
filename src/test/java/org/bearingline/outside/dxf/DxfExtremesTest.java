package org.bearingline.outside.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Sketches;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Numbers that no drawing has: refused in one sentence with their line, or read for what they are.
 */
class DxfExtremesTest {

  private static final String BLOCK =
      "0 SECTION 2 BLOCKS 0 BLOCK 2 A 10 0 20 0 0 CIRCLE 10 9 20 0 40 2 0 ENDBLK 0 ENDSEC ";

  private static final String LINE = " 0 LINE 10 1 20 2 11 3 21 4";

  private static Sketch read(String before, String entities) {
    String words = before + " 0 SECTION 2 ENTITIES " + entities + " 0 ENDSEC 0 EOF";
    String text = String.join("\n", words.strip().split("\\s+")) + "\n";
    return DxfReader.read("a.dxf", text.getBytes(StandardCharsets.UTF_8), ReadingSettings.USUAL);
  }

  @ParameterizedTest
  @CsvSource({
    "0 LWPOLYLINE 10 0 20 0 42 1e300 10 5 20 0, 1e300 is too large for what stands here",
    "0 LWPOLYLINE 10 0 20 0 42 1e999 10 5 20 0, 1e999 is too large",
    "0 LWPOLYLINE 10 0 20 0 42 NaN 10 5 20 0, no number",
    "0 ELLIPSE 10 0 20 0 11 5 21 0 40 NaN, no number",
    "0 ELLIPSE 10 0 20 0 11 5 21 0 40 1e300, too large for what stands here",
    "0 ELLIPSE 10 0 20 0 11 1e9 21 0 40 1e9, too far out",
    "0 ELLIPSE 10 0 20 0 11 5 21 0, no group 40",
    "0 ARC 10 0 20 0 40 5 50 1e300 51 9, too large for what stands here",
    "0 SPLINE 71 1 40 0 40 1 40 2 10 0 20 0 10 5 20 5, do not belong together",
    "0 SPLINE 71 1 40 0 40 0 40 1e300 40 1e300 10 0 20 0 10 5 20 5, too large for what stands",
    "0 SPLINE 71 2147483648 40 0 40 1 10 0 20 0, too large for what stands",
    "0 SPLINE 71 -3 40 0 40 1 10 0 20 0 10 5 20 0, degree",
    "0 INSERT 2 A 10 0 20 0 41 1e200 42 1, too large for what stands",
    "0 INSERT 2 A 10 0 20 0 41 1e9 42 1e9, too far out",
    "0 INSERT 2 A 10 0 20 0 71 1e9, copies",
    "0 INSERT 2 A 10 0 20 0 70 1e9 71 1e9, copies",
    "0 INSERT 2 A 10 0 20 0 70 3 44 1e9, too far out",
    "0 INSERT 2 A 10 1e9 20 0, too far out",
    "0 INSERT 2 A 10 0, no group 20",
  })
  void impossibleEntitiesAreRefusedAtTheirLine(String entity, String says) {
    Problem problem = assertThrows(Problem.class, () -> read(BLOCK, entity));
    assertTrue(problem.getMessage().contains(says), problem.spoken());
    assertTrue(((Place.Spot) problem.place()).line() > 10, problem.spoken());
  }

  /** They have no size: a line beside them is all that is read. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0 INSERT 2 A 10 0 20 0 41 0 42 0",
        "0 INSERT 2 A 10 0 20 0 41 1e-320 42 1e-320",
        "0 ELLIPSE 10 0 20 0 11 5 21 0 40 0",
        "0 ELLIPSE 10 0 20 0 11 0 21 0 40 1",
        "0 CIRCLE 10 5 20 5 40 0",
        "0 LINE 10 5 20 5 11 5 21 5",
        "0 LWPOLYLINE 10 5 20 5 42 1e9 10 5 20 5",
        "0 LWPOLYLINE 42 1 10 5 20 5",
        "0 SPLINE 71 1 40 7 40 7 40 7 40 7 10 0 20 0 10 5 20 5",
      })
  void whatHasNoSizeIsNoLine(String entity) {
    assertEquals(1, read(BLOCK, entity + LINE).figures().size());
  }

  /** Codes may come in any order, as long as a y follows its x. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0 CIRCLE 40 2 20 7 10 9",
        "0 CIRCLE 999 none 10 9 40 2 30 0 20 7 39 1",
        "0 ARC 51 360 50 0 40 2 20 7 10 9",
        "0 ELLIPSE 42 6.283185307179586 41 0 40 1 21 0 11 2 20 7 10 9",
        "0 CIRCLE 10 9 10 50 20 7 20 50 40 2 40 50",
      })
  void codesMayComeInAnyOrder(String entity) {
    var box = Sketches.bounds(read("", entity));
    assertEquals(7, box.minX(), 1e-9);
    assertEquals(9, box.maxY(), 1e-9);
  }

  /** The table of units ends at 24; past it a file says nothing that can be known. */
  @ParameterizedTest
  @ValueSource(strings = {"-1", "0", "999", "1e9", "2147483647"})
  void unitsOutOfRangeAreNone(String code) {
    String header = "0 SECTION 2 HEADER 9 $INSUNITS 70 " + code + " 0 ENDSEC ";
    if (code.equals("2147483647")) {
      assertThrows(Problem.class, () -> read(header, LINE));
    } else {
      assertFalse(read(header, LINE).sized());
    }
  }

  /** A bulge is the tangent of a quarter of the sweep; one of a million is a full turn's. */
  @ParameterizedTest
  @CsvSource({"1e9", "-1e9", "1000001"})
  void aBulgeOfMoreThanAFullTurnIsAStraight(String bulge) {
    Sketch sketch = read("", "0 LWPOLYLINE 10 0 20 0 42 " + bulge + " 10 5 20 0");
    assertEquals(5, Sketches.bounds(sketch).width(), 1e-12);
    assertEquals(0, Sketches.bounds(sketch).height(), 1e-12);
  }
}
