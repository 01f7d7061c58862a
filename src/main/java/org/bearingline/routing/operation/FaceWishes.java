package org.bearingline.routing.operation;

import java.util.Objects;
import java.util.Optional;

/**
 * What the maker wishes of faces and hands.
 *
 * @param pair whether left and right pieces are made, and which is the one drawn
 * @param register how the templates are located; empty for what suits the part
 */
public record FaceWishes(Optional<Pair> pair, Optional<Register> register) {

  /** Nothing in particular. */
  public static final FaceWishes NONE = new FaceWishes(Optional.empty(), Optional.empty());

  public FaceWishes {
    Objects.requireNonNull(pair);
    Objects.requireNonNull(register);
  }

  /** Whether nothing in particular is wished. */
  public boolean isNone() {
    return pair.isEmpty() && register.isEmpty();
  }

  /** Which of a pair is the part as drawn. */
  public enum Pair {
    LEFT_RIGHT("left", "right"),
    RIGHT_LEFT("right", "left");

    private final String drawn;
    private final String mirrored;

    Pair(String drawn, String mirrored) {
      this.drawn = drawn;
      this.mirrored = mirrored;
    }

    public String drawn() {
      return drawn;
    }

    public String mirrored() {
      return mirrored;
    }
  }

  /** How a template finds its place on both faces. */
  public enum Register {
    PINS,
    STOPS,
    LINES
  }
}
