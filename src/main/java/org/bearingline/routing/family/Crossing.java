package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;

/** Where a line square to a part's length or along it crosses a plate. */
final class Crossing {

  private static final double NEAR = 1e-9;

  private Crossing() {}

  /** The longest line at x from the lowest crossing of the plate's edge to the highest. */
  static Optional<Line> atX(Loop edge, double x) {
    List<Double> at = new ArrayList<>();
    edge.primitives()
        .forEach(p -> at.addAll(p.match(line -> crossings(line, x), arc -> crossings(arc, x))));
    double low = at.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    double high = at.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return high - low > NEAR
        ? Optional.of(new Line(new Point(x, low), new Point(x, high)))
        : Optional.empty();
  }

  private static List<Double> crossings(Line line, double x) {
    double from = line.start().x();
    double to = line.end().x();
    if (x < Math.min(from, to) - NEAR || x > Math.max(from, to) + NEAR) {
      return List.of();
    }
    if (Math.abs(to - from) <= NEAR) {
      return List.of(line.start().y(), line.end().y());
    }
    return List.of(line.start().towards(line.end(), (x - from) / (to - from)).y());
  }

  private static List<Double> crossings(Arc arc, double x) {
    double off = x - arc.center().x();
    double square = arc.radius() * arc.radius() - off * off;
    List<Double> at = new ArrayList<>();
    if (square >= 0) {
      for (double up : new double[] {Math.sqrt(square), -Math.sqrt(square)}) {
        if (arc.covers(new Point(off, up).degrees())) {
          at.add(arc.center().y() + up);
        }
      }
    }
    return at;
  }
}
