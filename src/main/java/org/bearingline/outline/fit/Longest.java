package org.bearingline.outline.fit;

import java.util.Optional;
import java.util.function.DoubleFunction;

/** Finds the longest run of the parameter that an attempt still answers. */
final class Longest {

  private static final int HALVINGS = 12;

  /** Share of the run's length to which it is found. */
  private static final double FOUND = 1e-3;

  /** A width of the whole parameter that no real curve turns in. */
  private static final double LEAST = 1e-13;

  private Longest() {}

  /**
   * Goes out from {@code guess} until one width is good and the next is not, then halves.
   *
   * <p>Nothing where not even the least width is good.
   *
   * @param guess the width tried first
   * @param most the largest width asked for
   * @param attempt the run of a width, or nothing where it does not keep to the curve
   */
  static Optional<Run> find(double guess, double most, DoubleFunction<Optional<Run>> attempt) {
    double width = Math.min(guess, most);
    Optional<Run> best = attempt.apply(width);
    double good = best.isPresent() ? width : 0;
    double tooWide = best.isPresent() ? 0 : width;
    while (best.isPresent() && tooWide == 0 && good < most) {
      double wider = Math.min(2 * good, most);
      Optional<Run> run = attempt.apply(wider);
      if (run.isPresent()) {
        best = run;
        good = wider;
      } else {
        tooWide = wider;
      }
    }
    while (best.isEmpty()) {
      width = tooWide / 2;
      if (width < LEAST) {
        return Optional.empty();
      }
      best = attempt.apply(width);
      good = best.isPresent() ? width : 0;
      tooWide = best.isPresent() ? tooWide : width;
    }
    for (int i = 0; i < HALVINGS && tooWide - good > FOUND * good; i++) {
      double middle = (good + tooWide) / 2;
      Optional<Run> run = attempt.apply(middle);
      if (run.isPresent()) {
        best = run;
        good = middle;
      } else {
        tooWide = middle;
      }
    }
    return best;
  }
}
