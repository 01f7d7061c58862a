package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.Sketch;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Makes loops their own mirror image in the upright middle line of the whole: the drawn samples are
 * averaged with the mirror image of the clean line, and what lies there is fitted. Of a loop on the
 * line the right half is, of two loops beside it the one; the others are their images.
 */
final class Mirroring {

  /** Share of a loop's size by which two loops may miss being images of each other. */
  private static final double PARTNER = 0.25;

  private final Asked asked;
  private final Similarity mirror;
  private double largest;

  private Mirroring(Asked asked) {
    this.asked = asked;
    mirror = asked.middle().mirror();
  }

  /**
   * What is asked for.
   *
   * @param sketch names the places of what cannot be made symmetric
   * @param tolerance mm
   * @param sharpDegrees degrees from which a joint is a corner
   */
  record Asked(Sketch sketch, MiddleLine middle, double tolerance, double sharpDegrees) {}

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
    MiddleLine middle = new MiddleLine(box.center().x());
    Mirroring work = new Mirroring(new Asked(sketch, middle, tolerance, sharpDegrees));
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
        Place.file(asked.sketch().file()),
        "cannot be made symmetric: the loop round "
            + asked.sketch().place(at)
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
      Course mean = averaged(one.course(), image);
      out.add(one.with(MirroredLoop.of(one.course(), mean, image, largest, asked)));
      return;
    }
    List<Primitive> pieces;
    if (one.pieces().size() == 1 && image.size() == 1) {
      pieces = List.of(averaged((Arc) one.pieces().get(0), (Arc) image.primitives().get(0)));
    } else {
      Course mean = averaged(one.course(), image);
      ChainFit.Fitted fitted = ChainFit.of(mean, asked.tolerance(), asked.sharpDegrees());
      pieces = Corners.joined(fitted.course(), fitted.groups(), asked.tolerance());
    }
    out.add(one.with(pieces));
    out.add(other.with(new Loop(pieces).transformed(mirror).primitives()));
  }

  private Arc averaged(Arc a, Arc b) {
    largest = Math.max(largest, a.center().distanceTo(b.center()) / 2);
    largest = Math.max(largest, Math.abs(a.radius() - b.radius()) / 2);
    return Arc.circle(a.center().towards(b.center(), 0.5), (a.radius() + b.radius()) / 2);
  }

  private Course averaged(Course course, Loop image) {
    ImageMean mean = ImageMean.of(course, image, asked.sharpDegrees());
    largest = Math.max(largest, mean.move());
    return mean.course();
  }
}
