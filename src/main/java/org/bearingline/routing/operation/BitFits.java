package org.bearingline.routing.operation;

import org.bearingline.problem.Problem;

/** Refuses a bit that does not enter what it is to cut. */
final class BitFits {

  /** A bit exactly as wide as its slot fits; mm. */
  private static final double ROUNDING = 1e-6;

  private BitFits() {}

  static void check(Head head, String what, double width, Tooling tool) {
    double bit = tool.cutter().diameter();
    if (bit > width + ROUNDING) {
      throw new Problem(
          head.place(),
          head.name()
              + ": a "
              + Sentences.mm(bit)
              + " bit is wider than the "
              + what
              + " of "
              + Sentences.mm(width)
              + "; choose a bit no wider than that");
    }
  }
}
