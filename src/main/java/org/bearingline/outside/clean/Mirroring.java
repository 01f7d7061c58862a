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

  private final double tolerance;
  private final double sharp;
  private final double middle;
  private final Similarity mirror;
  private double largest;

  private Mirroring(double tolerance, double sharpDegrees, double middle) {
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

  static Mirrored of(String file, List<CleanChain> chains, double tolerance, double sharpDegrees) {
    List<CleanChain> loops = chains.stream().filter(c -> c.isLoop(tolerance)).toList();
    if (loops.isEmpty()) {
      return new Mirrored(chains, 0);
    }
    Bounds box =
        loops.stream().map(c -> new Loop(c.pieces()).bounds()).reduce(Bounds::union).orElseThrow();
    Mirroring work = new Mirroring(tolerance, sharpDegrees, box.center().x());
    List<CleanChain> out = new ArrayList<>();
    boolean[] done = new boolean[loops.size()];
    for (int i = 0; i < loops.size(); i++) {
      if (!done[i]) {
        int partner = work.partner(loops, done, i);
        if (partner < 0) {
          throw lonely(file, loops.get(i));
        }
        done[i] = true;
        done[partner] = true;
        work.add(file, loops.get(i), loops.get(partner), out);
      }
    }
    chains.stream().filter(c -> !c.isLoop(tolerance)).forEach(out::add);
    return new Mirrored(out, work.largest);
  }

  private static Problem lonely(String file, CleanChain chain) {
    Point at = new Loop(chain.pieces()).bounds().center();
    return new Problem(
        Place.file(file),
        String.format(
            Locale.ROOT,
            "cannot be made symmetric: the loop round x %.1f, y %.1f mm has no partner across the"
                + " middle line; draw one, or leave the symmetry out",
            at.x(),
            at.y()));
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

  private void add(String file, CleanChain one, CleanChain other, List<CleanChain> out) {
    Loop image = new Loop(other.pieces()).transformed(mirror);
    if (one == other) {
      out.add(one.with(half(file, averaged(one.course(), image), image)));
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

  private List<Primitive> half(String file, Course mean, Loop image) {
    int enter = -1;
    int leave = -1;
    int crossings = 0;
    int n = mean.size - 1;
    for (int i = 0; i < n; i++) {
      boolean before = mean.x[i] > middle;
      boolean after = mean.x[i + 1] > middle;
      if (before != after) {
        crossings++;
        enter = after ? i : enter;
        leave = after ? leave : i;
      }
    }
    if (crossings != 2) {
      throw new Problem(
          Place.file(file),
          String.format(
              Locale.ROOT,
              "cannot be made symmetric: a loop crosses the middle line at x %.1f mm %d times, and"
                  + " only one that crosses it twice can be mirrored",
              middle,
              crossings));
    }
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

  private Point crossing(Course c, int i) {
    double share = (middle - c.x[i]) / (c.x[i + 1] - c.x[i]);
    return new Point(middle, c.y[i] + share * (c.y[i + 1] - c.y[i]));
  }

  // Square to the middle line where the edge runs on smoothly over it; null at a corner.
  private Window.State state(Course c, int i, Loop image, double heading) {
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
    return new Window.State(middle, on.y(), heading);
  }

  private List<Primitive> doubled(Course right, Window.State start, Window.State end) {
    List<Group> groups = ChainFit.between(right, tolerance, sharp, start, end);
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

  private Primitive onMiddle(Primitive piece, Window.State state) {
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
