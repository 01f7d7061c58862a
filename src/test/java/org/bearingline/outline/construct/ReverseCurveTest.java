package org.bearingline.outline.construct;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bearingline.Seed;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;

/** Published examples use feet and metres; the formulas have no unit. */
class ReverseCurveTest {

  /** Henck, Field-book for railroad engineers, chapter I, §33. */
  @Test
  void radiusByTheFieldBook() {
    ReverseCurve curve = ReverseCurve.ofRiseAndChord(12, 200);
    assertEquals(833 + 1.0 / 3, curve.firstRadius(), 1e-9);
    assertEquals(833 + 1.0 / 3, curve.secondRadius(), 1e-9);
  }

  /** Henck, Field-book for railroad engineers, chapter I, §34. */
  @Test
  void distanceByTheFieldBook() {
    assertEquals(180, ReverseCurve.ofRiseAndRadii(12, 675, 675).chord(), 1e-9);
  }

  /** Civil-engineering class sheet "Reversed curve – sample problems", unequal radii. */
  @Test
  void unequalRadiiByTheClassSheet() {
    ReverseCurve curve = ReverseCurve.ofRiseTurnAndSecondRadius(27.60, 16, 290);
    assertEquals(422.47, curve.firstRadius(), 0.01);
    assertEquals(198.31, curve.chord(), 0.01);
    assertEquals(198.96, curve.length(), 0.01);
    assertEquals(
        290, ReverseCurve.ofRiseTurnAndFirstRadius(27.60, 16, 422.473).secondRadius(), 0.001);
  }

  /** The same class sheet; it prints 13°15' and, from the rounded angle, 140.87. */
  @Test
  void equalRadiiByTheClassSheet() {
    ReverseCurve curve = ReverseCurve.ofRiseAndChord(7.5, 65);
    assertEquals(13.2516, curve.turn(), 1e-4);
    assertEquals(140.83, curve.firstRadius(), 0.05);
    assertEquals(359.78, ReverseCurve.ofRiseAndChord(10, 120).firstRadius(), 0.25);
  }

  /** A homework site prints 933.37 for this; L² / (2 p) − R1 gives 917.09. */
  @Test
  void publishedErrorOfSecondRadiusIsNotRepeated() {
    double run = ReverseCurve.runOfChord(18, 250);
    double r2 = ReverseCurve.ofRiseRunAndFirstRadius(18, run, 819.02).secondRadius();
    assertEquals(250.0 * 250 / 36 - 819.02, r2, 1e-9);
    assertEquals(917.09, r2, 0.005);
    assertTrue(Math.abs(r2 - 933.37) > 16);
    assertEquals(819.02, ReverseCurve.ofRiseRunAndSecondRadius(18, run, r2).firstRadius(), 1e-9);
  }

  /** Chandra, Surveying, example 7.12 prints 866.7, four times too large. */
  @Test
  void publishedErrorOfEqualRadiiIsNotRepeated() {
    ReverseCurve curve = ReverseCurve.ofRiseAndRun(60, 220);
    assertEquals(52000.0 / 240, curve.firstRadius(), 1e-9);
    assertEquals(228.035, curve.chord(), 1e-3);
    assertEquals(452.1, ReverseCurve.ofRiseAndRadii(60, 866.7, 866.7).run(), 0.05);
  }

  /** A surveying problem with a straight between; answers by the formulas, a 7-24-25 triangle. */
  @Test
  void straightBetweenTheArcs() {
    ReverseCurve curve = ReverseCurve.ofRiseRadiiAndStraight(200, 1100, 1100, 400);
    assertEquals(1000, curve.run(), 1e-9);
    assertEquals(Math.toDegrees(Math.asin(0.28)), curve.turn(), 1e-9);
    assertEquals(400, ReverseCurve.ofRiseRunAndRadii(200, 1000, 1100, 1100).straight(), 1e-9);
    assertEquals(1100, ReverseCurve.ofRiseRunAndStraight(200, 1000, 400).firstRadius(), 1e-9);
  }

  /** The 3-4-5 triangle: rise 2 over 6 gives R 5, centres (0, 5) and (6, −3). */
  @Test
  void shopSizeCurveIsDrawnExactly() {
    Path path = ReverseCurve.ofRiseAndRun(2, 6).from(Point.ORIGIN, 0, Side.LEFT);
    Arc first = (Arc) path.primitives().get(0);
    Arc second = (Arc) path.primitives().get(1);
    assertAll(
        () -> assertEquals(2, path.primitives().size()),
        () -> near(new Point(0, 5), first.center()),
        () -> near(new Point(3, 1), first.end()),
        () -> near(new Point(6, -3), second.center()),
        () -> near(new Point(6, 2), path.end()),
        () -> assertEquals(5, first.radius(), 1e-12),
        () -> assertEquals(6.43501, path.length(), 5e-6),
        () -> assertTrue(first.isCounterClockwise() && !second.isCounterClockwise()));
    Path right = ReverseCurve.ofRiseAndRun(2, 6).from(new Point(1, 1), 180, Side.RIGHT);
    near(new Point(-5, 3), right.end());
  }

  @Test
  void quarterTurnsRiseByTheSumOfTheRadii() {
    ReverseCurve curve = ReverseCurve.ofRiseAndRadii(30, 10, 20);
    assertEquals(90, curve.turn());
    assertEquals(30, curve.run());
    near(new Point(30, 30), curve.from(Point.ORIGIN, 0, Side.LEFT).end());
    assertEquals(90, ReverseCurve.ofRiseRunAndStraight(25, 20, 5).turn(), 1e-9);
    assertEquals(30, ReverseCurve.ofRunAndRadii(30, 10, 20).rise(), 1e-9);
    assertEquals(10, ReverseCurve.ofRiseAndTurn(20, 90).firstRadius(), 1e-9);
  }

