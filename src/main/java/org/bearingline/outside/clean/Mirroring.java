package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Makes loops their own mirror image in the upright middle line of the whole: the drawn samples are
 * averaged with the mirror image of the clean line, the right half of that is fitted, and the left
 * half is its image. A loop beside the line is averaged with the one across it.
 */
final class Mirroring {

  /** Share of a loop's size by which two loops may miss being images of each other. */
  private static final double PARTNER = 0.25;

  /** Tolerances that a line may stray to the other side of the middle and not count as over it. */
  private static final double WAVERS = 5;

  /** Places that a sentence names. */
  private static final int MOST_PLACES = 4;

  private final Sketch sketch;
  private final double tolerance;
  private final double sharp;
  private final double middle;
  private final Similarity mirror;
  private double largest;

  private Mirroring(Sketch sketch, double tolerance, double sharpDegrees, double middle) {
    this.sketch = sketch;
    this.tolerance = tolerance;
    this.sharp = sharpDegrees;
    this.middle = middle;
    mirror = Similarity.mirror(new Point(middle, 0), new Point(middle, 1));
  }

  /**
   * Symmetric chains.
   *
   * @param largestMove largest way in mm that a sample went for it
   */
  record Mirrored(List<CleanChain> chains, double largestMove) {}

  static Mirrored of(
      Sketch sketch, List<CleanChain> chains, double tolerance, double sharpDegrees) {
    List<CleanChain> loops = chains.stream().filter(c -> c.isLoop(tolerance)).toList();
    if (loops.isEmpty()) {
      return new Mirrored(chains, 0);
    }
    Bounds box =
        loops.stream().map(c -> new Loop(c.pieces()).bounds()).reduce(Bounds::union).orElseThrow();
    Mirroring work = new Mirroring(sketch, tolerance, sharpDegrees, box.center().x());
    List<CleanChain> out = new ArrayList<>();
    boolean[] done = new boolean[loops.size()];
    for (int i = 0; i < loops.size(); i++) {
      if (!done[i]) {
        int partner = work.partner(loops, done, i);
        if (partner < 0) {
          throw work.lonely(loops.get(i));
        }
        done[i] = true;
        done[partner] = true;
        work.add(loops.get(i), loops.get(partner), out);
      }
    }
    chains.stream().filter(c -> !c.isLoop(tolerance)).forEach(out::add);
    return new Mirrored(out, work.largest);
  }

  private Problem lonely(CleanChain chain) {
    Point at = new Loop(chain.pieces()).bounds().center();
    return new Problem(
        Place.file(sketch.file()),
        "cannot be made symmetric: the loop round "
            + sketch.place(at)
            + " has no partner across the middle line; draw one, or leave the symmetry out");
  }

  private int partner(List<CleanChain> loops, boolean[] done, int i) {
    Bounds own = new Loop(loops.get(i).pieces()).bounds();
    Point across = mirror.apply(own.center());
    double reach = PARTNER * Math.max(own.width(), own.height());
    int best = -1;
    for (int j = i; j < loops.size(); j++) {
      Bounds other = new Loop(loops.get(j).pieces()).bounds();
      boolean alike =
          Math.abs(other.width() - own.width()) <= reach
              && Math.abs(other.height() - own.height()) <= reach;
      double apart = other.center().distanceTo(across);
      if (!done[j] && alike && apart <= reach) {
        reach = apart;
        best = j;
      }
    }
    return best;
  }

  private void add(CleanChain one, CleanChain other, List<CleanChain> out) {
    Loop image = new Loop(other.pieces()).transformed(mirror);
    if (one == other) {
      out.add(one.with(half(one.course(), averaged(one.course(), image), image)));
      return;
    }
    List<Primitive> pieces;
    if (one.pieces().size() == 1 && image.size() == 1) {
      Arc a = (Arc) one.pieces().get(0);
      Arc b = (Arc) image.primitives().get(0);
      largest = Math.max(largest, a.center().distanceTo(b.center()) / 2);
      largest = Math.max(largest, Math.abs(a.radius() - b.radius()) / 2);
      pieces =
          List.of(Arc.circle(a.center().towards(b.center(), 0.5), (a.radius() + b.radius()) / 2));
    } else {
      ChainFit.Fitted fitted = ChainFit.of(averaged(one.course(), image), tolerance, sharp);
      pieces = Corners.joined(fitted.course(), fitted.groups(), tolerance);
    }
    out.add(one.with(pieces));
    out.add(other.with(new Loop(pieces).transformed(mirror).primitives()));
  }

