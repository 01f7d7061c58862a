package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;

/**
 * Cuts a course into the longest stretches that lie along one straight or circle within a
 * tolerance. Taking the longest first from an end gives the fewest; a straight is taken where a
 * circle would reach hardly farther.
 */
final class Segmentation {

  /** A straight that reaches this share of what a circle would is meant. */
  private static final double NEARLY = 0.9;

  private static final double SAME_CIRCLE = 1e-6;

  private final Course course;
  private final CarrierFit fit;
  private final double tolerance;

  /** Where what holds an anchored course at its start ends, and at its end starts. */
  private final int head;

  private final int tail;

  Segmentation(Course course, CarrierFit fit, double tolerance) {
    this.course = course;
    this.fit = fit;
    this.tolerance = tolerance;
    int last = course.size - 1;
    boolean ends = last > 1 && course.isAnchor(last - 1);
    head = course.isAnchor(0) ? along(Carrier.of(course.drawn[0]), 1, last / 2, 1) : 0;
    tail = ends ? along(Carrier.of(course.drawn[last - 1]), last - 1, last / 2 + 1, -1) : last;
  }

  // The last sample from one towards another that keeps to the carrier.
  private int along(Carrier carrier, int from, int to, int side) {
    int at = from;
    while (side * at < side * to
        && Math.abs(carrier.off(course.x[at + side], course.y[at + side])) <= tolerance) {
      at += side;
    }
    return at;
  }

  /** The stretches from sample {@code from} to sample {@code to}. */
  List<Stretch> between(int from, int to) {
    List<Stretch> found = new ArrayList<>();
    int at = from;
    while (at < to) {
      Stretch next = longest(at, to);
      found.add(next);
      at = next.to();
    }
    return found;
  }

  /**
   * The circle that all samples of a closed course keep to, whatever was drawn; null where none.
   */
  Stretch round() {
    int last = course.size - 1;
    Carrier carrier = fitted(0, last, false);
    return carrier == null ? null : new Stretch(0, last, carrier, false);
  }

  /** The longest stretch that starts at a sample. */
  Stretch longest(int from, int end) {
    if (from < head) {
      return new Stretch(from, head, Carrier.of(course.drawn[0]), true);
    }
    if (from == tail && from < end) {
      return new Stretch(from, course.size - 1, Carrier.of(course.drawn[course.size - 2]), true);
    }
    if (course.step[from] == Course.Step.ARC) {
      return drawnArc(from, Math.min(tail, end));
    }
    int limit = from + 1;
    while (limit < Math.min(tail, end)
        && course.step[limit] != Course.Step.ARC
        && !course.corner[limit]) {
      limit++;
    }
    Reach straight = reach(from, limit, true, 1);
    if (straight.to == limit) {
      return new Stretch(from, limit, straight.carrier, false);
    }
    // A circle reaches at least as far; on fewer samples noise would tell of circles of its own.
    Reach round = reach(from, limit, false, Math.max(2, straight.to - from));
    double longer = length(from, round.to);
    boolean line = round.carrier == null || length(from, straight.to) >= NEARLY * longer;
    Reach best = line ? straight : round;
    return new Stretch(from, best.to, best.carrier, false);
  }

  // Along the drawn line.
  private double length(int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += course.length(i);
    }
    return sum;
  }

  private Stretch drawnArc(int from, int end) {
    Arc arc = (Arc) course.drawn[from];
    int to = from + 1;
    while (to < end && course.step[to] == Course.Step.ARC && !course.corner[to] && same(arc, to)) {
      to++;
    }
    return new Stretch(from, to, Carrier.of(arc), true);
  }

  private boolean same(Arc arc, int i) {
    return course.drawn[i] == arc
        || course.drawn[i] instanceof Arc other
            && other.center().distanceTo(arc.center()) < SAME_CIRCLE
            && Math.abs(other.radius() - arc.radius()) < SAME_CIRCLE
            && other.sweep() * arc.sweep() > 0;
  }

  /** How far a carrier reaches. */
  private record Reach(int to, Carrier carrier) {}

  // Doubles the number of steps until one fails, then halves.
  private Reach reach(int from, int limit, boolean straight, int least) {
    Reach good = null;
    int bad = limit + 1;
    int steps = least;
    while (good == null || good.to < limit) {
      int to = Math.min(limit, from + steps);
      Carrier carrier = fitted(from, to, straight);
      if (carrier == null) {
        bad = to;
        break;
      }
      good = new Reach(to, carrier);
      steps *= 2;
    }
    if (good == null) {
      return new Reach(from + 1, straight ? fit.line(from, from + 1) : null);
    }
    // The joint is found to the sample later on, with both sides known.
    while (bad - good.to > Math.max(1, (good.to - from) / 4096)) {
      int middle = (good.to + bad) >>> 1;
      Carrier carrier = fitted(from, middle, straight);
      if (carrier == null) {
        bad = middle;
      } else {
        good = new Reach(middle, carrier);
      }
    }
    return good;
  }

  private Carrier fitted(int from, int to, boolean straight) {
    if (!straight && to - from < 2) {
      return null;
    }
    Carrier carrier = straight ? fit.line(from, to) : fit.circle(from, to);
    return carrier != null && carries(carrier, from, to) ? carrier : null;
  }

  /** Whether the samples, and what runs between them, keep to the carrier and run along it. */
  private boolean carries(Carrier carrier, int from, int to) {
    double turned = 0;
    for (int i = from; i <= to; i++) {
      if (!(Math.abs(carrier.off(course.x[i], course.y[i])) <= tolerance)) {
        return false;
      }
    }
    for (int i = from; i < to; i++) {
      if (course.isFlat(i) && !(Math.abs(course.middleOff(carrier, i)) <= tolerance)) {
        return false;
      }
      double along = course.along(carrier, i);
      if (along < 3 * tolerance && isBackwards(along, i)) {
        return false;
      }
      turned += along;
    }
    // Not more than once round.
    return Math.abs(carrier.curvature()) * turned <= 2 * Math.PI + 0.05 && turned > 0;
  }

  private boolean isBackwards(double along, int i) {
    double dx = course.x[i + 1] - course.x[i];
    double dy = course.y[i + 1] - course.y[i];
    double step = Math.sqrt(dx * dx + dy * dy); // Asked of every sample: hypot takes many times it.
    return along < 0.25 * step && step > 3 * tolerance;
  }
}
