package org.bearingline.outline.fit;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.construct.Continuation;

/**
 * Two arcs (or straights) that leave a point in one direction, run on tangent into each other and
 * arrive at another point in another direction. Of the one-parameter family the one with equal
 * tangent lengths d is taken: |v − d (t0 + t1)| = 2 d, with v from end to end.
 *
 * @param first the piece before the joint
 * @param second the piece after it
 * @param along direction of travel at the joint
 */
record Biarc(Primitive first, Primitive second, Point along) {

  /** Nothing where the ends look away from each other. */
  static Optional<Biarc> between(Point start, Point out, Point end, Point in) {
    Point v = end.minus(start);
    double forward = v.dot(out.plus(in));
    double bend = out.minus(in).dot(out.minus(in));
    double square = v.dot(v);
    if (!(forward > 0)) {
      return Optional.empty();
    }
    double d = square / (forward + Math.sqrt(forward * forward + bend * square));
    Point before = start.plus(out.times(d));
    Point after = end.minus(in.times(d));
    Point joint = before.towards(after, 0.5);
    boolean ahead = out.dot(joint.minus(start)) > 0 && in.dot(end.minus(joint)) > 0;
    if (!ahead || before.equals(after)) {
      return Optional.empty();
    }
    Primitive first = Continuation.to(start, out, joint);
    Primitive second = Continuation.to(end, in.times(-1), joint).reversed();
    return Optional.of(new Biarc(first, second, after.minus(before).unit()));
  }

  /** One arc that leaves in a given direction, told as its halves; nothing for half a turn. */
  static Optional<Biarc> leaving(Point start, Point out, Point end) {
    return out.dot(end.minus(start)) > 0
        ? Optional.of(halves(Continuation.to(start, out, end)))
        : Optional.empty();
  }

  /** One arc that arrives in a given direction, told as its halves; nothing for half a turn. */
  static Optional<Biarc> arriving(Point start, Point end, Point in) {
    return in.dot(end.minus(start)) > 0
        ? Optional.of(halves(Continuation.to(end, in.times(-1), start).reversed()))
        : Optional.empty();
  }

  private static Biarc halves(Primitive piece) {
    return new Biarc(piece.part(0, 0.5), piece.part(0.5, 1), piece.tangentAt(0.5));
  }

  List<Primitive> pieces() {
    return List.of(first, second);
  }

  /**
   * Distance in mm from a point near the biarc to it: to the circle or straight of the piece on the
   * point's side of the joint.
   */
  double distanceTo(Point p) {
    Primitive piece = p.minus(first.end()).dot(along) < 0 ? first : second;
    return piece.match(line -> distance(line, p), arc -> distance(arc, p));
  }

  private static double distance(Line line, Point p) {
    return Math.abs(line.tangentAt(0).cross(p.minus(line.start())));
  }

  private static double distance(Arc arc, Point p) {
    return Math.abs(p.distanceTo(arc.center()) - arc.radius());
  }
}