  // Each sample half way to the image; corners half way to the image's corners.
  private Course averaged(Course course, Loop image) {
    List<Point> corners = new ArrayList<>();
    List<Primitive> all = image.primitives();
    for (int i = 0; i < all.size(); i++) {
      Point in = all.get((i + all.size() - 1) % all.size()).tangentAt(1);
      if (Math.abs(in.cross(all.get(i).tangentAt(0))) > Math.sin(Math.toRadians(sharp))) {
        corners.add(all.get(i).start());
      }
    }
    Course mean = new Course();
    mean.closed = true;
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < course.size; i++) {
      Point p = course.at(i);
      Point q = course.corner[i] ? nearest(corners, p, image) : nearest(image, p);
      Point half = p.towards(q, 0.5);
      largest = Math.max(largest, half.distanceTo(p));
      points.add(half);
      Course.Step step = course.step[i] == Course.Step.ARC ? Course.Step.CURVE : course.step[i];
      mean.add(half.x(), half.y(), step, null);
      mean.corner[i] = course.corner[i];
      mean.bent[i] = course.bent[i];
    }
    mean.elements.add(new StrokePiece.Chords(points));
    return mean;
  }

  private static Point nearest(Loop loop, Point p) {
    Point best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Primitive piece : loop.primitives()) {
      Point near = piece.nearestTo(p);
      double apart = near.distanceTo(p);
      if (apart < least) {
        least = apart;
        best = near;
      }
    }
    return best;
  }

  private static Point nearest(List<Point> corners, Point p, Loop image) {
    Point best = nearest(image, p);
    double least = Double.POSITIVE_INFINITY;
    for (Point corner : corners) {
      if (corner.distanceTo(p) < least) {
        least = corner.distanceTo(p);
        best = corner;
      }
    }
    return best;
  }

  private List<Primitive> half(Course drawn, Course mean, Loop image) {
    List<Integer> crossings = crossings(mean);
    int n = mean.size - 1;
    // By the theorem of the fixed points of a turned circle: a loop that is its own image meets the
    // line in two places and no more.
    if (crossings.size() != 2) {
      List<Integer> own = crossings(drawn);
      throw own.size() > 2 ? crooked(drawn, own) : crooked(mean, crossings);
    }
    int step = crossings.get(0);
    boolean inward = mean.x[step + 1] > middle;
    int enter = inward ? step : crossings.get(1);
    int leave = inward ? crossings.get(1) : step;
    Course right = new Course();
    Point first = crossing(mean, enter);
    right.add(first.x(), first.y(), mean.step[enter], null);
    right.bent[0] = mean.bent[enter];
    int at = enter;
    while (at != leave) {
      at = (at + 1) % n;
      right.add(mean.x[at], mean.y[at], mean.step[at], null);
      right.corner[right.size - 1] = mean.corner[at];
      right.bent[right.size - 1] = mean.bent[at];
    }
    Point last = crossing(mean, leave);
    right.add(last.x(), last.y(), mean.step[leave], null);
    right.elements.addAll(mean.elements);
    return doubled(right, state(mean, enter, image, 0), state(mean, leave, image, Math.PI));
  }

  // Steps over the middle line, without the to and fro of a line that wavers on it.
  private List<Integer> crossings(Course mean) {
    int n = mean.size - 1;
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      if (mean.x[i] > middle != mean.x[i + 1] > middle) {
        all.add(i);
      }
    }
    int i = 0;
    while (all.size() > 2 && i < all.size()) {
      int next = (i + 1) % all.size();
      if (stray(mean, all.get(i), all.get(next)) <= WAVERS * tolerance) {
        all.remove(Math.max(i, next));
        all.remove(Math.min(i, next));
        i = 0;
      } else {
        i++;
      }
    }
    return all;
  }

  // How far the line goes from the middle between two steps over it.
  private double stray(Course mean, int from, int to) {
    double most = 0;
    int n = mean.size - 1;
    for (int k = (from + 1) % n; k != (to + 1) % n; k = (k + 1) % n) {
      most = Math.max(most, Math.abs(mean.x[k] - middle));
    }
    return most;
  }

  private Problem crooked(Course mean, List<Integer> crossings) {
    List<String> places = new ArrayList<>();
    for (int i : crossings.subList(0, Math.min(MOST_PLACES, crossings.size()))) {
      places.add(sketch.place(crossing(mean, i)));
    }
    return new Problem(
        Place.file(sketch.file()),
        String.format(
            Locale.ROOT,
            "cannot be made symmetric: a loop goes over the middle line %d times (%s%s), and one"
                + " that is its own mirror image goes over it twice; correct the drawing there, or"
                + " leave the symmetry out",
            crossings.size(),
            String.join("; ", places),
            crossings.size() > MOST_PLACES ? "; …" : ""));
  }

  private Point crossing(Course c, int i) {
    double share = (middle - c.x[i]) / (c.x[i + 1] - c.x[i]);
    return new Point(middle, c.y[i] + share * (c.y[i + 1] - c.y[i]));
  }

  // Square to the middle line where the edge runs on smoothly over it; null at a corner.
  private TangentChain.State state(Course c, int i, Loop image, double heading) {
    double near = Math.max(2 * tolerance, largest);
    int n = c.size - 1;
    for (int k : new int[] {i, (i + 1) % n}) {
      if (c.corner[k] && Math.abs(c.x[k] - middle) <= near) {
        return null;
      }
    }
    Point p = crossing(c, i);
    Carrier edge = null;
    double least = Double.POSITIVE_INFINITY;
    for (Primitive piece : image.primitives()) {
      if (piece.distanceTo(p) < least) {
        least = piece.distanceTo(p);
        edge = Carrier.of(piece);
      }
    }
    Point on = edge.foot(p.x(), p.y());
    double turn = Math.IEEEremainder(edge.heading(p.x(), p.y()) - heading, Math.PI);
    if (Math.abs(turn) > Math.toRadians(sharp)) {
      return null;
    }
    return new TangentChain.State(middle, on.y(), heading);
  }

  private List<Primitive> doubled(Course right, TangentChain.State start, TangentChain.State end) {
    List<Group> groups =
        ChainFit.between(right, tolerance, sharp, new EndStates(start, end, false));
    List<Primitive> pieces = new ArrayList<>(Corners.joined(right, groups, tolerance));
    int last = pieces.size() - 1;
    pieces.set(0, onMiddle(pieces.get(0).reversed(), start).reversed());
    pieces.set(last, onMiddle(pieces.get(last), end));
    List<Primitive> whole = new ArrayList<>(pieces);
    for (int i = last; i >= 0; i--) {
      whole.add(pieces.get(i).transformed(mirror).reversed());
    }
    // The two pieces at each crossing are one where they run on as one.
    join(whole, last);
    join(whole, whole.size() - 1);
    return new Loop(whole).primitives();
  }

  private Primitive onMiddle(Primitive piece, TangentChain.State state) {
    Point end = piece.end();
    double y = state != null ? state.y() : meeting(piece, end);
    return Corners.ending(piece, new Point(middle, y));
  }

  private double meeting(Primitive piece, Point near) {
    Point met = Corners.meeting(Carrier.of(piece), new Carrier(middle, 0, 0, 1, 0), near);
    return met == null ? near.y() : met.y();
  }

  private void join(List<Primitive> whole, int i) {
    int next = (i + 1) % whole.size();
    Primitive before = whole.get(i);
    Primitive after = whole.get(next);
    Point in = before.tangentAt(1);
    if (Math.abs(in.y()) > 1e-7) {
      return;
    }
    Primitive one;
    if (before instanceof Arc a && after instanceof Arc b) {
      Point center = new Point(middle, a.center().y());
      one = new Arc(center, a.radius(), a.start(), b.end(), 2 * a.sweep());
    } else if (before instanceof Line && after instanceof Line) {
      one = new Line(before.start(), after.end());
    } else {
      return;
    }
    whole.set(i, one);
    whole.remove(next);
  }
}
