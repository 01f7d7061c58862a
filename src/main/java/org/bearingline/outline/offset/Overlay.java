package org.bearingline.outline.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Union, intersection and difference of regions of lines and arcs. Edges that lie on each other
 * within some 1e-11 of the size count as one, so a sliver thinner than that is nothing.
 */
public final class Overlay {

  /** Each try tells points apart ten times more coarsely than the one before. */
  private static final int TRIES = 5;

  enum Operation {
    UNION,
    INTERSECTION,
    DIFFERENCE
  }

  private Overlay() {}

  /** a ∪ b. */
  public static Region union(Region a, Region b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.isEmpty() ? b : a;
    }
    if (!a.bounds().intersects(b.bounds())) {
      List<Outline> both = new ArrayList<>(a.pieces());
      both.addAll(b.pieces());
      return new Region(both);
    }
    return run(Operation.UNION, a, b);
  }

  /** a ∩ b. */
  public static Region intersection(Region a, Region b) {
    if (a.isEmpty() || b.isEmpty() || !a.bounds().intersects(b.bounds())) {
      return Region.EMPTY;
    }
    return run(Operation.INTERSECTION, a, b);
  }

  /** a without b. */
  public static Region difference(Region a, Region b) {
    if (a.isEmpty() || b.isEmpty() || !a.bounds().intersects(b.bounds())) {
      return a;
    }
    return run(Operation.DIFFERENCE, a, b);
  }

  private static Region run(Operation operation, Region a, Region b) {
    Frame frame = Frame.forOverlay(a.bounds().union(b.bounds()));
    Unproven last = null;
    for (int attempt = 0; attempt < TRIES; attempt++) {
      try {
        return new OverlayStep(operation, a, b, frame).run();
      } catch (Unproven failure) {
        last = failure;
        frame = frame.coarser();
      }
    }
    throw new Problem(
        Place.nowhere(),
        String.format(
            Locale.ROOT,
            "the outlines cannot be laid over each other near x %.3f, y %.3f mm (%s);"
                + " look there for edges that cross themselves or run on each other",
            last.x(),
            last.y(),
            last.getMessage()));
  }
}
