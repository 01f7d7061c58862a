package org.bearingline.outline.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;

class MirroredHalfTest {

  private static final Point FOOT = new Point(50, 0);
  private static final Point HEAD = new Point(50, 1);

  @Test
  void aStraightAcrossTheAxisBecomesOne() {
    Path half =
        Path.of(
            new Line(new Point(0, 0), new Point(0, 20)),
            new Line(new Point(0, 20), new Point(50, 20)));
    Path whole = MirroredHalf.complete(half, FOOT, HEAD);
    assertEquals(3, whole.primitives().size());
    assertEquals(new Line(new Point(0, 20), new Point(100, 20)), whole.primitives().get(1));
    assertEquals(new Point(100, 0), whole.end());
  }

  @Test
  void anArcAcrossTheAxisBecomesOne() {
    Arc arc = Arc.around(new Point(50, -30), 60, 140, -50);
    Path whole = MirroredHalf.complete(Path.of(arc), FOOT, HEAD);
    Arc one = (Arc) whole.primitives().get(0);
    assertEquals(1, whole.primitives().size());
    assertEquals(-100, one.sweep(), 1e-9);
    assertEquals(60, one.radius());
    assertEquals(100 - arc.start().x(), one.end().x(), 1e-9);
  }

  @Test
  void aPeakStaysAPeak() {
    Path half = Path.of(new Line(new Point(0, 0), new Point(50, 20)));
    Path whole = MirroredHalf.complete(half, FOOT, HEAD);
    assertEquals(2, whole.primitives().size());
    assertEquals(new Point(50, 20), whole.primitives().get(1).start());
  }

  @Test
  void aClosedHalfJoinsAtBothEnds() {
    Path half =
        Path.of(
            new Line(new Point(50, 0), new Point(0, 0)),
            new Line(new Point(0, 0), new Point(0, 20)),
            new Line(new Point(0, 20), new Point(50, 20)));
    Loop loop = MirroredHalf.close(half, FOOT, HEAD);
    assertEquals(4, loop.size());
    assertEquals(2000, Math.abs(loop.signedArea()), 1e-9);
  }

  @Test
  void aHalfCircleBecomesACircle() {
    Arc half = Arc.around(new Point(50, 10), 7, 90, 180);
    Loop loop = MirroredHalf.close(Path.of(half), FOOT, HEAD);
    assertEquals(1, loop.size());
    assertEquals(Math.PI * 49, loop.signedArea(), 1e-9);
  }

  /** On a slanted axis: the whole must be its own mirror image, point for point. */
  @Test
  void theWholeIsItsOwnImage() {
    Point p = new Point(3, 4);
    Point q = new Point(10, -2);
    Similarity mirror = Similarity.mirror(p, q);
    Point onAxis = p.towards(q, 0.4);
    Path curve = ReverseCurve.ofRiseAndRun(5, 12).from(new Point(-30, 7), 25, Side.RIGHT);
    Line last = new Line(curve.end(), onAxis);
    Path half = Path.of(curve.primitives().get(0), curve.primitives().get(1), last);
    Path whole = MirroredHalf.complete(half, p, q);
    int n = whole.primitives().size();
    assertEquals(6, n);
    for (int i = 0; i < n; i++) {
      Point image = mirror.apply(whole.primitives().get(i).pointAt(0.3));
      assertTrue(whole.primitives().get(n - 1 - i).pointAt(0.7).distanceTo(image) < 1e-9);
      assertTrue(
          i == 0 || whole.primitives().get(i - 1).end().equals(whole.primitives().get(i).start()));
    }
  }

  @Test
  void refusals() {
    Path away = Path.of(new Line(new Point(0, 0), new Point(47, 20)));
    assertEquals(
        "the half ends 3 mm away from the mirror axis; bring that point onto the axis",
        assertThrows(Problem.class, () -> MirroredHalf.complete(away, FOOT, HEAD)).getMessage());
    Path along = Path.of(new Line(new Point(50, 0), new Point(50, 20)));
    assertThrows(Problem.class, () -> MirroredHalf.complete(along, FOOT, HEAD));
    Path open = Path.of(new Line(new Point(0, 0), new Point(50, 20)));
    assertThrows(Problem.class, () -> MirroredHalf.close(open, FOOT, HEAD));
    assertThrows(Problem.class, () -> MirroredHalf.complete(open, FOOT, FOOT));
  }
}
