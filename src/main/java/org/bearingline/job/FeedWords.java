package org.bearingline.job;

import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;

/** Which way to feed, in a sentence. */
final class FeedWords {

  private FeedWords() {}

  /** For a router held in the hands, seen from above the work. */
  static String handHeld(Part part) {
    boolean outside = part.contour().kinds().contains(EdgeKind.ROUTED);
    boolean inside = !part.cavities().isEmpty();
    if (outside && inside) {
      return "counter-clockwise round the outside edge, clockwise round each opening";
    }
    return inside ? "clockwise round each opening" : "counter-clockwise round the outside edge";
  }
}
