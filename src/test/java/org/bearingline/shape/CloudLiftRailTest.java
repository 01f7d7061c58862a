package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The cloud-lift rail against the closed formulas of the reverse curve (surveying texts: p = (R1 +
 * R2)(1 − cos θ), x = (R1 + R2) sin θ, with a straight s: p + s sin θ, x + s cos θ), solved here
 * for the angle by bisection, apart from the shape's own arithmetic.
 */
class CloudLiftRailTest {

  private record Lift(double r1, double r2, double s, double rise) {

    double angle() {
      double low = 0;
      double high = Math.PI / 2;
      for (int i = 0; i < 200; i++) {
        double middle = (low + high) / 2;
        double reached = (r1 + r2) * (1 - Math.cos(middle)) + s * Math.sin(middle);
        if (reached < rise) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return low;
    }

    double run() {
      return (r1 + r2) * Math.sin(angle()) + s * Math.cos(angle());
    }

    /** Area under the curve, from its foot line: each arc's segment and rectangle, summed up. */
    double areaUnder() {
      double t = angle();
      double sin = Math.sin(t);
      double cos = Math.cos(t);
      // ∫ y dx over the first arc, y = r1 (1 − cos u), dx = r1 cos u du.
      double first = r1 * r1 * (sin - (t + sin * cos) / 2);
      double y1 = r1 * (1 - cos);
      double y2 = y1 + s * sin;
      double straight = s * cos * (y1 + y2) / 2;
      // Second arc: y = rise − r2 (1 − cos u).
      double second = rise * r2 * sin - r2 * r2 * (sin - (t + sin * cos) / 2);
      return first + straight + second;
    }
  }

  @ParameterizedTest
  @CsvSource({
    // length, width, rise, radius, outer, straight, steps, end, tread: all mm
    "609.6, 101.6, 19.05, 15.875, 15.875, 0, 1, 76.2, 25.4",
    "900, 120, 20, 12, 18, 0, 2, 90, 30",
    "900, 120, 20, 12, 18, 8, 2, 90, 30",
    "700, 100, 30, 15, 15, 0, 1, 80, 25.4",
    "700, 100, 6, 40, 60, 3, 1, 80, 25.4",
  })
  void areaAndRunFollowTheReverseCurve(
      double length,
      double width,
      double rise,
      double radius,
      double outer,
      double straight,
      int steps,
      double end,
      double tread) {
    Part part =
        ShapeFixtures.part(
            ShapeFixtures.builtIn("cloud-lift-rail"),
            Map.of(
                "length", length + "mm",
                "width", width + "mm",
                "rise", rise + "mm",
                "radius", radius + "mm",
                "outer_radius", outer + "mm",
                "straight", straight + "mm",
                "steps", String.valueOf(steps),
                "end", end + "mm",
                "tread", tread + "mm"));
    Lift lift = new Lift(outer, radius, straight, rise);
    double cut = 0; // under the lower edge of one half
    double x = end;
    for (int i = 0; i < steps; i++) {
      cut += i * rise * lift.run() + lift.areaUnder();
      x += lift.run();
      double next = i + 1 < steps ? tread : length / 2 - x;
      cut += (i + 1) * rise * next;
      x += next;
    }
    Loop edge = part.contour().loop();
    assertEquals(length / 2, x, 1e-9);
    assertEquals(length * width - 2 * cut, edge.signedArea(), 1e-6);
    List<Arc> arcs = arcs(edge);
    assertEquals(4 * steps, arcs.size(), "two arcs a lift, none split");
    for (int i = 0; i < arcs.size(); i++) {
      boolean hollow = arcs.get(i).sweep() < 0;
      assertEquals(hollow ? radius : outer, arcs.get(i).radius(), 1e-9);
      assertEquals(Math.toDegrees(lift.angle()), Math.abs(arcs.get(i).sweep()), 1e-9);
    }
    long sawn = part.contour().kinds().stream().filter(kind -> kind == EdgeKind.SAWN).count();
    assertEquals(3, sawn, "two ends and the top");
    int expected = 4 + steps * (straight > 0 ? 6 : 4) + 2 * (steps - 1) + 2;
    assertEquals(expected, edge.size(), "no piece more than designed");
  }

  private static List<Arc> arcs(Loop loop) {
    return loop.primitives().stream()
        .filter(piece -> piece.curvature() != 0)
        .map(piece -> piece.<Arc>match(line -> null, arc -> arc))
        .toList();
  }
}
