package org.bearingline.routing.family;

import org.bearingline.outline.Similarity;

/**
 * One position of a part on a template.
 *
 * @param number from 1, in the order of work
 * @param intoTemplate takes the part's coordinates to the template's; a turn or mirror of it says
 *     how the part lies
 * @param lays how the part lies
 * @param slide mm along the template from the first setting, to the right positive
 */
public record Setting(int number, Similarity intoTemplate, Lay lays, double slide) {

  /** How a part lies on a template made for another. */
  public enum Lay {
    /** As drawn. */
    AS_DRAWN,
    /** Other face up, turned over end for end. */
    TURNED_END_FOR_END,
    /** Other face up, turned over edge for edge. */
    TURNED_EDGE_FOR_EDGE,
    /** Same face up, turned half round. */
    TURNED_HALF_ROUND
  }
}
