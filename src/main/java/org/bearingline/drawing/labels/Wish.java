package org.bearingline.drawing.labels;

import java.util.List;
import java.util.Objects;
import org.bearingline.outline.Point;

/**
 * Words that want a place on the drawing.
 *
 * @param text one line
 * @param height size of the font, its em, in mm
 * @param target the thing the words speak of; a leader line runs to it where the words had to move
 *     away from it
 * @param preferred middles of the words, best first; may be empty, then the target is tried first
 */
public record Wish(String text, double height, Point target, List<Point> preferred) {

  public Wish {
    Objects.requireNonNull(text);
    Objects.requireNonNull(target);
    preferred = List.copyOf(preferred);
    if (!(height > 0)) {
      throw new IllegalArgumentException("lettering has a positive height, got " + height);
    }
  }

  /** Words that would best stand right on what they speak of. */
  public static Wish at(Point target, String text, double height) {
    return new Wish(text, height, target, List.of());
  }
}
