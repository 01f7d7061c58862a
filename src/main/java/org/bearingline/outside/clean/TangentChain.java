package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Straights and arcs that run on into each other without a bend: where the first starts, its
 * direction, and of each piece the length and the signed curvature. So every value of these is
 * tangent-continuous, and the best is found by least squares.
 *
 * <p>Pieces are numbered from 0; state i is the point and direction where piece i starts, the last
 * one where the chain ends.
 */
final class TangentChain {

  /** mm: no piece is shorter. */
  private static final double LEAST = 1e-6;

  /** Share of a whole turn that one piece runs at most. */
  private static final double ROUND = 1 - 1e-6;

  /**
   * Where a chain starts, ends or goes on from one piece to the next.
   *
   * @param heading direction in radians
   */
  record State(double x, double y, double heading) {}

  final int pieces;
  final double[] length;
  final double[] curvature;

  /** Whether a piece's curvature is given: straights, and radii set equal to others. */
  final boolean[] held;

  /** x, y, direction in radians of each state. */
  final double[] x;

  final double[] y;
  final double[] heading;

  TangentChain(int pieces) {
    this.pieces = pieces;
    length = new double[pieces];
    curvature = new double[pieces];
    held = new boolean[pieces];
    x = new double[pieces + 1];
    y = new double[pieces + 1];
    heading = new double[pieces + 1];
  }

  TangentChain copy() {
    TangentChain other = new TangentChain(pieces);
    System.arraycopy(length, 0, other.length, 0, pieces);
    System.arraycopy(curvature, 0, other.curvature, 0, pieces);
    System.arraycopy(held, 0, other.held, 0, pieces);
    System.arraycopy(x, 0, other.x, 0, pieces + 1);
    System.arraycopy(y, 0, other.y, 0, pieces + 1);
    System.arraycopy(heading, 0, other.heading, 0, pieces + 1);
    return other;
  }

  /** Works out all states from the first one. */
  void run() {
    for (int i = 0; i < pieces; i++) {
      double turn = curvature[i] * length[i];
      double chord = length[i] * sinc(turn / 2);
      x[i + 1] = x[i] + chord * Math.cos(heading[i] + turn / 2);
      y[i + 1] = y[i] + chord * Math.sin(heading[i] + turn / 2);
      heading[i + 1] = heading[i] + turn;
    }
  }

  /**
   * The chain up to the foot of a point on its last piece; where the point lies before that piece,
   * the chain without it, up to the foot on the piece before.
   *
   * @param way mm that the last piece is about to run to there
   */
  TangentChain endingAt(Point p, double way) {
    int last = pieces - 1;
    double length = along(last, p, way);
    if (length > LEAST || pieces == 1) {
      TangentChain other = copy();
      other.length[last] = Math.max(LEAST, length);
      other.run();
      return other;
    }
    TangentChain shorter = new TangentChain(last);
    System.arraycopy(this.length, 0, shorter.length, 0, last);
    System.arraycopy(curvature, 0, shorter.curvature, 0, last);
    System.arraycopy(held, 0, shorter.held, 0, last);
    System.arraycopy(x, 0, shorter.x, 0, pieces);
    System.arraycopy(y, 0, shorter.y, 0, pieces);
    System.arraycopy(heading, 0, shorter.heading, 0, pieces);
    return shorter.endingAt(p, this.length[last - 1] + length);
  }

  // mm along piece i to the foot of a point: of the turns of a circle the one nearest to the way.
  private double along(int i, Point p, double way) {
    double dx = p.x() - x[i];
    double dy = p.y() - y[i];
    double a = Math.cos(heading[i]) * dx + Math.sin(heading[i]) * dy;
    double b = Math.cos(heading[i]) * dy - Math.sin(heading[i]) * dx;
    double k = curvature[i];
    if (k == 0) {
      return a;
    }
    double s = Math.atan2(k * a, 1 - k * b) / k;
    double round = 2 * Math.PI / Math.abs(k);
    double near = s + round * Math.round((Math.min(way, round) - s) / round);
    if (near < round) {
      return near;
    }
    return way > round / 2 ? ROUND * round : near - round; // From a corner round to it again.
  }

  /** The chain run the other way. */
  TangentChain reversed() {
    TangentChain other = new TangentChain(pieces);
    for (int i = 0; i < pieces; i++) {
      int k = pieces - 1 - i;
      other.length[i] = length[k];
      other.curvature[i] = -curvature[k];
      other.held[i] = held[k];
    }
    for (int i = 0; i <= pieces; i++) {
      other.x[i] = x[pieces - i];
      other.y[i] = y[pieces - i];
      other.heading[i] = heading[pieces - i] + Math.PI;
    }
    return other;
  }

  /** sin u / u. */
  static double sinc(double u) {
    return Math.abs(u) < 1e-4 ? 1 - u * u / 6 : Math.sin(u) / u;
  }

  State state(int i) {
    return new State(x[i], y[i], heading[i]);
  }

  Carrier carrier(int i) {
    return new Carrier(x[i], y[i], Math.cos(heading[i]), Math.sin(heading[i]), curvature[i]);
  }

  /** Whether each piece runs forward and turns by less than a whole turn. */
  boolean isSound() {
    for (int i = 0; i < pieces; i++) {
      double turn = Math.abs(curvature[i] * length[i]);
      if (!(length[i] > LEAST) || !(turn < 2 * Math.PI - 1e-6)) {
        return false;
      }
    }
    return true;
  }

  /** The pieces as values; a closed chain ends where it starts to the last bit. */
  List<Primitive> primitives(boolean closed) {
    List<Primitive> all = new ArrayList<>(pieces);
    Point start = new Point(x[0], y[0]);
    Point first = start;
    for (int i = 0; i < pieces; i++) {
      Point end = closed && i == pieces - 1 ? first : new Point(x[i + 1], y[i + 1]);
      all.add(piece(i, start, end));
      start = end;
    }
    return all;
  }

  private Primitive piece(int i, Point start, Point end) {
    double turn = curvature[i] * length[i];
    // A rise below the rounding of a drawing's figures is none.
    if (Math.abs(turn) * length[i] < 8e-9 || Math.abs(turn) < 5e-7) {
      return new Line(start, end);
    }
    double radius = 1 / Math.abs(curvature[i]);
    double side = Math.signum(curvature[i]) * radius;
    Point center =
        new Point(x[i] - side * Math.sin(heading[i]), y[i] + side * Math.cos(heading[i]));
    return new Arc(center, radius, start, end, Math.toDegrees(turn));
  }
}
