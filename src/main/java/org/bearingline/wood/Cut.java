package org.bearingline.wood;

/** How a board lies in the log, which decides how its width moves. */
public enum Cut {
  /** Growth rings run along the width, which moves with the tangential coefficient: the most. */
  FLAT_SAWN("flat-sawn"),
  /** Growth rings stand across the width, which moves with the radial coefficient. */
  QUARTER_SAWN("quarter-sawn");

  private final String words;

  Cut(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
