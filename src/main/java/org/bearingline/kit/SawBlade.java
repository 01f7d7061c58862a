package org.bearingline.kit;

/**
 * A band-saw blade.
 *
 * @param width mm, more than 0
 * @param smallestRadius tightest curve it turns, mm, more than 0
 */
public record SawBlade(double width, double smallestRadius) {

  public SawBlade {
    if (!(width > 0) || !(smallestRadius > 0)) {
      throw new IllegalArgumentException("a blade has a positive width and smallest radius");
    }
  }
}
