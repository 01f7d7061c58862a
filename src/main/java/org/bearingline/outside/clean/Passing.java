package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** One way of a loop through a place: the direction it comes from and the one it leaves in. */
record Passing(Point back, Point ahead) {

  /** Share of a loop's size within which it passes through a place. */
  private static final double THROUGH = 1e-8;

  /** Whether a loop crosses itself at a place where it meets itself, and does not only touch. */
  static boolean crosses(Loop loop, Point at) {
    List<Passing> all = through(loop, at);
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        if (all.get(i).separates(all.get(j))) {
          return true;
        }
      }
    }
    return false;
  }

  private static List<Passing> through(Loop loop, Point at) {
    double near = THROUGH * (1 + loop.bounds().width() + loop.bounds().height());
    List<Passing> all = new ArrayList<>();
    int n = loop.size();
    for (int i = 0; i < n; i++) {
      Primitive piece = loop.primitives().get(i);
      if (piece.start().distanceTo(at) <= near) {
        Point in = loop.primitives().get((i + n - 1) % n).tangentAt(1);
        all.add(new Passing(in.times(-1), piece.tangentAt(0)));
      } else if (piece.end().distanceTo(at) > near && piece.distanceTo(at) <= near) {
        double heading = Math.toDegrees(Carrier.of(piece).heading(at.x(), at.y()));
        all.add(new Passing(Point.polar(1, heading + 180), Point.polar(1, heading)));
      }
    }
    return all;
  }

  // One end of the other within the angle from ahead round to back, the other end outside.
  private boolean separates(Passing other) {
    double whole = turn(ahead, back);
    double a = turn(ahead, other.back);
    double b = turn(ahead, other.ahead);
    double clear = 1e-6;
    boolean clean =
        Math.min(Math.abs(a - whole), Math.abs(b - whole)) > clear
            && Math.min(a, b) > clear
            && Math.max(a, b) < 2 * Math.PI - clear;
    return clean && a < whole != b < whole;
  }

  private static double turn(Point from, Point to) {
    double angle = Math.atan2(from.cross(to), from.dot(to));
    return angle < 0 ? angle + 2 * Math.PI : angle;
  }
}
