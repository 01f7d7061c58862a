package org.bearingline.cutlist;

import java.util.List;
import org.bearingline.length.Units;

/** Lays blanks out on boards. */
public final class Packing {

  private Packing() {}

  /**
   * The layout with the fewest blanks left out, then the least board area cut into, then the fewest
   * boards, that was found.
   */
  public static PackingResult pack(
      List<Blank> blanks, List<Board> boards, SawRules rules, Units units) {
    throw new UnsupportedOperationException("being written");
  }
}
