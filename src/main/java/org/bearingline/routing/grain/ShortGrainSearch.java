package org.bearingline.routing.grain;

import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.outline.Outline;

/** Looks for short grain. */
public final class ShortGrainSearch {

  private ShortGrainSearch() {}

  /** Places where the wood splits easily, the weakest first; none for a sound part. */
  public static List<ShortGrain> of(Outline wood, GrainSettings settings, Units units) {
    return new FibreScan(wood, settings).places(units);
  }
}
