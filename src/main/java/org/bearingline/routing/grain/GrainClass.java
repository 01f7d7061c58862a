package org.bearingline.routing.grain;

/** What the fibres do along a stretch of edge as the cutter passes. */
public enum GrainClass {
  /** The fibres lie along the edge: cut clean from either side. */
  ALONG("along the grain"),
  /** The fibres run out into the waste: cut clean. */
  CLEAN("with the grain"),
  /** The fibres dive into the part: the cutter lifts and tears them. */
  TEARS("against the grain"),
  /** The fibres stand square to the edge: they break out where the cutter leaves. */
  END_GRAIN("end grain");

  private final String words;

  GrainClass(String words) {
    this.words = words;
  }

  /** The class of the same stretch once the feed is reversed. */
  public GrainClass reversed() {
    return switch (this) {
      case CLEAN -> TEARS;
      case TEARS -> CLEAN;
      default -> this;
    };
  }

  /** How a maker calls it, in lower case. */
  public String words() {
    return words;
  }
}
