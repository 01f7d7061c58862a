package org.bearingline.wood;

import java.util.OptionalDouble;

/**
 * A wood, or a sheet material that does not move, with the figures of its change across the fibres.
 *
 * @param name as the trade calls it, such as {@code white oak}
 * @param solid whether it is boards with one direction of fibres; plywood and fibreboard are not
 * @param radial change of a quarter-sawn width per percent of moisture, as a share; 0 for sheets
 * @param tangential the same of a flat-sawn width
 * @param radialShrinkage from green to oven-dry, percent; empty where it is not known
 * @param tangentialShrinkage the same of a flat-sawn width
 * @param source where the figures come from
 */
public record Species(
    String name,
    boolean solid,
    double radial,
    double tangential,
    OptionalDouble radialShrinkage,
    OptionalDouble tangentialShrinkage,
    String source) {

  public double coefficient(Cut cut) {
    return cut == Cut.FLAT_SAWN ? tangential : radial;
  }

  public OptionalDouble shrinkage(Cut cut) {
    return cut == Cut.FLAT_SAWN ? tangentialShrinkage : radialShrinkage;
  }
}
