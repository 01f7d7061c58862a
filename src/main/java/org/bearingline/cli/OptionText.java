package org.bearingline.cli;

import java.util.OptionalDouble;
import org.bearingline.length.Length;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads lengths given as options, and names the option where one cannot be read. */
final class OptionText {

  private OptionText() {}

  /** The length in mm; empty where the option was not given. */
  static OptionalDouble length(String option, String text) {
    if (text == null) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(requiredLength(option, text));
  }

  static double requiredLength(String option, String text) {
    try {
      return Length.parse(text);
    } catch (Problem problem) {
      throw new Problem(Place.option(option), problem.getMessage(), problem);
    }
  }
}
