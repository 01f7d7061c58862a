package org.bearingline.outside.unite;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;

/** Openings too narrow to be meant, such as edges leave that run along each other. */
final class Slivers {

  private Slivers() {}

  /**
   * The region with such openings filled.
   *
   * @param near mm: filled is what is less than half as wide
   */
  static Region without(Region region, double near) {
    List<Outline> pieces = new ArrayList<>();
    for (Outline piece : region.pieces()) {
      List<Loop> openings = piece.openings().stream().filter(o -> !isThin(o, near)).toList();
      pieces.add(
          openings.size() == piece.openings().size()
              ? piece
              : new Outline(piece.outer(), openings));
    }
    return new Region(pieces);
  }

  // Of a strip, twice the area is its length round times its width.
  private static boolean isThin(Loop opening, double near) {
    return 2 * Math.abs(opening.signedArea()) <= near / 2 * opening.length();
  }
}
