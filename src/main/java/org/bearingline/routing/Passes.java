package org.bearingline.routing;

import java.util.List;

/**
 * Depths of the passes through a thickness.
 *
 * @param thickness mm to cut through
 * @param perPass mm each pass takes
 * @param depths mm from the face after each pass; the last is the thickness
 * @param rule the rule in words, with its source
 */
public record Passes(double thickness, double perPass, List<Double> depths, String rule) {

  public Passes {
    depths = List.copyOf(depths);
  }
}
