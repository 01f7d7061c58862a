package org.bearingline.outline.offset;

import java.util.Locale;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Region;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Work on outlines laid over each other, done again with a coarser tolerance until its result
 * holds.
 *
 * @param box round all that is laid over each other
 * @param most tries, each telling points apart ten times more coarsely than the one before
 */
record CoarserTries(Bounds box, int most) {

  /** One try. */
  @FunctionalInterface
  interface Try {
    Region in(Frame frame) throws Unproven;
  }

  /**
   * The first result that holds.
   *
   * @param cannot what is not possible where none holds, as the beginning of a sentence
   * @param culprits what the maker should look for at the place told
   */
  Region first(Try work, String cannot, String culprits) {
    Frame frame = Frame.forOverlay(box);
    Unproven last = null;
    for (int i = 0; i < most; i++) {
      try {
        return work.in(frame);
      } catch (Unproven failure) {
        last = failure;
        frame = frame.coarser();
      }
    }
    throw new Problem(
        Place.nowhere(),
        String.format(
            Locale.ROOT,
            "%s near x %.3f, y %.3f mm (%s); look there for %s",
            cannot,
            last.x(),
            last.y(),
            last.getMessage(),
            culprits));
  }
}
