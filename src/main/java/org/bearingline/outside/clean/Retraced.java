package org.bearingline.outside.clean;

import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.OutlineCheck;

/**
 * Takes out of a closed chain what runs there and back along itself and encloses nothing: spikes
 * without width, and the bridge by which an opening is tied to its outline in one stroke; of what
 * runs twice the same way, one is left. The rest may fall into several loops.
 *
 * @param chains what is left
 * @param length mm of line that ran there and back, each counted once
 * @param at where the first of it was drawn
 * @param doubled pieces that ran twice the same way
 */
record Retraced(List<Chain> chains, double length, Point at, int doubled) {

  /** Radians that a joint lacks of a whole turn back, below which it may be the tip of a spike. */
  private static final double FOLD = 0.01;

  /** Whether a clean loop meets itself or has the tip of a spike. */
  static boolean isSuspicious(List<Primitive> pieces) {
    int n = pieces.size();
    for (int i = 0; i < n; i++) {
      Point in = pieces.get(i).tangentAt(1);
      Point out = pieces.get((i + 1) % n).tangentAt(0);
      if (n > 1 && in.dot(out) < 0 && Math.abs(in.cross(out)) < FOLD) {
        return true;
      }
    }
    return !OutlineCheck.crossings(List.of(new Loop(pieces))).isEmpty();
  }

  /**
   * The chain without; null where nothing of it runs there and back or twice.
   *
   * @param same mm within which two lines are one
   */
  static Retraced without(Chain chain, double same) {
    Ways ways = new Ways(same);
    StrokePart.cut(StrokePart.all(chain, same), same).forEach(ways::add);
    return ways.isPlain() ? null : ways.rest(chain);
  }
}
