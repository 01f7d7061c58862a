package org.bearingline.cutlist;

import java.util.List;
import org.bearingline.outline.Bounds;

/**
 * One board with what is cut from it.
 *
 * @param board its kind
 * @param number which of its quantity, from 1
 * @param placements blanks on it
 * @param cuts in the order of sawing; each goes right through the piece it is made in
 * @param offcuts what is left, largest first, mm on the board; slivers are not named
 */
public record CutBoard(
    Board board, int number, List<Placement> placements, List<SawCut> cuts, List<Bounds> offcuts) {

  public CutBoard {
    placements = List.copyOf(placements);
    cuts = List.copyOf(cuts);
    offcuts = List.copyOf(offcuts);
  }

  /** Area of the blanks on it, mm². */
  public double usedArea() {
    double sum = 0;
    for (Placement placement : placements) {
      sum += placement.blank().area();
    }
    return sum;
  }
}
