package org.bearingline.routing.family;

import org.bearingline.outline.Point;

/**
 * A line on a template by which a part is laid to it.
 *
 * @param part whose line it is
 * @param kind what falls there
 * @param from mm in the template's coordinates
 * @param to mm
 * @param label a few words to write beside it
 */
public record Registration(String part, Kind kind, Point from, Point to, String label) {

  /** What a registration line locates. */
  public enum Kind {
    /** The sawn end of the part. */
    END,
    /** The part's centre line. */
    CENTRE,
    /** The sawn edge at the part's back. */
    BACK,
    /** Where the router stops, for the template goes another way from here on. */
    STOP
  }
}
