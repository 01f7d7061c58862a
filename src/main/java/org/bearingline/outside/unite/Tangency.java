package org.bearingline.outside.unite;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.topology.Meetings;

/**
 * Circles laid against the straights of other shapes that they run into but for a rounding, wood of
 * both on one side: else the edge of the union would turn a little where it should run on, or have
 * a step.
 *
 * @param shapes with such circles moved
 * @param moved mm that an edge was moved by at most
 */
record Tangency(List<Outline> shapes, double moved) {

  /** Sine between two straights from which a circle of one radius can touch both. */
  private static final double ASKEW = 0.1;

  /** mm: less is rounding. */
  private static final double MET = 1e-12;

  /**
   * A straight that a circle is to touch.
   *
   * @param normal unit vector from the straight to the centre
   * @param missing mm by which the centre is to move along it
   */
  private record Wanted(Point normal, double missing) {}

  static Tangency of(List<Outline> shapes, double tolerance) {
    List<List<Wanted>> wanted = new ArrayList<>();
    shapes.forEach(shape -> wanted.add(new ArrayList<>()));
    for (Meetings.Meeting meeting : Meetings.of(shapes, 2 * tolerance, MET)) {
      note(meeting.one(), meeting.other(), tolerance, wanted);
      note(meeting.other(), meeting.one(), tolerance, wanted);
    }
    List<Outline> laid = new ArrayList<>();
    double most = 0;
    for (int i = 0; i < shapes.size(); i++) {
      Outline shape = shapes.get(i);
      if (wanted.get(i).isEmpty()) {
        laid.add(shape);
        continue;
      }
      Arc circle = (Arc) shape.outer().primitives().get(0);
      Arc moved = moved(circle, wanted.get(i));
      double move =
          moved.center().distanceTo(circle.center()) + Math.abs(moved.radius() - circle.radius());
      boolean isLittle = move > MET && move <= tolerance;
      laid.add(isLittle ? new Outline(Loop.of(moved), shape.openings()) : shape);
      most = isLittle ? Math.max(most, move) : most;
    }
    return new Tangency(laid, most);
  }

  private static void note(
      Meetings.Edge round, Meetings.Edge straight, double tolerance, List<List<Wanted>> wanted) {
    if (!(round.primitive() instanceof Arc circle)
        || !circle.isFullCircle()
        || !circle.isCounterClockwise()
        || !(straight.primitive() instanceof Line line)) {
      return;
    }
    Point along = line.tangentAt(0);
    Point out = circle.center().minus(line.start());
    double off = along.cross(out);
    if (off <= 0) {
      return; // They meet from two sides: at their contact no edge runs on.
    }
    double missing = circle.radius() - off;
    double foot = out.dot(along);
    // As far as circle and straight run together within the tolerance.
    double reach = Math.sqrt(2 * circle.radius() * tolerance);
    if (Math.abs(missing) <= tolerance && foot >= -reach && foot <= line.length() + reach) {
      wanted.get(round.outline()).add(new Wanted(along.left(), missing));
    }
  }

  // Against the first straight, and the one that lies most across to it or over against it.
  private static Arc moved(Arc circle, List<Wanted> wanted) {
    Wanted first = wanted.get(0);
    Wanted second = first;
    for (Wanted other : wanted) {
      if (other.normal().dot(first.normal()) < second.normal().dot(first.normal())) {
        second = other;
      }
    }
    double cosine = first.normal().dot(second.normal());
    double cross = first.normal().cross(second.normal());
    double radius = circle.radius();
    Point center = circle.center();
    if (Math.abs(cross) > ASKEW) {
      Point by =
          new Point(
                  first.missing() * second.normal().y() - second.missing() * first.normal().y(),
                  second.missing() * first.normal().x() - first.missing() * second.normal().x())
              .times(1 / cross);
      center = center.plus(by);
    } else if (cosine < 0) {
      // Between two parallels: in their middle, and as wide as they are apart.
      center = center.plus(first.normal().times((first.missing() - second.missing()) / 2));
      radius -= (first.missing() + second.missing()) / 2;
      center = center.plus(along(circle, wanted, first, center, radius));
    } else {
      center = center.plus(first.normal().times(first.missing()));
    }
    return Arc.around(center, radius, circle.startDegrees(), circle.sweep());
  }

  // Along the two parallels against a third straight across.
  private static Point along(
      Arc circle, List<Wanted> wanted, Wanted first, Point center, double radius) {
    Point course = first.normal().left();
    for (Wanted third : wanted) {
      double across = third.normal().dot(course);
      if (Math.abs(across) > ASKEW) {
        Point by = center.minus(circle.center());
        double missing = third.missing() + radius - circle.radius() - third.normal().dot(by);
        return course.times(missing / across);
      }
    }
    return Point.ORIGIN;
  }
}
