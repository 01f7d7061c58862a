package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutsideTurnsTest {

  // n equal tangents about an arc of radius r that turns by α stand r (1/cos(α/2n) − 1) outside it.
  @ParameterizedTest
  @CsvSource({"1.5, 90, 1.5, 1", "1.5, 120, 1.5, 2", "15, 60, 1.5, 2", "10, 180, 2, 4"})
  void aTightArcBecomesTangents(double r, double turn, double allowance, int corners) {
    Arc arc = Arc.around(new Point(3, 4), r, -90, turn);
    OutsideTurns turns = OutsideTurns.squared(Path.of(arc), 38, allowance);
    assertEquals(corners, turns.corners().size());
    double over = r / Math.cos(Math.toRadians(turn / (2 * corners)));
    for (Point corner : turns.corners()) {
      assertEquals(over, corner.distanceTo(arc.center()), 1e-9);
    }
    assertTrue(over - r <= allowance / 2 + 1e-9);
    for (Primitive piece : turns.path().primitives()) {
      assertTrue(piece instanceof Line);
      assertEquals(r, piece.distanceTo(arc.center()), 1e-9);
    }
    assertEquals(arc.start(), turns.path().start());
    assertEquals(arc.end(), turns.path().end());
  }

  @Test
  void hollowsAndWideArcsStay() {
    Arc hollow = Arc.around(Point.ORIGIN, 5, 0, -90);
    Arc wide = Arc.around(Point.ORIGIN, 38, 0, 90);
    assertSame(hollow, OutsideTurns.squared(Path.of(hollow), 38, 1).path().primitives().get(0));
    assertSame(wide, OutsideTurns.squared(Path.of(wide), 38, 1).path().primitives().get(0));
  }
}
