package org.bearingline.routing.grain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Problem;
import org.bearingline.routing.Station;
import org.bearingline.routing.operation.Face;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Feed and grain against cases worked by hand; the direction rule as in the shop's sources. */
class GrainReadingTest {

  private static final Approach HAND_A = new Approach(Station.HAND_HELD, Face.A);
  private static final Approach HAND_B = new Approach(Station.HAND_HELD, Face.B);
  private static final Approach TABLE_A = new Approach(Station.TABLE, Face.A);
  private static final GrainSettings SHARP = GrainSettings.usual().withLimits(0, 0);
  private static final double RADIUS = 100;
  private static final double QUADRANT = Math.PI / 2 * RADIUS;

  private static GrainReading read(Contour contour, GrainSettings settings, Approach approach) {
    return GrainReading.of(List.of(new GrainEdge("edge", contour)), settings, approach);
  }

  private static Contour disc() {
    return Contour.routed(Loop.of(Arc.circle(Point.ORIGIN, RADIUS)));
  }

  private static Contour polygon(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Point(xy[i], xy[i + 1]));
    }
    return Contour.routed(Loop.polygon(corners));
  }

  private static GrainClass at(GrainReading reading, double x, double y) {
    Point p = new Point(x, y);
    return reading.stretches().stream()
        .filter(s -> s.path().primitives().stream().anyMatch(piece -> piece.distanceTo(p) < 1e-6))
        .findFirst()
        .orElseThrow()
        .grain();
  }

  private static double degrees(GrainStretch stretch) {
    return Math.toDegrees(stretch.length() / RADIUS);
  }

  /**
   * Counter-clockwise round a disc with fibres along x: going up the lower right quadrant the edge
   * falls away from the fibres, which run out into the waste; over the upper right they dive in.
   */
  @ParameterizedTest
  @CsvSource({"-45, CLEAN", "45, TEARS", "135, CLEAN", "225, TEARS"})
  void twoQuadrantsOfADiscAreCleanAndTwoTear(double position, GrainClass expected) {
    GrainReading reading = read(disc(), SHARP, HAND_A);
    Point p = Point.polar(RADIUS, position);
    assertEquals(expected, at(reading, p.x(), p.y()));
    assertEquals(4, reading.stretches().size());
    for (GrainStretch stretch : reading.stretches()) {
      assertEquals(QUADRANT, stretch.length(), 1e-9);
    }
    assertEquals(0.5, reading.shares().share(GrainClass.CLEAN), 1e-12);
    assertEquals(0.5, reading.shares().share(GrainClass.TEARS), 1e-12);
  }

  @Test
  void anOpeningTearsInTheSameQuadrantsAsADisc() {
    // Clockwise, its wood outside: at the upper right the cutter goes down to the right, so g is
    // +x, and the waste lies down to the left, so that g·n < 0. At the lower right it goes down to
    // the left, g is -x and the waste lies up to the left: g·n > 0.
    GrainReading reading = read(disc().clockwise(), SHARP, HAND_A);
    Point upperRight = Point.polar(RADIUS, 45);
    Point lowerRight = Point.polar(RADIUS, -45);
    assertEquals(GrainClass.TEARS, at(reading, upperRight.x(), upperRight.y()));
    assertEquals(GrainClass.CLEAN, at(reading, lowerRight.x(), lowerRight.y()));
  }

  @Test
  void bandsOfADiscHaveTheAnglesOfTheLimits() {
    GrainReading reading = read(disc(), GrainSettings.usual().withLimits(5, 15), HAND_A);
    // Top and bottom 10° each along the fibres, both ends 30° each end grain, the rest in four.
    assertEquals(8, reading.stretches().size());
    for (GrainStretch stretch : reading.stretches()) {
      double expected =
          switch (stretch.grain()) {
            case ALONG -> 10;
            case END_GRAIN -> 30;
            default -> 70;
          };
      assertEquals(expected, degrees(stretch), 1e-9, stretch.grain().words());
    }
    assertEquals(GrainClass.ALONG, at(reading, 0, -RADIUS));
    assertEquals(GrainClass.END_GRAIN, at(reading, RADIUS, 0));
  }

  /** A leg, its wide end at the left, fibres along it; hand-held, lower edge from left to right. */
  @Test
  void aTaperIsCleanFromTheWideEndToTheNarrow() {
    Contour leg = polygon(0, -40, 400, -10, 400, 10, 0, 40);
    GrainSettings settings = GrainSettings.usual().withLimits(2, 15);
    GrainReading hand = read(leg, settings, HAND_A);
    assertEquals(GrainClass.CLEAN, at(hand, 200, -25), "lower edge goes from wide to narrow");
    assertEquals(GrainClass.TEARS, at(hand, 200, 25), "upper edge goes from narrow to wide");
    assertEquals(GrainClass.END_GRAIN, at(hand, 400, 0));
    GrainReading table = read(leg, settings, TABLE_A);
    assertEquals(GrainClass.TEARS, at(table, 200, -25), "seen from above the table is mirrored");
    assertEquals(GrainClass.CLEAN, at(table, 200, 25));
    GrainReading turned = read(leg, settings, HAND_B);
    assertEquals(GrainClass.TEARS, at(turned, 200, -25));
  }

  @Test
  void stretchesRunTheWayTheCutterGoes() {
    Contour leg = polygon(0, -40, 400, -10, 400, 10, 0, 40);
    for (Approach approach : List.of(HAND_A, TABLE_A)) {
      GrainReading reading = read(leg, GrainSettings.usual(), approach);
      Point lower =
          reading.stretches().stream()
              .flatMap(s -> s.path().primitives().stream())
              .filter(p -> p.distanceTo(new Point(200, -25)) < 1e-9)
              .findFirst()
              .orElseThrow()
              .tangentAt(0.5);
      assertEquals(approach.isWoodOnLeft(), lower.x() > 0);
    }
  }

  @Test
  void fibresMayLieAtAnyAngle() {
    // The leg turned by 30° with its fibres reads as before; fibres across make end grain of it.
    Contour leg = polygon(0, -40, 400, -10, 400, 10, 0, 40);
    Contour turned = leg.transformed(Similarity.rotation(30, Point.ORIGIN));
    GrainShares straight = read(leg, GrainSettings.usual(), HAND_A).shares();
    GrainShares slanted = read(turned, GrainSettings.usual().withFibres(30), HAND_A).shares();
    GrainShares half = read(turned, GrainSettings.usual().withFibres(-150), HAND_A).shares();
    for (GrainClass grain : GrainClass.values()) {
      assertEquals(straight.length(grain), slanted.length(grain), 1e-9);
      assertEquals(straight.length(grain), half.length(grain), 1e-9);
    }
    GrainReading across = read(leg, GrainSettings.usual().withFibres(90), HAND_A);
    assertEquals(GrainClass.END_GRAIN, at(across, 200, 25));
    assertEquals(GrainClass.ALONG, at(across, 400, 0));
  }

  @Test
  void sawnEdgesAreLeftOut() {
    Loop loop = polygon(0, 0, 400, 0, 400, 100, 0, 100).loop();
    Contour contour =
        new Contour(loop, List.of(EdgeKind.ROUTED, EdgeKind.SAWN, EdgeKind.SAWN, EdgeKind.ROUTED));
    GrainReading reading = read(contour, GrainSettings.usual(), HAND_A);
    assertEquals(500, reading.shares().total(), 1e-9);
    assertEquals(2, reading.stretches().size());
    Contour sawn = new Contour(loop, Collections.nCopies(4, EdgeKind.SAWN));
    assertTrue(read(sawn, GrainSettings.usual(), HAND_A).stretches().isEmpty());
    assertEquals(0, read(sawn, GrainSettings.usual(), HAND_A).shares().share(GrainClass.CLEAN));
  }

  @Test
  void theClassIsThatOfTheAngle() {
    // sin φ = g·n, φ the angle by which the edge turns off the fibres.
    for (double slope = -89; slope < 90; slope += 2) {
      Point far = Point.polar(100, slope);
      Contour triangle =
          polygon(0, 0, far.x(), far.y(), -Degrees.sin(slope) * 50, Degrees.cos(slope) * 50);
      Point middle = far.times(0.5);
      GrainReading reading = read(triangle, GrainSettings.usual().withLimits(5, 15), HAND_A);
      GrainClass expected =
          Math.abs(slope) <= 5
              ? GrainClass.ALONG
              : Math.abs(slope) >= 75
                  ? GrainClass.END_GRAIN
                  : slope > 0 ? GrainClass.CLEAN : GrainClass.TEARS;
      assertEquals(expected, at(reading, middle.x(), middle.y()), "slope " + slope);
    }
  }

  @Test
  void figuresThatCannotBeAreRefused() {
    GrainSettings usual = GrainSettings.usual();
    assertThrows(Problem.class, () -> usual.withFibres(Double.NaN));
    assertThrows(Problem.class, () -> usual.withFibres(Double.POSITIVE_INFINITY));
    assertThrows(Problem.class, () -> usual.withLimits(-1, 15));
    assertThrows(Problem.class, () -> usual.withLimits(5, 46));
    assertThrows(Problem.class, () -> usual.withShortGrain(0, 6, 1));
    assertThrows(Problem.class, () -> usual.withShortGrain(1, Double.NaN, 1));
    assertThrows(Problem.class, () -> usual.withShortGrain(1, 6, 0));
  }

  /** A square's sides: two lie along the fibres, two are end grain, a half each; nothing tears. */
  @Test
  void blindSquareIsToldWithoutTheKnife() {
    GrainReading reading = read(polygon(0, 0, 0, 50, 50, 50, 50, 0), GrainSettings.usual(), HAND_A);
    assertEquals(
        List.of(
            "Of 200 mm of blind edge, with the router in the hand on face A, 50 % is along the"
                + " grain, 50 % is end grain."),
        reading.blindSentences(Units.MM));
  }

  /** Half of a round hollow runs against the grain: no other face takes that away. */
  @Test
  void blindHollowThatTearsIsKnifedFirst() {
    Contour hollow = disc().clockwise();
    List<String> sentences = read(hollow, SHARP, HAND_A).blindSentences(Units.MM);
    assertEquals(2, sentences.size());
    assertTrue(sentences.get(0).contains("50 % is against the grain"), sentences.get(0));
    assertTrue(sentences.get(1).contains("knife the line first"), sentences.get(1));
  }

  @Test
  void whatIsOnlySawnHasNothingToSay() {
    Contour sawn = Contour.sawn(disc().loop());
    assertEquals(List.of(), read(sawn, SHARP, HAND_A).blindSentences(Units.MM));
  }
}
