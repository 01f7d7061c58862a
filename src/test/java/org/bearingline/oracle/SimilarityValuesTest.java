package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bearingline.Seed;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.junit.jupiter.api.Test;

/** Similarities against plane geometry done by hand. */
class SimilarityValuesTest {

  private static void assertNear(double x, double y, Point p) {
    assertEquals(x, p.x(), 1e-9);
    assertEquals(y, p.y(), 1e-9);
  }

  @Test
  void turnsAndMirrorsOfKnownPoints() {
    Point p = new Point(3, 1);
    assertNear(-1, 3, Similarity.rotation(90, Point.ORIGIN).apply(p));
    assertNear(-1, 1, Similarity.rotation(180, new Point(1, 1)).apply(p));
    assertNear(1, 3, Similarity.mirror(Point.ORIGIN, new Point(1, 1)).apply(p));
    assertNear(3, -1, Similarity.mirror(Point.ORIGIN, new Point(1, 0)).apply(p));
    assertNear(-1, 1, Similarity.mirror(new Point(1, 5), new Point(1, -2)).apply(p));
    assertNear(300, 100, Similarity.scaling(100).apply(p));
    assertEquals(p, Similarity.identity().apply(p));
    assertThrows(IllegalArgumentException.class, () -> Similarity.scaling(0));
  }

  @Property(tries = 500, seed = Seed.FIXED, edgeCases = EdgeCasesMode.NONE)
  void oneAfterTheOther(
      @ForAll @DoubleRange(min = -360, max = 360) double degrees,
      @ForAll @DoubleRange(min = -9, max = 9) double x,
      @ForAll @DoubleRange(min = -9, max = 9) double y) {
    Similarity turn = Similarity.rotation(degrees, new Point(2, -1));
    Similarity mirror = Similarity.mirror(new Point(x, y), new Point(x + 3, y - 2));
    Similarity scale = Similarity.scaling(2.5);
    Point p = new Point(y, x);
    Similarity all = turn.then(mirror).then(scale).then(mirror).then(turn);
    Point byHand = turn.apply(mirror.apply(scale.apply(mirror.apply(turn.apply(p)))));
    assertNear(byHand.x(), byHand.y(), all.apply(p));
    assertEquals(2.5, all.factor(), 1e-12);
    // A mirror undoes itself, and keeps the points of its line.
    assertNear(p.x(), p.y(), mirror.then(mirror).apply(p));
    assertNear(x + 1.5, y - 1, mirror.apply(new Point(x + 1.5, y - 1)));
    // A turn keeps the distance from its centre and adds its angle.
    Point from = p.minus(new Point(2, -1));
    Point to = turn.apply(p).minus(new Point(2, -1));
    assertEquals(from.norm(), to.norm(), 1e-9);
    assertEquals(
        from.norm() * from.norm() * Math.sin(Math.toRadians(degrees)), from.cross(to), 1e-9);
  }

  @Test
  void quarterTurnsAreExact() {
    for (int quarter = -8; quarter <= 8; quarter++) {
      double degrees = quarter * 90.0;
      assertEquals(Math.rint(Math.cos(Math.toRadians(degrees))), Degrees.cos(degrees), 0);
      assertEquals(Math.rint(Math.sin(Math.toRadians(degrees))), Degrees.sin(degrees), 0);
    }
    assertEquals(0.5, Degrees.sin(30), 1e-15);
    assertEquals(0.5, Degrees.cos(60), 1e-15);
    assertEquals(350, Degrees.normalised(-10), 0);
    assertEquals(0, Degrees.normalised(720), 0);
    assertEquals(180, Degrees.of(new Point(-1, -0.0)), 0);
  }
}
