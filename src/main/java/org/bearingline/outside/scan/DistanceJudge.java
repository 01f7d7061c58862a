package org.bearingline.outside.scan;

import java.util.Locale;
import org.bearingline.problem.Problem;

/**
 * Refuses distances that cannot be: read in another unit, exchanged, or wrong by a hand. Each loose
 * mark is its own rule, to what a printer enlarges or shrinks a page by.
 */
final class DistanceJudge {

  /** A page fitted to the paper is this much smaller or larger at most, common practice. */
  private static final double PRINTED = 0.12;

  /** What it is made narrower or higher by at most. */
  private static final double SQUARE = 0.04;

  /** mm by which measured distances may miss before one is wrong, and not merely read badly. */
  private static final double CONTRADICTION = 3;

  private DistanceJudge() {}

  /**
   * @param width of a mark by the distances, mm
   * @param height of a mark by the distances, mm
   * @param miss mm by which the worst corner or distance misses
   */
  static void judge(MarkSet set, double width, double height, double miss) {
    double printed = set.side();
    if (Math.abs(width / printed - 1) > PRINTED
        || Math.abs(height / printed - 1) > PRINTED
        || Math.abs(width / height - 1) > SQUARE) {
      throw new Problem(
          MarksApart.OPTION,
          String.format(
              Locale.ROOT,
              "by these distances the marks would be %.1f by %.1f mm, and they are printed %.1f mm"
                  + " square; measure from cross to cross again, and mind which is A to B",
              width,
              height,
              printed));
    }
    if (miss > CONTRADICTION) {
      throw new Problem(
          MarksApart.OPTION,
          String.format(
              Locale.ROOT,
              "the distances contradict the picture by %.1f mm; measure from cross to cross again, and"
                  + " mind which is A to B",
              miss));
    }
  }
}
