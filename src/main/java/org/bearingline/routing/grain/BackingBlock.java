package org.bearingline.routing.grain;

import java.util.Objects;
import org.bearingline.outline.Point;

/**
 * A place where the cutter leaves end grain at an outside corner, and the last fibres have nothing
 * behind them unless a block is held there.
 *
 * @param number from 1, for the drawing
 * @param edge name of the edge
 * @param at the corner, on the part's edge
 * @param travel the cutter's direction as it leaves, a unit vector
 * @param clearedLater whether the edge that follows is routed along the grain after, which takes a
 *     small break-out away
 * @param sentence for the card
 */
public record BackingBlock(
    int number, String edge, Point at, Point travel, boolean clearedLater, String sentence) {

  public BackingBlock {
    Objects.requireNonNull(edge);
    Objects.requireNonNull(at);
    Objects.requireNonNull(travel);
    Objects.requireNonNull(sentence);
  }
}
