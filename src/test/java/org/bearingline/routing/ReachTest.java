package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.outline.Point;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReachTest {

  private static final double EXACT = 1e-6;

  private static Reach flush(Part part, double diameter) {
    Cutter cutter = new Cutter(diameter);
    return Reach.of(part, cutter, Follower.flush(cutter));
  }

  private static Reach collar(Part part, double bit, double outside) {
    return Reach.of(part, new Cutter(bit), new Follower.Collar(outside));
  }

  /** A disc in a corner of angle θ between straight walls: r²(cot(θ/2) − (π − θ)/2). */
  private static double cornerArea(double r, double degrees) {
    double theta = Math.toRadians(degrees);
    return r * r * (1 / Math.tan(theta / 2) - (Math.PI - theta) / 2);
  }

  @ParameterizedTest
  @ValueSource(doubles = {30, 45, 60, 75, 90, 105, 120, 135, 150})
  void aSharpCornerKeepsAFillet(double degrees) {
    double r = 6.35;
    Reach reach = flush(Parts.notched(degrees), 2 * r);
    assertEquals(1, reach.leftovers().size());
    Leftover left = reach.leftovers().get(0);
    double half = Math.toRadians(degrees / 2);
    assertEquals(cornerArea(r, degrees), left.area(), EXACT);
    assertEquals(r * (1 / Math.sin(half) - 1), left.depth(), EXACT);
    assertEquals(0, left.insideRadius());
    assertEquals(Leftover.Kind.CORNER, left.kind());
    assertEquals(0, left.at().x(), EXACT);
    assertEquals(140, left.at().y(), EXACT);
  }

  @Test
  void aSquareOpeningKeepsFourRightAngledFillets() {
    Reach reach = flush(Parts.boardWith(Parts.rectangle(100, 60)), 12.7);
    assertEquals(4, reach.leftovers().size());
    for (Leftover left : reach.leftovers()) {
      assertEquals(6.35 * (Math.sqrt(2) - 1), left.depth(), EXACT);
      assertEquals(6.35 * 6.35 * (1 - Math.PI / 4), left.area(), EXACT);
      assertEquals("opening", left.edge());
    }
    // Reading order from the left; one above the other, from the top.
    assertEquals(List.of(1, 2, 3, 4), reach.leftovers().stream().map(Leftover::number).toList());
    List<Point> at = reach.leftovers().stream().map(Leftover::at).toList();
    assertTrue(at.get(0).x() < 0 && at.get(0).y() > 0);
    assertTrue(at.get(1).x() < 0 && at.get(1).y() < 0);
    assertTrue(at.get(2).x() > 0 && at.get(2).y() > 0);
  }

  /**
   * A hollow arc of radius ρ that turns by α between straight tangents, and a disc of radius r
   * above ρ. Between the tangents and an arc of radius ρ lies ρ²(tan(α/2) − α/2): the kite of the
   * two tangents, ρ² tan(α/2), less the sector. The wider disc lies on the same tangents, so the
   * leftover is (r² − ρ²)(tan(α/2) − α/2), and its depth, on the bisector, (r − ρ)(1/cos(α/2) − 1).
   */
  @ParameterizedTest
  @CsvSource({"12.7, 60, 15.875", "12.7, 90, 15.875", "5, 30, 9.525", "10, 120, 10.001"})
  void aHollowArcBetweenStraightTangentsKeepsAStrip(double rho, double alpha, double r) {
    Part part =
        Walk.from(0, 0, 0)
            .ahead(200)
            .arc(rho, -alpha)
            .ahead(100)
            .turn(alpha / 2)
            .sawn()
            .turn(90)
            .ahead(400)
            .part("elbow");
    Reach reach = flush(part, 2 * r);
    assertEquals(1, reach.leftovers().size());
    double half = Math.toRadians(alpha / 2);
    Leftover left = reach.leftovers().get(0);
    assertEquals((r * r - rho * rho) * (Math.tan(half) - half), left.area(), EXACT);
    assertEquals((r - rho) * (1 / Math.cos(half) - 1), left.depth(), EXACT);
    assertEquals(rho, left.insideRadius(), EXACT);
    assertEquals(Leftover.Kind.CORNER, left.kind());
  }

  /**
   * The hollow arc of a lift, radius ρ about c2, lies between the straight and the outside arc,
   * radius q about c1, that it continues. A disc of radius r above ρ rests on both: its centre c is
   * r below the straight and q + r from c1. Of the four-sided figure c1, foot of c1, foot of c, c,
   * the disc's sector r²β/2 is free and the rest wood, β being the angle at c between the two
   * touching points; likewise for the designed arc with c2, ρ and α; and between the two lines from
   * c1 the outside arc's own sector q²(α − β)/2 is wood in the design.
   */
  private static double liftLeftover(double q, double rho, double alpha, double r) {
    Point c2 = new Point(0, -rho);
    Point c1 = c2.plus(new Point(-Math.sin(alpha), Math.cos(alpha)).times(q + rho));
    double up = c1.y() + r;
    double x = c1.x() + Math.sqrt((q + r) * (q + r) - up * up);
    double beta = Math.acos(up / (q + r));
    double wide = figure(c1, x, r) - r * r * beta / 2;
    double designed = figure(c1, 0, rho) - rho * rho * alpha / 2 + q * q * (alpha - beta) / 2;
    return wide - designed;
  }

  /** Area of c1, its foot on y = 0, (x, 0), (x, −r). */
  private static double figure(Point c1, double x, double r) {
    double[] xs = {c1.x(), c1.x(), x, x};
    double[] ys = {c1.y(), 0, 0, -r};
    double doubled = 0;
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      doubled += xs[i] * ys[j] - xs[j] * ys[i];
    }
    return Math.abs(doubled) / 2;
  }

  @Test
  void aLiftKeepsWoodInBothHollowsUnderAFatBit() {
    Reach reach = flush(Parts.liftRail(12.7), 31.75);
    assertEquals(2, reach.leftovers().size());
    double area = liftLeftover(12.7, 12.7, Math.toRadians(60), 15.875);
    for (Leftover left : reach.leftovers()) {
      assertEquals(area, left.area(), EXACT);
      assertEquals(12.7, left.insideRadius(), EXACT);
    }
    assertTrue(reach.leftovers().get(0).at().x() < reach.leftovers().get(1).at().x());
    assertFalse(reach.isComplete());
  }

  @ParameterizedTest
  @ValueSource(doubles = {6.35, 12.7, 19.05, 25.4})
  void aLiftKeepsNothingUnderASlimBit(double diameter) {
    assertTrue(flush(Parts.liftRail(12.7), diameter).isComplete());
  }

  @Test
  void aSlotNarrowerThanTheBitIsANeck() {
    Part part =
        Walk.from(0, 0, 0)
            .ahead(100)
            .turn(90)
            .ahead(40)
            .arc(5, -180)
            .ahead(40)
            .turn(90)
            .to(210, 0)
            .sawn()
            .to(210, 100)
            .to(0, 100)
            .part("slotted");
    Reach reach = flush(part, 12.7);
    assertEquals(1, reach.leftovers().size());
    Leftover left = reach.leftovers().get(0);
    assertEquals(Leftover.Kind.NECK, left.kind());
    assertEquals(5, left.insideRadius(), EXACT);
    // The whole slot less the cap of the disc that dips into its mouth, 10 mm wide.
    double r = 6.35;
    double sector = r * r * Math.asin(5 / r);
    double cap = sector - 5 * Math.sqrt(r * r - 25);
    assertEquals(10 * 40 + Math.PI * 25 / 2 - cap, left.area(), EXACT);
    assertTrue(flush(part, 10).isComplete());
  }

  @Test
  void aHollowThatRunsIntoASawnEndIsMeasuredWithinTheStock() {
    // The hollow arc ends at the sawn end, tangent to the x axis; the disc rests on the run-out.
    double rho = 12;
    double r = 15;
    Part part =
        Walk.from(0, 0, 60)
            .ahead(80)
            .arc(rho, -60)
            .sawn()
            .turn(90)
            .ahead(60)
            .to(-40, 150)
            .to(-40, 0)
            .part("end");
    Reach reach = flush(part, 2 * r);
    assertEquals(1, reach.leftovers().size());
    double half = Math.toRadians(30);
    double whole = (r * r - rho * rho) * (Math.tan(half) - half);
    // Beyond the end lies the sliver between the tangent and the disc, over (r − ρ) tan(α/2).
    double over = (r - rho) * Math.tan(half);
    double sliver =
        r * over - (over * Math.sqrt(r * r - over * over) + r * r * Math.asin(over / r)) / 2;
    assertEquals(whole - sliver, reach.leftovers().get(0).area(), EXACT);
  }

  @Test
  void aCollarRoundsOutsideCornersByTheDifferenceOfTheRadii() {
    // An outside square corner opened by D(o): depth o(√2 − 1), area o²(1 − π/4).
    double o = 3.175;
    Reach reach = collar(Walk.part("block", Parts.rectangle(100, 60)), 9.525, 15.875);
    assertEquals(4, reach.overcuts().size());
    assertTrue(reach.isComplete());
    for (Overcut over : reach.overcuts()) {
      assertEquals(o * (Math.sqrt(2) - 1), over.depth(), EXACT);
      assertEquals(o * o * (1 - Math.PI / 4), over.area(), EXACT);
    }
  }

  @Test
  void runOutKeepsTheCornersAtTheEndsCrisp() {
    assertEquals(List.of(), collar(Parts.liftRail(12.7), 9.525, 15.875).overcuts());
    assertEquals(List.of(), flush(Parts.liftRail(12.7), 12.7).overcuts());
  }

  // Rule published with the collar question (forum): in a sharp template corner the recess comes
  // out
  // with half the bit, d/2 — example OD 3/8, d 1/4 gives 1/8 in.
  @Test
  void aCollarLeavesTheBitsOwnRadiusInsideCorners() {
    Reach reach = collar(Parts.boardWith(Parts.rectangle(80, 50)), 6.35, 9.525);
    assertEquals(4, reach.leftovers().size());
    for (Leftover left : reach.leftovers()) {
      assertEquals(3.175 * (Math.sqrt(2) - 1), left.depth(), EXACT);
    }
  }

  @Test
  void everyCavityIsReached() {
    Part part =
        Walk.part(
            "front",
            Parts.board(400, 200),
            Walk.blind("pull", Cavity.Kind.RECESS, Parts.rectangle(60, 40), 8),
            Walk.through("hole", Parts.roundedRectangle(20, 20, 8)));
    Reach reach = flush(part, 12.7);
    assertEquals(4, reach.leftovers().size());
    assertTrue(reach.leftovers().stream().allMatch(l -> l.edge().equals("pull")));
  }

  @Test
  void anOpenSlotKeepsNothingAtItsOpenEnd() {
    Contour slot =
        Walk.from(150, -10, 180).ahead(80).arc(10, -180).to(150, 10).sawn().to(150, -10).close();
    Part part = Walk.part("board", Parts.board(300, 200), Walk.through("slot", slot));
    assertTrue(flush(part, 20).isComplete());
    assertTrue(flush(part, 12.7).isComplete());
  }

  @Test
  void aBitWiderThanTheOpeningIsRefused() {
    Part part = Parts.boardWith(Parts.roundedRectangle(100, 20, 5));
    Problem problem = assertThrows(Problem.class, () -> flush(part, 20.1));
    assertTrue(problem.spoken().startsWith("opening: "), problem.spoken());
    assertTrue(problem.getMessage().contains("wider"), problem.getMessage());
  }

  @Test
  void aBiggerBitNeverReachesMore() {
    for (Part part :
        List.of(
            Parts.liftRail(9),
            Parts.notched(75),
            Parts.boardWith(Parts.roundedRectangle(120, 70, 8)))) {
      double before = 0;
      for (double d = 6; d < 50; d += 3.7) {
        double area = flush(part, d).leftovers().stream().mapToDouble(Leftover::area).sum();
        assertTrue(area >= before - EXACT, part.name() + " at " + d);
        before = area;
      }
    }
  }

  @Test
  void aBitNoWiderThanTheLargestLeavesNothing() {
    for (Part part :
        List.of(
            Parts.liftRail(9),
            Parts.liftRail(33),
            Parts.boardWith(Parts.roundedRectangle(120, 30, 15)),
            Parts.boardWith(Parts.roundedRectangle(120, 70, 8)))) {
      double largest = LargestCutter.of(part).diameter().orElseThrow();
      assertTrue(flush(part, largest).isComplete(), part.name());
      assertTrue(flush(part, largest - 0.001).isComplete(), part.name());
      assertFalse(isComplete(part, largest + 0.002), part.name());
    }
  }

  private static boolean isComplete(Part part, double diameter) {
    try {
      return flush(part, diameter).isComplete();
    } catch (Problem doesNotEnter) {
      return false;
    }
  }
}
