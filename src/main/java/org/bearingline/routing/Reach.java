package org.bearingline.routing;

import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.part.Part;

/**
 * A = (T ⊕ D(R)) ⊖ D(r): what remains of the work when a follower of radius R rides the template T
 * with a cutter of radius r. Leftover = A \ P, overcut = P \ A, both within the stock.
 *
 * @param cutter the cutter
 * @param follower what rides the template
 * @param leftovers numbered in reading order from the left
 * @param overcuts in reading order from the left
 * @param tolerance mm to which the edges of A are known
 * @param cautions sentences for the maker; empty for the exact way
 */
public record Reach(
    Cutter cutter,
    Follower follower,
    List<Leftover> leftovers,
    List<Overcut> overcuts,
    double tolerance,
    List<String> cautions) {

  public Reach {
    leftovers = List.copyOf(leftovers);
    overcuts = List.copyOf(overcuts);
    cautions = List.copyOf(cautions);
  }

  /** The reach alone, without the template's margins, saw line and the rest. */
  public static Reach of(Part part, Cutter cutter, Follower follower) {
    throw new UnsupportedOperationException();
  }

  /** Whether every routed edge comes out as designed. */
  public boolean isComplete() {
    return leftovers.isEmpty();
  }
}
