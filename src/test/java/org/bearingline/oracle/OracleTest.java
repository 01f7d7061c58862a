package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.bearingline.Seed;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.junit.jupiter.api.Test;

/** The judges themselves, on offsets known by closed formula, right and wrong by a little. */
class OracleTest {

  private static final Region BOX =
      Region.of(Outline.of(Loop.rectangle(new Bounds(0, 0, 100, 60))));

  /** The box grown by {@code out} with round corners of radius r. */
  private static Region grownBox(double out, double r) {
    double low = -out;
    return Region.of(
        Outline.of(
            Trace.from(low + r, low)
                .to(100 + out - r, low)
                .round(100 + out - r, low + r, 100 + out, low + r, true)
                .to(100 + out, 60 + out - r)
                .round(100 + out - r, 60 + out - r, 100 + out - r, 60 + out, true)
                .to(low + r, 60 + out)
                .round(low + r, 60 + out - r, low, 60 + out - r, true)
                .to(low, low + r)
                .round(low + r, low + r, low + r, low, true)
                .closed()));
  }

  @Test
  void samplingPassesTheTrueOffsetOfABox() {
    DenseSampling sampling = new DenseSampling(BOX, 10, 9);
    Region offset = grownBox(10, 10);
    assertTrue(sampling.forward(offset).worst() < 1e-12);
    assertTrue(sampling.backward(offset).worst() < 1e-12);
    assertTrue(sampling.backward(offset).samples() > 50);
    assertEquals(List.of(), new JtsComparison(BOX, 10, 1e-4).disagreements(offset));
    assertEquals(List.of(), GridSimulation.of(BOX, 14, 150).dilate(10).disagreements(offset));
  }

  @Test
  void everyJudgeFindsAWrongCorner() {
    DenseSampling sampling = new DenseSampling(BOX, 10, 9);
    Region wrong = grownBox(10, 7);
    assertTrue(sampling.forward(wrong).worst() > 1);
    assertTrue(sampling.backward(wrong).worst() > 1);
    assertFalse(new JtsComparison(BOX, 10, 1e-4).disagreements(wrong).isEmpty());
    assertFalse(GridSimulation.of(BOX, 14, 250).dilate(10).disagreements(wrong).isEmpty());
  }

  @Test
  void samplingFindsAMicrometreAndAMissingLoop() {
    DenseSampling sampling = new DenseSampling(BOX, 10, 9);
    assertEquals(1e-3, sampling.forward(grownBox(10.001, 10.001)).worst(), 1e-9);
    Region ring =
        Region.of(
            Outline.of(
                Loop.of(Arc.circle(Point.ORIGIN, 50)), Loop.of(Arc.circle(Point.ORIGIN, 30))));
    DenseSampling onRing = new DenseSampling(ring, 5, 9);
    Region whole = Region.of(Outline.of(Loop.of(Arc.circle(Point.ORIGIN, 55))));
    assertTrue(onRing.forward(whole).worst() < 1e-12);
    assertEquals(30, onRing.backward(whole).worst(), 1e-9);
  }

  @Test
  void samplingFindsAnOffsetToTheWrongSide() {
    Region shrunk = Region.of(Outline.of(Loop.rectangle(new Bounds(10, 10, 90, 50))));
    assertTrue(new DenseSampling(BOX, -10, 9).forward(shrunk).worst() < 1e-12);
    assertTrue(new DenseSampling(BOX, 10, 9).forward(shrunk).worst() > 1);
  }

  /** Closing an L by r leaves a fillet of area r² (1 − π/4) in its corner. */
  @Test
  void gridClosesTheCornerOfAnL() {
    Loop ell =
        Loop.polygon(
            List.of(
                new Point(0, 0),
                new Point(80, 0),
                new Point(80, 30),
                new Point(30, 30),
                new Point(30, 80),
                new Point(0, 80)));
    Region closed =
        Region.of(
            Outline.of(
                Trace.from(0, 0)
                    .to(80, 0)
                    .to(80, 30)
                    .to(42, 30)
                    .round(42, 42, 30, 42, false)
                    .to(30, 80)
                    .to(0, 80)
                    .closed()));
    assertEquals(3900 + 144 * (1 - Math.PI / 4), closed.area(), 1e-9);
    GridSimulation simulated = GridSimulation.of(Region.of(Outline.of(ell)), 20, 300).close(12);
    assertEquals(List.of(), simulated.disagreements(closed));
    assertFalse(simulated.disagreements(Region.of(Outline.of(ell))).isEmpty());
    assertTrue(simulated.decided() > 0.9);
  }

  @Test
  void matchSeesAShiftAndForgivesASeam() {
    // The sharp corner is farthest: a diagonal of 0.3 less what the round corner of 0.2 leaves out.
    double corner = 0.3 * Math.sqrt(2) - 0.2 * (Math.sqrt(2) - 1);
    assertEquals(corner, RegionMatch.between(BOX, grownBox(0.3, 0.2)).worst(), 1e-9);
    Region split =
        Region.of(
            Outline.of(Loop.rectangle(new Bounds(0, 0, 50, 60))),
            Outline.of(Loop.rectangle(new Bounds(50 + 1e-9, 0, 100, 60))));
    assertEquals(0, RegionMatch.between(BOX, split).worst(), 1e-9);
  }

  /** The generators make valid regions: each point is wound round once or not at all. */
  @Property(tries = 1000, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  @Domain(OutlineArbitraries.class)
  void randomOutlinesAreValid(@ForAll Case given) {
    Edges edges = Edges.of(given.region());
    Bounds box = given.region().bounds();
    for (int i = 0; i < 50; i++) {
      // A lattice of rank 1 with the golden ratio covers the box evenly.
      double x = box.minX() + box.width() * ((i * 0.6180339887498949) % 1);
      double y = box.minY() + box.height() * ((i + 0.5) / 50);
      int winding = edges.winding(x, y);
      assertTrue(winding == 0 || winding == 1);
    }
    // Chords may cross only where walls are thinner than the chord error.
    assertTrue(new JtsReference(1e-4).flat(given.region()).isValid() || thin(edges));
  }

  private static boolean thin(Edges edges) {
    for (int i = 0; i < edges.count(); i++) {
      Edges.Place place = edges.place(i);
      Edge edge = place.edge();
      for (int k = 1; k < 64; k++) {
        double x = edge.x(k / 64.0);
        double y = edge.y(k / 64.0);
        if (edges.distanceExcept(x, y, i, -1, -1) < 1e-3) {
          return true;
        }
      }
    }
    return false;
  }
}
