package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;

/**
 * Gives corners back what the blur of a picture took. A sharp corner that turns by τ is cut off by
 * a blur of standard deviation σ to a distance of about 0.8 σ tan(τ/2): the mean of |x| tan(τ/2)
 * under a bell. Where an edge turns and is cut off by no more than that, its straight sides are run
 * on until they meet.
 */
final class SharpCorners {

  private static final double LEAST_TURN = 25;
  private static final double MOST_TURN = 150;
  private static final double CUT = 0.8;

  /**
   * A corner may be cut half as much again and a tenth of a pixel more before it is a round one.
   */
  private static final double SLACK = 1.5;

  private static final double PIXELS = 0.1;

  /** A crack follows the next after this many pixels, in the mean over all directions. */
  private static final double SPACING = 0.8;

  private final TracedLoop loop;
  private final double blur;
  private final int near;
  private final int far;

  private SharpCorners(TracedLoop loop, double blur) {
    this.loop = loop;
    this.blur = blur;
    this.near = (int) Math.ceil(2.5 * blur / SPACING);
    this.far = (int) Math.ceil(8 * blur / SPACING) + 2;
  }

  /** The points of a loop with its corners sharp again, in pixels. */
  static List<Point> restored(TracedLoop loop, double blur) {
    return new SharpCorners(loop, blur).restored();
  }

  private record Side(Point at, Point direction) {}

  private List<Point> restored() {
    int size = loop.size();
    Point[] points = new Point[size];
    for (int i = 0; i < size; i++) {
      points[i] = loop.point(i);
    }
    if (size < 4 * far) {
      return List.of(points);
    }
    double[] turns = new double[size];
    for (int i = 0; i < size; i++) {
      turns[i] = roughTurn(i);
    }
    for (int i = 0; i < size; i++) {
      if (turns[i] > LEAST_TURN && turns[i] < MOST_TURN && isPeak(turns, i)) {
        sharpen(points, i);
      }
    }
    List<Point> kept = new ArrayList<>(size);
    for (Point point : points) {
      if (point != null) {
        kept.add(point);
      }
    }
    return kept;
  }

  private double roughTurn(int i) {
    Point before = loop.point(i - near).minus(loop.point(i - far));
    Point after = loop.point(i + far).minus(loop.point(i + near));
    return Math.toDegrees(Math.abs(Math.atan2(before.cross(after), before.dot(after))));
  }

  private boolean isPeak(double[] turns, int i) {
    for (int j = 1; j <= far; j++) {
      if (turns[Math.floorMod(i - j, turns.length)] >= turns[i]
          || turns[Math.floorMod(i + j, turns.length)] > turns[i]) {
        return false;
      }
    }
    return true;
  }

  private void sharpen(Point[] points, int i) {
    Side before = side(i - far, i - near);
    Side after = side(i + near, i + far);
    double sine = before.direction.cross(after.direction);
    double turn = Math.abs(Math.atan2(sine, before.direction.dot(after.direction)));
    if (Math.abs(sine) < 0.2) {
      return;
    }
    double along = after.at.minus(before.at).cross(after.direction) / sine;
    Point corner = before.at.plus(before.direction.times(along));
    double nearest = Double.POSITIVE_INFINITY;
    for (int j = -near; j <= near; j++) {
      nearest = Math.min(nearest, corner.distanceTo(loop.point(i + j)));
    }
    if (nearest > SLACK * CUT * blur * Math.tan(turn / 2) + PIXELS) {
      return;
    }
    for (int j = -near; j <= near; j++) {
      points[Math.floorMod(i + j, points.length)] = null;
    }
    points[i] = corner;
  }

  private Side side(int from, int to) {
    List<Point> between = new ArrayList<>();
    for (int i = from; i <= to; i++) {
      between.add(loop.point(i));
    }
    Point way = loop.point(to).minus(loop.point(from));
    return StraightFit.through(
        between,
        (at, direction) -> new Side(at, direction.dot(way) < 0 ? direction.times(-1) : direction));
  }
}
