package org.bearingline.routing.family;

import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/**
 * One position of a part on a template.
 *
 * @param number from 1, in the order of work
 * @param intoTemplate takes the part's coordinates to the template's; a turn or mirror of it says
 *     how the part lies
 * @param lay how the part lies
 * @param slide mm along the template from the first setting, to the right positive
 */
public record Setting(int number, Similarity intoTemplate, Lay lay, double slide) {

  /** How a part lies on a template made for another. */
  public enum Lay {
    /** As drawn. */
    AS_DRAWN("as drawn"),
    /** Other face up, turned over end for end. */
    TURNED_END_FOR_END("other face up, turned over end for end"),
    /** Same face up, turned half round. */
    TURNED_HALF_ROUND("same face up, turned half round"),
    /** Other face up, turned over edge for edge. */
    TURNED_EDGE_FOR_EDGE("other face up, turned over edge for edge");

    private final String words;

    Lay(String words) {
      this.words = words;
    }

    /** For a sentence. */
    public String words() {
      return words;
    }

    /** Whether the part's other face lies up. */
    public boolean turnsOver() {
      return turn().mirrored();
    }

    /** The lay as a map about the origin. */
    Similarity turn() {
      Point alongX = new Point(1, 0);
      Point alongY = new Point(0, 1);
      return switch (this) {
        case AS_DRAWN -> Similarity.identity();
        case TURNED_END_FOR_END -> Similarity.mirror(Point.ORIGIN, alongY);
        case TURNED_HALF_ROUND -> Similarity.rotation(180, Point.ORIGIN);
        case TURNED_EDGE_FOR_EDGE -> Similarity.mirror(Point.ORIGIN, alongX);
      };
    }
  }
}
