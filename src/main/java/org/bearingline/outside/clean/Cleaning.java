package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outside.Sketch;

/** Cleans a drawing. */
public final class Cleaning {

  private Cleaning() {}

  /**
   * The drawing's outlines as few tangent lines and arcs. Faults stand in the report; a Problem is
   * thrown only where the drawing has no size or the settings contradict it.
   */
  public static CleanedOutline clean(Sketch sketch, CleaningSettings settings) {
    Sketch sized = Sizing.sized(sketch, settings);
    double tolerance = Math.max(settings.tolerance(), sized.noise().orElse(0));
    Chaining.Chained chained = Chaining.of(sized, settings.gap(), tolerance);
    List<CleanChain> chains = new ArrayList<>();
    for (Chain chain : chained.chains()) {
      chains.add(CleanChain.of(chain, tolerance, settings.sharpCorner()));
    }
    return Result.of(sized, chained, chains, tolerance);
  }
}
