package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Makes one loop its own mirror image in the middle line: its right half is fitted, square to the
 * line where it runs over it smoothly, and the left half is that half's image.
 */
final class MirroredLoop {

  /** What of a direction may be upright where a piece and its image still run on as one. */
  private static final double SQUARE = 1e-7;

  private final Mirroring.Asked asked;
  private final MiddleLine middle;

  /** mm from the middle within which a corner is on it. */
  private final double near;

  private MirroredLoop(Mirroring.Asked asked, double near) {
    this.asked = asked;
    this.near = near;
    middle = asked.middle();
  }

  /**
   * The pieces of the loop.
   *
   * @param drawn its samples as drawn
   * @param mean its samples half way to the image
   * @param image its mirror image as it was
   * @param moved mm that samples of the drawing went for the symmetry
   */
  static List<Primitive> of(
      Course drawn, Course mean, Loop image, double moved, Mirroring.Asked asked) {
    MirroredLoop work = new MirroredLoop(asked, Math.max(2 * asked.tolerance(), moved));
    List<Integer> crossings = work.middle.crossings(mean, drawn, asked.tolerance(), asked.sketch());
    int step = crossings.get(0);
    boolean inward = mean.x[step + 1] > work.middle.x();
    int enter = inward ? step : crossings.get(1);
    int leave = inward ? crossings.get(1) : step;
    TangentChain.State start = work.state(mean, enter, image, 0);
    TangentChain.State end = work.state(mean, leave, image, Math.PI);
    return work.doubled(work.right(mean, enter, leave), new EndStates(start, end, false));
  }

  // The samples right of the middle, from where they leave it to where they come back.
  private Course right(Course mean, int enter, int leave) {
    int n = mean.size - 1;
    Course right = new Course();
    Point first = middle.crossing(mean, enter);
    right.add(first.x(), first.y(), mean.step[enter], null);
    right.bent[0] = mean.bent[enter];
    int at = enter;
    while (at != leave) {
      at = (at + 1) % n;
      right.add(mean.x[at], mean.y[at], mean.step[at], null);
      right.corner[right.size - 1] = mean.corner[at];
      right.bent[right.size - 1] = mean.bent[at];
    }
    Point last = middle.crossing(mean, leave);
    right.add(last.x(), last.y(), mean.step[leave], null);
    right.elements.addAll(mean.elements);
    return right;
  }

  // Square to the middle line where the edge runs on smoothly over it; null at a corner.
  private TangentChain.State state(Course c, int i, Loop image, double heading) {
    int n = c.size - 1;
    for (int k : new int[] {i, (i + 1) % n}) {
      if (c.corner[k] && Math.abs(c.x[k] - middle.x()) <= near) {
        return null;
      }
    }
    Point p = middle.crossing(c, i);
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
    if (Math.abs(turn) > Math.toRadians(asked.sharpDegrees())) {
      return null;
    }
    return new TangentChain.State(middle.x(), on.y(), heading);
  }

  private List<Primitive> doubled(Course right, EndStates ends) {
    double tolerance = asked.tolerance();
    List<Group> groups = ChainFit.between(right, tolerance, asked.sharpDegrees(), ends);
    List<Primitive> pieces = new ArrayList<>(Corners.joined(right, groups, tolerance));
    int last = pieces.size() - 1;
    pieces.set(0, onMiddle(pieces.get(0).reversed(), ends.start()).reversed());
    pieces.set(last, onMiddle(pieces.get(last), ends.end()));
    List<Primitive> whole = new ArrayList<>(pieces);
    for (int i = last; i >= 0; i--) {
      whole.add(pieces.get(i).transformed(middle.mirror()).reversed());
    }
    // The two pieces at each crossing are one where they run on as one.
    join(whole, last);
    join(whole, whole.size() - 1);
    return new Loop(whole).primitives();
  }

  private Primitive onMiddle(Primitive piece, TangentChain.State state) {
    Point end = piece.end();
    double y = state != null ? state.y() : meeting(piece, end);
    return Corners.ending(piece, new Point(middle.x(), y));
  }

  private double meeting(Primitive piece, Point near) {
    Point met = Corners.meeting(Carrier.of(piece), middle.carrier(), near);
    return met == null ? near.y() : met.y();
  }

  private void join(List<Primitive> whole, int i) {
    int next = (i + 1) % whole.size();
    Primitive before = whole.get(i);
    Primitive after = whole.get(next);
    if (Math.abs(before.tangentAt(1).y()) > SQUARE) {
      return;
    }
    Primitive one;
    if (before instanceof Arc a && after instanceof Arc b) {
      Point center = new Point(middle.x(), a.center().y());
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
