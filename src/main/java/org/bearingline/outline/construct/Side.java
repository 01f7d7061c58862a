package org.bearingline.outline.construct;

/** The side of a direction of travel. */
public enum Side {
  LEFT,
  RIGHT;

  /** 1 to the left, −1 to the right: the sign of a counter-clockwise turn. */
  public int sign() {
    return this == LEFT ? 1 : -1;
  }

  public Side opposite() {
    return this == LEFT ? RIGHT : LEFT;
  }
}
