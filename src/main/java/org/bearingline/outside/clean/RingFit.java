package org.bearingline.outside.clean;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;

/**
 * Fits a closed course that has no drawn corner, and so no place where it starts by itself: a whole
 * circle, a ring of pieces that are tangent all round, or a line from a corner that the fit finds
 * round to it again.
 */
final class RingFit {

  /** Radians that a circle's samples go round it at least. */
  private static final double MOST_OF_IT = Math.PI * 1.5;

  /** Share of its neighbours' lengths below which a stretch at the seam is left over. */
  private static final double LEFT_OVER = 0.1;

  private final Fitting fitting;
  private final Course course;
  private final int last;

  private RingFit(Course course, double tolerance, double sharpDegrees) {
    this.course = course;
    fitting = Fitting.of(course, tolerance, sharpDegrees);
    last = course.size - 1;
  }

  static ChainFit.Fitted of(Course course, double tolerance, double sharpDegrees) {
    return new RingFit(course, tolerance, sharpDegrees).fitted();
  }

  private ChainFit.Fitted fitted() {
    double tolerance = fitting.tolerance();
    Segmentation cut = fitting.cut(WindowWalk.SHARE);
    // The seam belongs where one stretch ends and another starts, best at a corner.
    Stretch head = cut.longest(0, last);
    Stretch round = head.to() == last ? head : cut.round();
    Group circle = round == null ? null : circle(round);
    if (circle != null) {
      return new ChainFit.Fitted(course, List.of(circle));
    }
    Optional<AsDrawn.Pieces> drawn = AsDrawn.ring(course, ChainFit.AS_DRAWN * tolerance);
    ChainFit.Fitted asDrawn =
        drawn
            .map(d -> new ChainFit.Fitted(course, List.of(new Group(0, last, d.pieces(), true))))
            .orElse(null);
    if (drawn.isPresent() && drawn.get().onlyPlain()) {
      return asDrawn;
    }
    ChainFit.Fitted fitted = turned(head.to() % last).fromCorner();
    int least = fitted.groups().size() > 1 ? Integer.MAX_VALUE : fitted.pieces();
    OptionalInt seam = Anchors.seam(course, tolerance);
    if (seam.isPresent()) {
      Course turned = course.from(seam.getAsInt());
      Optional<Anchored.Pieces> anchored = Anchored.ring(turned, tolerance, fitting.sharpDegrees());
      if (anchored.isPresent() && anchored.get().isWorth(least)) {
        List<Group> all = List.of(new Group(0, last, anchored.get().pieces(), true));
        fitted = new ChainFit.Fitted(turned, all);
        least = fitted.pieces();
      }
    }
    return asDrawn != null && drawn.get().pieces().size() <= least ? asDrawn : fitted;
  }

  private RingFit turned(int sample) {
    return new RingFit(course.from(sample), fitting.tolerance(), fitting.sharpDegrees());
  }

  // From the first corner that the stretches make; where there is none, all round.
  private ChainFit.Fitted fromCorner() {
    Segmentation cut = fitting.cut(WindowWalk.SHARE);
    Stretch whole = cut.longest(0, last);
    Group circle = whole.to() == last ? circle(whole) : null;
    if (circle != null) {
      return new ChainFit.Fitted(course, List.of(circle));
    }
    int corner = firstCorner(cut);
    if (corner < 0) {
      return new ChainFit.Fitted(course, WindowWalk.groups(fitting, 0, last, EndStates.RING));
    }
    return ChainFit.open(turned(corner).fitting);
  }

  // The first joint that is a corner; 0 where only the seam is one, −1 where there is none.
  private int firstCorner(Segmentation cut) {
    List<Stretch> all = cut.between(0, last);
    for (int i = 0; i + 1 < all.size(); i++) {
      if (fitting.isCorner(all.get(i), all.get(i + 1))) {
        return all.get(i).to();
      }
    }
    return all.size() == 1 || isCornerAtSeam(all) ? 0 : -1;
  }

  // What the last long stretch happened to leave over before the seam tells no direction.
  private boolean isCornerAtSeam(List<Stretch> all) {
    Stretch first = all.get(0);
    Stretch end = all.get(all.size() - 1);
    Stretch before = all.get(all.size() - 2);
    double shorter = Math.min(course.chord(first), course.chord(before));
    boolean leftOver = all.size() > 2 && course.chord(end) < LEFT_OVER * shorter;
    return fitting.isCorner(end, first) && !(leftOver && !fitting.isCorner(before, first));
  }

  // The whole circle that a stretch goes round most of; null where it does not.
  private Group circle(Stretch s) {
    Carrier carrier = s.carrier();
    double k = carrier.curvature();
    if (k == 0 || Math.abs(k) * course.along(carrier, s.from(), s.to()) < MOST_OF_IT) {
      return null;
    }
    Point center = carrier.center();
    double radius = 1 / Math.abs(k);
    if (s.drawn()) {
      Arc arc = (Arc) course.drawn[s.from()];
      center = arc.center();
      radius = arc.radius();
    }
    Point start = center.plus(new Point(radius, 0));
    Arc circle = new Arc(center, radius, start, start, k > 0 ? 360 : -360);
    return new Group(s.from(), s.to(), List.of(circle), true);
  }
}
