package org.bearingline.routing.operation;

import java.util.List;
import java.util.Locale;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Point;

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

  /** A place on the part. */
  static String at(Point p) {
    return "x " + rough(p.x()) + ", y " + rough(p.y());
  }

  private static String rough(double length) {
    return String.format(Locale.ROOT, "%.0f mm (", length)
        + Length.printRough(length, Units.INCH)
        + ")";
  }

  /** With a capital letter. */
  static String started(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
