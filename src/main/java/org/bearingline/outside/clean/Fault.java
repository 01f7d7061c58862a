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
    OPEN_END(
        "the line ends here and nothing goes on within the gap",
        "close it in the drawing, or let --gap join what belongs together"),
    CROSSING("the outline crosses itself", "correct the drawing there"),
    TOUCHING("the outline touches itself", "draw it with a little room there"),
    MEETING(
        "two outlines cross or touch each other",
        "ask for --unite to make one of them, or unite them in the drawing, move them apart, or take"
            + " one with --layer"),
    LINES_MEETING(
        "two outlines cross or touch each other, one of them without a fill",
        "--unite takes filled shapes alone, so fill it in the drawing; or move them apart, or take"
            + " one with --layer"),
    NARROW(
        "two shapes hold together here by a point or next to nothing",
        "let them lie over each other, or move them apart"),
    NO_OUTLINE("nothing here encloses an area", "draw a closed line there");

    private final String words;
    private final String mending;

    Kind(String words, String mending) {
      this.words = words;
      this.mending = mending;
    }

    /** What to do about it, a clause for a sentence. */
    String mending() {
      return mending;
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
