package org.bearingline.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Similarity;

/**
 * A loop with the kind of each of its primitives.
 *
 * @param loop the edge
 * @param kinds one for each primitive, in the loop's order
 */
public record Contour(Loop loop, List<EdgeKind> kinds) {

  public Contour {
    kinds = List.copyOf(kinds);
    if (kinds.size() != loop.size()) {
      throw new IllegalArgumentException("every primitive of a contour has one edge kind");
    }
  }

  public static Contour routed(Loop loop) {
    return new Contour(loop, Collections.nCopies(loop.size(), EdgeKind.ROUTED));
  }

  public static Contour sawn(Loop loop) {
    return new Contour(loop, Collections.nCopies(loop.size(), EdgeKind.SAWN));
  }

  public boolean isAll(EdgeKind kind) {
    return kinds.stream().allMatch(k -> k == kind);
  }

  public Contour counterClockwise() {
    return loop.isCounterClockwise() ? this : reversed();
  }

  public Contour clockwise() {
    return loop.isCounterClockwise() ? reversed() : this;
  }

  public Contour reversed() {
    List<EdgeKind> back = new ArrayList<>(kinds);
    Collections.reverse(back);
    return new Contour(loop.reversed(), back);
  }

  public Contour transformed(Similarity similarity) {
    return new Contour(loop.transformed(similarity), kinds);
  }
}
