package org.bearingline.part;

import java.util.Objects;
import java.util.OptionalDouble;
import org.bearingline.outline.Similarity;

/**
 * Wood taken out inside the part: an opening right through, a blind recess, or the ledge round an
 * opening.
 *
 * @param name unique within the part
 * @param kind what it is
 * @param contour its edge, clockwise (the wood that stays is on the left)
 * @param depth mm from face A; empty for a through opening
 */
public record Cavity(String name, Kind kind, Contour contour, OptionalDouble depth) {

  /** What kind of cavity it is. */
  public enum Kind {
    THROUGH,
    RECESS,
    LEDGE
  }

  public Cavity {
    Objects.requireNonNull(name);
    Objects.requireNonNull(kind);
    contour = contour.clockwise();
    if (depth.isPresent() == (kind == Kind.THROUGH)) {
      throw new IllegalArgumentException("recess and ledge have a depth, a through opening none");
    }
    if (depth.isPresent() && !(depth.getAsDouble() > 0)) {
      throw new IllegalArgumentException("a depth is more than 0");
    }
  }

  public Cavity transformed(Similarity similarity) {
    return new Cavity(name, kind, contour.transformed(similarity), depth);
  }
}
