package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Words for a drawing of several separate outlines, none of which is chosen. */
final class SeparateOutlines {

  /** Places of separate outlines that a sentence names. */
  private static final int MOST_PLACES = 4;

  private SeparateOutlines() {}

  /** Size and place of an outline: “80.0 × 40.0 mm round x 45, y 25 of the file”. */
  static String words(Outline one, CleanedOutline cleaned) {
    Bounds box = one.bounds();
    return String.format(
        Locale.ROOT,
        "%.1f × %.1f mm round %s",
        box.width(),
        box.height(),
        cleaned.drawn().place(box.center()));
  }

  /** Each outline with its number, as many as anybody reads. */
  static List<String> numbered(CleanedOutline cleaned, int most) {
    List<String> numbered = new ArrayList<>();
    for (Outline one : cleaned.outlines().stream().limit(most).toList()) {
      numbered.add((numbered.size() + 1) + ": " + words(one, cleaned));
    }
    return numbered;
  }

  /** Why no part can be made of the drawing: its first fault, or that it holds several outlines. */
  static Problem refusal(String file, CleanedOutline cleaned) {
    try {
      cleaned.sound();
    } catch (Problem fault) {
      return fault;
    }
    return new Problem(
        Place.file(file),
        "the drawing holds "
            + cleaned.outlines().size()
            + " separate outlines ("
            + String.join("; ", numbered(cleaned, MOST_PLACES))
            + (cleaned.outlines().size() > MOST_PLACES ? "; …" : "")
            + "), and one drawing is one part; choose one with --outline 1, or its layer with"
            + " --layer");
  }
}
