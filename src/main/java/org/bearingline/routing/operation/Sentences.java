package org.bearingline.routing.operation;

import java.util.List;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** Turns of speech of this room. */
final class Sentences {

  private Sentences() {}

  /** Inches with millimetres beside them, for makers think in either. */
  static String mm(double length) {
    return Length.print(length, Units.MM) + " (" + Length.print(length, Units.INCH) + ")";
  }

  /** "a, b and c". */
  static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  static String sized(double diameter, String what) {
    return mm(diameter) + " " + what;
  }
}
