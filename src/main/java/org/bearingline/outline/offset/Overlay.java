package org.bearingline.outline.offset;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;

/**
 * Union, intersection and difference of regions of lines and arcs. Edges that lie on each other
 * within some 1e-11 of the size count as one, so a sliver thinner than that is nothing.
 */
public final class Overlay {

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
    return new CoarserTries(a.bounds().union(b.bounds()), TRIES)
        .first(
            frame -> new OverlayStep(operation, a, b, frame).run(),
            "the outlines cannot be laid over each other",
            "edges that cross themselves or run on each other");
  }
}
