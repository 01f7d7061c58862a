package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Path;

/**
 * Feed against the bit's turn: wood on the left of the router's way. A router held in the hand, its
 * bit turning clockwise as seen from above, goes counter-clockwise round an outside edge and
 * clockwise round an opening; that is the sense of every path of this room.
 */
final class Feed {

  /** Arrows stand about this far apart, mm. */
  static final double SPACING = 150;

  /** An arrow may stand up to this share of the spacing from its even place. */
  private static final double PLAY = 0.3;

  /** Places tried on each side of the even one. */
  private static final int TRIES = 4;

  /**
   * An arrow, which is straight, passes for the edge's direction while that turns less, degrees.
   */
  private static final double SEEN_BEND = 20;

  private Feed() {}

  /** Arrows along the centre's path, at least one, each where the path runs straightest. */
  static List<FeedArrow> along(Path path, String edge) {
    Walked walked = new Walked(path);
    double length = walked.length();
    int count = Math.max(1, (int) Math.round(length / SPACING));
    List<FeedArrow> arrows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double step = length / count;
      arrows.add(straightest(walked, (i + 0.5) * step, step * PLAY / TRIES, edge));
    }
    return arrows;
  }

  private static FeedArrow straightest(Walked path, double even, double step, String edge) {
    double best = even;
    double most = room(path, even);
    for (int i = 1; i <= TRIES; i++) {
      for (double place : new double[] {even - i * step, even + i * step}) {
        double room = room(path, place);
        // A shorter stretch nearer to the even place is as good until another is clearly longer.
        if (room > 1.25 * most) {
          best = place;
          most = room;
        }
      }
    }
    return new FeedArrow(path.at(best), path.degreesAt(best), most, edge);
  }

  /** The path's stretch round a place, as long on either side, that an arrow can stand for, mm. */
  private static double room(Walked path, double place) {
    double degrees = path.degreesAt(place);
    double reach = 0;
    double step = 1;
    while (reach < SPACING / 2
        && place - reach - step >= 0
        && place + reach + step <= path.length()
        && bend(degrees, path.degreesAt(place - reach - step)) < SEEN_BEND
        && bend(degrees, path.degreesAt(place + reach + step)) < SEEN_BEND) {
      reach += step;
    }
    return 2 * reach;
  }

  private static double bend(double a, double b) {
    double turned = Math.abs(a - b) % 360;
    return Math.min(turned, 360 - turned);
  }
}
