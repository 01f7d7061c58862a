package org.bearingline.outline.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Whether an outline is one: no edge crosses or runs on another, openings lie inside the outer loop
 * and apart from each other.
 */
public final class OutlineCheck {

  /** Share of the size below which two edges touch. */
  private static final double TOUCH = 1e-10;

  private OutlineCheck() {}

  /**
   * A fault of an outline.
   *
   * @param at where, in mm
   * @param words what is wrong, a clause for a sentence, such as "the outline crosses itself"
   */
  public record Fault(Point at, String words) {

    /** The clause with its place. */
    public String sentence() {
      return String.format(Locale.ROOT, "%s at x %.3f, y %.3f mm", words, at.x(), at.y());
    }
  }

  /** The first fault found, empty for a sound outline. */
  public static Optional<Fault> firstFault(Outline outline) {
    return faults(outline).stream().findFirst();
  }

  /** All faults, those of crossing before those of nesting. */
  public static List<Fault> faults(Outline outline) {
    List<Fault> found = crossings(outline.loops());
    if (found.isEmpty()) {
      nesting(outline, found);
    }
    return List.copyOf(found);
  }

  /** Where loops cross or touch themselves or each other, beyond the ends that neighbours share. */
  public static List<Fault> crossings(List<Loop> loops) {
    Pieces pieces = new Pieces(16);
    List<Integer> loopOf = new ArrayList<>();
    List<Integer> nextOf = new ArrayList<>();
    for (int l = 0; l < loops.size(); l++) {
      List<Primitive> primitives = loops.get(l).primitives();
      int first = pieces.size();
      for (int i = 0; i < primitives.size(); i++) {
        pieces.add(primitives.get(i), 0, 0, pieces.size());
        loopOf.add(l);
        nextOf.add(first + (i + 1) % primitives.size());
      }
    }
    List<Fault> found = new ArrayList<>();
    PieceIndex index = new PieceIndex(pieces);
    double[] box = index.bounds();
    double tolerance = TOUCH * Math.max(box[2] - box[0], box[3] - box[1]);
    Crossings crossings = new Crossings(pieces, tolerance);
    for (int i = 0; i < pieces.size(); i++) {
      int count = index.queryAround(i, tolerance);
      int[] hits = index.hits().clone();
      for (int h = 0; h < count; h++) {
        int j = hits[h];
        if (j <= i) {
          continue;
        }
        boolean joined = nextOf.get(i) == j || nextOf.get(j) == i;
        int met = crossings.cross(i, j);
        if (met > 0) {
          Point at = new Point(crossings.lastX(), crossings.lastY());
          found.add(new Fault(at, words(loopOf.get(i), loopOf.get(j))));
        } else if (!joined && sharedEnd(pieces, i, j, tolerance)) {
          Point at =
              near(pieces, i, j, tolerance)
                  ? new Point(pieces.x0[i], pieces.y0[i])
                  : new Point(pieces.x1[i], pieces.y1[i]);
          found.add(new Fault(at, words(loopOf.get(i), loopOf.get(j))));
        } else if (joined && foldsBack(pieces, i, j, nextOf.get(i) == j)) {
          int before = nextOf.get(i) == j ? i : j;
          Point at = new Point(pieces.x1[before], pieces.y1[before]);
          found.add(new Fault(at, "the outline runs back on itself"));
        }
      }
    }
    return found;
  }

  private static String words(int loop, int other) {
    if (loop != other) {
      return loop == 0 ? "an opening meets the outer edge" : "two openings meet";
    }
    return loop == 0 ? "the outline meets itself" : "an opening meets itself";
  }

  private static boolean near(Pieces p, int i, int j, double tolerance) {
    return apart(p.x0[i], p.y0[i], p.x0[j], p.y0[j]) <= tolerance
        || apart(p.x0[i], p.y0[i], p.x1[j], p.y1[j]) <= tolerance;
  }

  private static boolean sharedEnd(Pieces p, int i, int j, double tolerance) {
    return near(p, i, j, tolerance)
        || apart(p.x1[i], p.y1[i], p.x0[j], p.y0[j]) <= tolerance
        || apart(p.x1[i], p.y1[i], p.x1[j], p.y1[j]) <= tolerance;
  }

  // Neighbours that leave their common corner on one course.
  private static boolean foldsBack(Pieces p, int i, int j, boolean forward) {
    int before = forward ? i : j;
    int after = forward ? j : i;
    double[] in = new double[2];
    double[] out = new double[2];
    p.tangent(before, true, in);
    p.tangent(after, false, out);
    return in[0] * out[0] + in[1] * out[1] < 0
        && Math.abs(in[0] * out[1] - in[1] * out[0]) < 1e-12
        && Math.abs(p.curvature(before) + p.curvature(after)) < 1e-12;
  }

  private static double apart(double x, double y, double u, double v) {
    return Math.hypot(x - u, y - v);
  }

  private static void nesting(Outline outline, List<Fault> found) {
    List<Loop> loops = outline.loops();
    Nesting nesting = Nesting.of(loops);
    for (int i = 0; i < loops.size(); i++) {
      Point at = loops.get(i).primitives().get(0).start();
      if (i == 0 && nesting.depth(0) > 0) {
        found.add(new Fault(at, "the outer edge lies inside an opening"));
      } else if (i > 0 && nesting.depth(i) == 0) {
        found.add(new Fault(at, "an opening lies outside the outer edge"));
      } else if (i > 0 && nesting.depth(i) > 1) {
        found.add(new Fault(at, "an opening lies inside another"));
      }
    }
  }
}
