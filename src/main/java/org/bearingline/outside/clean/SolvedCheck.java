package org.bearingline.outside.clean;

/**
 * Looks at a solved chain with all samples of the course, of which the solver saw some.
 *
 * @param course what was drawn
 * @param chain the solution
 * @param samples the samples solved for, as they belong to its pieces
 * @param to the last sample of the course that it covers
 */
record SolvedCheck(Course course, TangentChain chain, PieceSamples samples, int to) {

  /** Tolerances of length from which the middle of a chord is looked at. */
  private static final double LEAST_CHORD = 4;

  /** mm by which it may miss the place to end in. */
  private static final double MET = 1e-8;

  private int end(int piece) {
    return piece + 1 < chain.pieces ? samples.first(piece + 1) : samples.last(to);
  }

  // A ring's pieces may run over the seam of the course.
  private int within(int sample) {
    int n = course.size - 1;
    return sample < 0 ? sample + n : sample > n ? sample - n : sample;
  }

  private int following(int piece) {
    int last = samples.isRound() ? 0 : piece;
    return piece + 1 < chain.pieces ? piece + 1 : last;
  }

  /** The largest distance in mm of a sample from its piece. */
  double worst() {
    double worst = 0;
    for (int i = 0; i < chain.pieces; i++) {
      Carrier carrier = chain.carrier(i);
      for (int k = samples.first(i); k <= end(i); k++) {
        int at = within(k);
        worst = Math.max(worst, Math.abs(carrier.off(course.x[at], course.y[at])));
      }
    }
    return worst;
  }

  /** Whether chords lie along it: their ends may be near two pieces and their middle near none. */
  boolean keepsChords(double tolerance) {
    for (int i = 0; i < chain.pieces; i++) {
      int end = end(i);
      for (int k = samples.first(i); k < end; k++) {
        int step = within(k) % (course.size - 1);
        if (course.isFlat(step) && course.length(step) > LEAST_CHORD * tolerance) {
          double off = Math.abs(course.middleOff(chain.carrier(i), step));
          int after = k + 1 == end ? following(i) : i;
          double next = Math.abs(course.middleOff(chain.carrier(after), step));
          if (!(Math.min(off, next) <= tolerance)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** Whether it ends where the ends ask it to. */
  boolean isClosed(EndStates ends) {
    double[] gap = Closing.of(ends, chain).gap(chain);
    return Math.hypot(gap[0], gap[1]) < MET;
  }
}
