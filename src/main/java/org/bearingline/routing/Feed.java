package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Feed against the bit's turn: wood on the left of the router's way. A router held in the hand, its
 * bit turning clockwise as seen from above, goes counter-clockwise round an outside edge and
 * clockwise round an opening; that is the sense of every path of this room.
 */
final class Feed {

  /** Arrows stand about this far apart, mm. */
  private static final double SPACING = 150;

  private Feed() {}

  /** Arrows along the centre's path, at least one. */
  static List<FeedArrow> along(Path path, String edge) {
    double length = path.length();
    int count = Math.max(1, (int) Math.round(length / SPACING));
    List<FeedArrow> arrows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      arrows.add(at(path, (i + 0.5) * length / count, edge));
    }
    return arrows;
  }

  private static FeedArrow at(Path path, double distance, String edge) {
    double rest = distance;
    for (Primitive piece : path.primitives()) {
      if (rest <= piece.length()) {
        double share = rest / piece.length();
        Point tangent = piece.tangentAt(share);
        return new FeedArrow(piece.pointAt(share), Degrees.of(tangent), edge);
      }
      rest -= piece.length();
    }
    return new FeedArrow(
        path.end(),
        Degrees.of(path.primitives().get(path.primitives().size() - 1).tangentAt(1)),
        edge);
  }
}
