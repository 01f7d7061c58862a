package org.bearingline.kit;

import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * A band-saw blade.
 *
 * @param width mm, more than 0
 * @param smallestRadius tightest curve it turns, mm, more than 0
 */
public record SawBlade(double width, double smallestRadius) {

  public SawBlade {
    if (!(width > 0) || !(smallestRadius > 0) || !Double.isFinite(width * smallestRadius)) {
      throw new Problem(
          Place.field("blade"), "a saw blade needs a width and a smallest radius above 0");
    }
  }

  /** The blade of the given width (mm) with the smallest radius from the table of blades. */
  public static SawBlade ofWidth(double width) {
    return new SawBlade(width, BladeTable.shipped().smallestRadius(width));
  }
}
