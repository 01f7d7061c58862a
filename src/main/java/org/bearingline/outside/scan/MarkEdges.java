package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;

/**
 * Places the corners of a mark: along each side of its square the edge is found on many lines
 * across it, half way from black to white in linear light; a straight line is laid through them,
 * and the lines meet in the corners.
 */
final class MarkEdges {

  private static final int SAMPLES = 60;

  /** Share of a side left out at either end, where the corner's own blur reaches. */
  private static final double END = 0.1;

  private static final int ROUNDS = 2;

  private MarkEdges() {}

  /**
   * The mark with corners placed in the full picture; {@code reach} pixels is how far they may be.
   */
  static SeenMark placed(GreyImage image, SeenMark rough, int reach) {
    SeenMark mark = rough;
    double far = 2.0 * reach + 3;
    for (int round = 0; round < ROUNDS; round++) {
      List<Line> lines = new ArrayList<>();
      for (int side = 0; side < 4; side++) {
        Line line = line(image, mark, side, Math.min(far, mark.side() / 10));
        if (line == null) {
          return mark;
        }
        lines.add(line);
      }
      List<Point> corners = new ArrayList<>();
      for (int corner = 0; corner < 4; corner++) {
        corners.add(lines.get((corner + 3) % 4).meets(lines.get(corner)));
      }
      mark = new SeenMark(mark.set(), mark.letter(), corners);
      far = 4;
    }
    return mark;
  }

  /** A straight line by a point and its direction. */
  private record Line(Point at, Point direction) {
    Point meets(Line other) {
      double along = other.at.minus(at).cross(other.direction) / direction.cross(other.direction);
      return at.plus(direction.times(along));
    }
  }

  private static Line line(GreyImage image, SeenMark mark, int side, double reach) {
    Point from = mark.corners().get(side);
    Point to = mark.corners().get((side + 1) % 4);
    Point inwards = mark.centre().minus(from.plus(to).times(0.5));
    Point across = to.minus(from).unit().left();
    if (across.dot(inwards) > 0) {
      across = across.times(-1);
    }
    List<Point> edge = new ArrayList<>();
    for (int i = 0; i < SAMPLES; i++) {
      double share = END + (1 - 2 * END) * i / (SAMPLES - 1);
      Point middle = from.plus(to.minus(from).times(share));
      double out = crossing(image, middle, across, reach);
      if (!Double.isNaN(out)) {
        edge.add(middle.plus(across.times(out)));
      }
    }
    return edge.size() < SAMPLES / 2 ? null : StraightFit.through(edge, Line::new);
  }

  /** How far along {@code across} black turns to white, pixels; NaN where it does not. */
  private static double crossing(GreyImage image, Point middle, Point across, double reach) {
    double black = lightAt(image, middle, across, -reach);
    double white = lightAt(image, middle, across, reach);
    double half = (black + white) / 2;
    if (white - black < 0.05) {
      return Double.NaN;
    }
    double step = 0.25;
    double before = black;
    for (double out = -reach + step; out <= reach; out += step) {
      double here = lightAt(image, middle, across, out);
      if (before < half && here >= half) {
        return out - step * (here - half) / (here - before);
      }
      before = here;
    }
    return Double.NaN;
  }

  private static double lightAt(GreyImage image, Point middle, Point across, double out) {
    return image.lightAt(middle.x() + across.x() * out, middle.y() + across.y() * out);
  }
}
