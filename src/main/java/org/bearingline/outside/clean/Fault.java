package org.bearingline.outside.clean;

import java.util.Objects;
import org.bearingline.outline.Point;
import org.bearingline.outside.Sketch;

/**
 * Why a drawing is no outline yet.
 *
 * @param kind what is wrong
 * @param at where, in mm of the drawing as sized
 * @param source what was drawn there, in the words of its reader
 */
public record Fault(Kind kind, Point at, String source) {

  /** What can be wrong with a drawn outline. */
  public enum Kind {
    OPEN_END("the line ends here and nothing goes on within the gap"),
    CROSSING("the outline crosses itself"),
    TOUCHING("the outline touches itself"),
    MEETING("two outlines cross or touch each other"),
    NO_OUTLINE("nothing here encloses an area");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  public Fault {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(at);
    Objects.requireNonNull(source);
  }

  /**
   * A clause for a sentence, with the place in the drawing's own coordinates: “… at x 12.5, y 40 of
   * the file (path #apron)”.
   */
  public String sentence(Sketch drawn) {
    return kind.words + " at " + drawn.place(at) + " (" + source + ")";
  }
}
