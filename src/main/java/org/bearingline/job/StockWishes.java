package org.bearingline.job;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a job file says of the wood of a part and of the stuff of its templates.
 *
 * @param grain how the fibres lie
 * @param templateThickness mm; empty where not chosen yet
 * @param species of its wood, or the sheet it is cut from; empty where not said
 */
record StockWishes(Grain grain, OptionalDouble templateThickness, Optional<String> species) {

  /** Solid wood with its fibres along the part. */
  static final StockWishes USUAL =
      new StockWishes(Grain.ALONG, OptionalDouble.empty(), Optional.empty());
}