  @Property(seed = Seed.FIXED)
  void everyPairOfGivensLeadsToTheSameCurve(
      @ForAll @DoubleRange(min = 1, max = 500) double r1,
      @ForAll @DoubleRange(min = 1, max = 500) double r2,
      @ForAll @DoubleRange(min = 0.1, max = 300) double straight,
      @ForAll @DoubleRange(min = 1, max = 89) double turn) {
    ReverseCurve bent = ReverseCurve.ofRadiiAndTurn(r1, r2, turn);
    same(bent, ReverseCurve.ofRiseAndRadii(bent.rise(), r1, r2));
    same(bent, ReverseCurve.ofRiseRunAndFirstRadius(bent.rise(), bent.run(), r1));
    same(bent, ReverseCurve.ofRiseRunAndSecondRadius(bent.rise(), bent.run(), r2));
    same(bent, ReverseCurve.ofRunAndRadii(bent.run(), r1, r2));
    same(bent, ReverseCurve.ofRiseTurnAndFirstRadius(bent.rise(), turn, r1));
    ReverseCurve with = new ReverseCurve(r1, r2, straight, turn);
    same(with, ReverseCurve.ofRiseRadiiAndStraight(with.rise(), r1, r2, straight));
    same(with, ReverseCurve.ofRiseRunAndRadii(with.rise(), with.run(), r1, r2));
    ReverseCurve equal = new ReverseCurve(r1, r1, straight, turn);
    same(equal, ReverseCurve.ofRiseRunAndStraight(equal.rise(), equal.run(), straight));
  }

  @Property(seed = Seed.FIXED)
  void piecesRunOnTangentBetweenParallels(
      @ForAll @DoubleRange(min = 1, max = 500) double r1,
      @ForAll @DoubleRange(min = 1, max = 500) double r2,
      @ForAll @DoubleRange(min = 0, max = 300) double straight,
      @ForAll @DoubleRange(min = 0.01, max = 90) double turn,
      @ForAll @DoubleRange(min = -180, max = 180) double heading,
      @ForAll Side side) {
    ReverseCurve curve = new ReverseCurve(r1, r2, straight, turn);
    Point start = new Point(123, -45);
    List<Primitive> pieces = curve.from(start, heading, side).primitives();
    Point along = Point.polar(1, heading);
    near(along, pieces.get(0).tangentAt(0));
    near(along, pieces.get(pieces.size() - 1).tangentAt(1));
    for (int i = 1; i < pieces.size(); i++) {
      near(pieces.get(i - 1).tangentAt(1), pieces.get(i).tangentAt(0));
    }
    Point across = pieces.get(pieces.size() - 1).end().minus(start);
    assertEquals(curve.run(), across.dot(along), 1e-9);
    assertEquals(curve.rise(), side.sign() * along.cross(across), 1e-9);
  }

  @Test
  void refusalsNameTheLimit() {
    assertEquals(
        "a rise of 40 mm would overhang; at most 30 mm (1-11/64 in) goes with these radii, so lower"
            + " it or enlarge them",
        refusal(() -> ReverseCurve.ofRiseAndRadii(40, 10, 20)));
    assertEquals(
        "the curve would overhang: a rise of 40 mm needs a run of at least 40 mm (1-37/64 in)"
            + " without a straight",
        refusal(() -> ReverseCurve.ofRiseAndRun(40, 30)));
    assertEquals(
        "the rise must be more than 0, not -3 mm",
        refusal(() -> ReverseCurve.ofRiseAndRun(-3, 30)));
    assertEquals(
        "a first radius of 12 mm leaves none for the other arc; it must stay below 10 mm (25/64 in)",
        refusal(() -> ReverseCurve.ofRiseRunAndFirstRadius(2, 6, 12)));
    assertEquals(
        "the radii add up to 12 mm, but a rise of 2 mm over 6 mm has room for 10 mm (25/64 in)"
            + " together",
        refusal(() -> ReverseCurve.ofRiseRunAndRadii(2, 6, 6, 6)));
    assertTrue(refusal(() -> ReverseCurve.ofRiseAndRun(2, Double.NaN)).contains("plain length"));
    assertEquals(
        "the turn of each arc must be more than 0° and at most 90°, not 120°",
        refusal(() -> ReverseCurve.ofRadiiAndTurn(5, 5, 120)));
    for (Runnable wrong :
        List.<Runnable>of(
            () -> ReverseCurve.ofRunAndRadii(40, 10, 10),
            () -> ReverseCurve.ofRiseAndChord(10, 9),
            () -> ReverseCurve.ofRiseRunAndStraight(3, 4, 5),
            () -> ReverseCurve.ofRiseAndTurn(3, 0),
            () -> ReverseCurve.ofRiseAndRadii(3, 0, 5))) {
      refusal(wrong);
    }
  }

  private static String refusal(Runnable wrong) {
    return assertThrows(Problem.class, wrong::run).getMessage();
  }

  private static void same(ReverseCurve expected, ReverseCurve actual) {
    double scale = 1e-7 * Math.max(1, expected.length());
    assertEquals(expected.firstRadius(), actual.firstRadius(), scale);
    assertEquals(expected.secondRadius(), actual.secondRadius(), scale);
    assertEquals(expected.straight(), actual.straight(), scale);
    assertEquals(expected.turn(), actual.turn(), 1e-6);
  }

  private static void near(Point expected, Point actual) {
    assertTrue(expected.distanceTo(actual) < 1e-9, expected + " against " + actual);
  }
}
