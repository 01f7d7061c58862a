package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.construct.Continuation;

/** Joins the groups of a chain at its corners: each corner is where the two pieces truly meet. */
final class Corners {

  /** mm within which a meeting is the corner as drawn. */
  private static final double AS_DRAWN = 1e-6;

  /** Radians by which a straight may turn and its joints still count as tangent. */
  private static final double UNBENT = 5e-7;

  private static final int STEPS = 20;

  /** Degrees that the sweep of an arc may change by when its ends move a little. */
  private static final double SLIPPED = 60;

  private final Course course;
  private final double tolerance;

  private Corners(Course course, double tolerance) {
    this.course = course;
    this.tolerance = tolerance;
  }

  /** The pieces of all groups, each starting where the one before ends. */
  static List<Primitive> joined(Course course, List<Group> groups, double tolerance) {
    return ofEach(course, groups, tolerance, new BitSet()).stream().flatMap(List::stream).toList();
  }

  /**
   * The same, by group.
   *
   * @param strict samples at which the corner must lie within the tolerance of the drawn one
   */
  static List<List<Primitive>> ofEach(
      Course course, List<Group> groups, double tolerance, BitSet strict) {
    Corners work = new Corners(course, tolerance);
    int n = groups.size();
    if (n == 1 && groups.get(0).ring()) {
      return List.of(groups.get(0).pieces());
    }
    Point[] starts = new Point[n];
    for (int i = 0; i < n; i++) {
      Group before = i > 0 ? groups.get(i - 1) : course.closed ? groups.get(n - 1) : null;
      starts[i] = work.corner(before, groups.get(i), strict.get(groups.get(i).from()));
    }
    List<List<Primitive>> all = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point end =
          i + 1 < n ? starts[i + 1] : course.closed ? starts[0] : work.freeEnd(groups.get(i));
      all.add(work.between(groups.get(i), starts[i], end));
    }
    return all;
  }

  private Point freeStart(Group group) {
    int at = group.from();
    return Carrier.of(group.pieces().get(0)).foot(course.x[at], course.y[at]);
  }

  private Point freeEnd(Group group) {
    int at = group.to();
    return Carrier.of(last(group)).foot(course.x[at], course.y[at]);
  }

  private static Primitive last(Group group) {
    return group.pieces().get(group.pieces().size() - 1);
  }

  private Point corner(Group before, Group after, boolean strict) {
    if (before == null) {
      return freeStart(after);
    }
    Point drawn = course.at(after.from());
    Carrier in = Carrier.of(last(before));
    Carrier out = Carrier.of(after.pieces().get(0));
    Point met = meeting(in, out, drawn);
    double turn = Math.abs(Math.sin(Joints.turn(in, out, drawn.x(), drawn.y())));
    double reach = 2 * tolerance * (1 + 2 / Math.max(turn, 0.05));
    double room = 0.4 * Math.min(last(before).length(), after.pieces().get(0).length());
    reach = strict ? tolerance : reach;
    if (met == null || met.distanceTo(drawn) > Math.min(reach, room)) {
      return drawn;
    }
    return met.distanceTo(drawn) <= AS_DRAWN ? drawn : met;
  }

  // Newton's method on the two distances, from the corner as drawn.
  static Point meeting(Carrier a, Carrier b, Point from) {
    double x = from.x();
    double y = from.y();
    for (int i = 0; i < STEPS; i++) {
      double fa = a.off(x, y);
      double fb = b.off(x, y);
      double ha = a.heading(x, y);
      double hb = b.heading(x, y);
      // The gradient of a distance is the normal to the left of the direction.
      double det = Math.sin(hb - ha);
      if (Math.abs(det) < 1e-3) {
        return null;
      }
      double dx = (fa * Math.cos(hb) - fb * Math.cos(ha)) / det;
      double dy = (fa * Math.sin(hb) - fb * Math.sin(ha)) / det;
      x -= dx;
      y -= dy;
      if (Math.abs(dx) + Math.abs(dy) < 1e-13 * (1 + Math.abs(x) + Math.abs(y))) {
        return new Point(x, y);
      }
    }
    return null;
  }

  private List<Primitive> between(Group group, Point start, Point end) {
    List<Primitive> pieces = new ArrayList<>(group.pieces());
    int n = pieces.size();
    if (n == 1) {
      return start.equals(end)
          ? round(pieces.get(0), start)
          : List.of(between(pieces.get(0), start, end));
    }
    Primitive first = pieces.get(0);
    pieces.set(0, ending(first.reversed(), start).reversed());
    pieces.set(n - 1, ending(pieces.get(n - 1), end));
    return pieces;
  }

  // From a corner round to it again; a straight cannot be.
  private static List<Primitive> round(Primitive piece, Point corner) {
    if (piece instanceof Arc arc && Math.abs(arc.sweep()) > 180) {
      double from = corner.minus(arc.center()).degrees();
      double radius = arc.center().distanceTo(corner);
      return List.of(Arc.around(arc.center(), radius, from, arc.sweep() > 0 ? 360 : -360));
    }
    return List.of();
  }

  /** The piece with another end: on its own carrier where that meets it, else tangent to it. */
  static Primitive ending(Primitive piece, Point end) {
    if (piece.end().equals(end)) {
      return piece;
    }
    if (Math.abs(Carrier.of(piece).off(end.x(), end.y())) < AS_DRAWN / 100) {
      Primitive longer = between(piece, piece.start(), end);
      if (Math.abs(longer.length() - piece.length()) < piece.length()) {
        return longer;
      }
    }
    Point chord = end.minus(piece.start());
    if (!(chord.norm() > 0)) {
      return piece;
    }
    if (piece.tangentAt(0).dot(chord) < 0.3 * chord.norm()) {
      return between(piece, piece.start(), end); // Rather a bend than a loop.
    }
    // A bend below what a drawing's figures tell is none.
    if (piece instanceof Line
        && Math.abs(piece.tangentAt(0).cross(chord)) < UNBENT * chord.norm()) {
      return new Line(piece.start(), end);
    }
    return Continuation.to(piece.start(), piece.tangentAt(0), end);
  }

  /** The piece between two other ends. */
  private static Primitive between(Primitive piece, Point start, Point end) {
    if (piece instanceof Arc arc) {
      double off =
          Math.max(
              Math.abs(arc.center().distanceTo(start) - arc.radius()),
              Math.abs(arc.center().distanceTo(end) - arc.radius()));
      if (off < AS_DRAWN / 100) {
        Arc on = (Arc) SamePiece.between(arc, start, end);
        if (Math.abs(on.sweep() - arc.sweep()) > SLIPPED) {
          return new Line(start, end); // The ends have passed each other: next to nothing is left.
        }
        return new Arc(arc.center(), arc.radius(), start, end, on.sweep());
      }
      return Arc.ofBulge(start, end, arc.bulge());
    }
    return new Line(start, end);
  }
}
