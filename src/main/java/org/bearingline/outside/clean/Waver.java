package org.bearingline.outside.clean;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Tells whether a drawing wavers by more than its tolerance, as a hand or a tracing program makes
 * it, so that it falls into hundreds of short lines; and which tolerance would even it out.
 */
final class Waver {

  /** Points of a chain from which it may tell, and most that are fitted a second time. */
  private static final int LEAST = 60;

  private static final int MOST = 300_000;

  /** Pieces from which a maker wonders. */
  private static final int MANY = 30;

  /** Share of the pieces that a suggestion must leave out. */
  private static final double WORTH = 2.0 / 3;

  /** mm, and share of the drawing's size: what stands out farther was meant. */
  private static final double MOST_WAVER = 1;

  private static final double MOST_SHARE = 0.005;

  /** Tolerances a maker would write. */
  private static final double[] STEPS = {1, 1.5, 2, 3, 5, 7};

  private static final String WAVERS = "the drawing wavers";

  private Waver() {}

  /** A sentence with a suggestion, where the drawing wavers. */
  static Optional<String> told(List<CleanChain> chains, double tolerance, double sharp) {
    List<Double> offs = new ArrayList<>();
    int pieces = 0;
    double size = 0;
    for (CleanChain clean : chains) {
      pieces += clean.pieces().size();
      collect(clean.course(), offs);
      for (int i = 0; i < clean.course().size; i += 16) {
        size = Math.max(size, clean.course().at(i).distanceTo(clean.course().at(0)));
      }
    }
    if (pieces < MANY || offs.size() < LEAST || offs.size() > MOST) {
      return Optional.empty();
    }
    // Three times the standard deviation, by the median: corners do not count.
    offs.sort(null);
    double spread = 3 * 1.4826 * offs.get(offs.size() / 2) / Math.sqrt(35.0 / 8);
    double asked = written(Math.max(1.2 * spread, 1.2 * tolerance));
    if (spread <= 0.5 * tolerance || asked > Math.min(MOST_WAVER, MOST_SHARE * size)) {
      return Optional.empty();
    }
    for (int i = 0; i < 2; i++) {
      int fewer = 0;
      double most = 0;
      for (CleanChain clean : chains) {
        CleanChain evened = CleanChain.of(clean.chain(), asked, sharp, true);
        fewer += evened.pieces().size();
        most = Math.max(most, evened.move().largest());
      }
      if (fewer <= (1 - WORTH) * pieces && most <= asked) {
        return Optional.of(sentence(most, asked, fewer, pieces));
      }
      asked = written(1.6 * asked);
    }
    return Optional.empty();
  }

  /** The sentence among others. */
  static Optional<String> among(List<String> notes) {
    return notes.stream().filter(note -> note.startsWith(WAVERS)).findFirst();
  }

  private static String sentence(double waver, double asked, int fewer, int pieces) {
    return String.format(
        Locale.ROOT,
        WAVERS + " by about %.2g mm; --tolerance %smm would make %d lines and arcs of its" + " %d",
        waver,
        BigDecimal.valueOf(asked).stripTrailingZeros().toPlainString(),
        fewer,
        pieces);
  }

  // Of a smooth line the heights of neighbouring points over the chords beside them change little.
  private static void collect(Course course, List<Double> offs) {
    double[] height = new double[course.size];
    Arrays.fill(height, Double.NaN);
    for (int i = 1; i + 1 < course.size; i++) {
      if (course.step[i - 1] == Course.Step.CHORD && course.step[i] == Course.Step.CHORD) {
        height[i] = height(course, i);
      }
    }
    for (int i = 2; i + 2 < course.size; i++) {
      double off = Math.abs(height[i] - (height[i - 1] + height[i + 1]) / 2);
      if (!Double.isNaN(off)) {
        offs.add(off);
      }
    }
  }

  private static double height(Course c, int i) {
    double dx = c.x[i + 1] - c.x[i - 1];
    double dy = c.y[i + 1] - c.y[i - 1];
    double length = Math.hypot(dx, dy);
    double cross = dx * (c.y[i] - c.y[i - 1]) - dy * (c.x[i] - c.x[i - 1]);
    return length > 0 ? cross / length : 0;
  }

  // The next larger one of those a maker would write.
  private static double written(double mm) {
    double power = Math.pow(10, Math.floor(Math.log10(mm)));
    for (double step : STEPS) {
      if (step * power >= mm * (1 - 1e-9)) {
        return rounded(step * power);
      }
    }
    return rounded(10 * power);
  }

  private static double rounded(double mm) {
    return Math.rint(mm * 1e6) / 1e6;
  }
}
