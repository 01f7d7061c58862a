package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
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
    if (settings.symmetric() != CenterLine.HORIZONTAL) {
      return clean(sized, settings, settings.symmetric() == CenterLine.VERTICAL);
    }
    // Seen in the diagonal, level becomes upright.
    Similarity turn = Similarity.mirror(Point.ORIGIN, new Point(1, 1));
    CleanedOutline turned = clean(Sizing.moved(sized, turn), settings, true);
    return turned.moved(turn, sized);
  }

  private static CleanedOutline clean(Sketch sized, CleaningSettings settings, boolean alike) {
    double tolerance = Math.max(settings.tolerance(), sized.noise().orElse(0));
    double sharp = settings.sharpCorner();
    boolean noisy = sized.noise().orElse(0) > 0;
    Chaining.Chained chained = Chaining.of(sized, settings.gap(), tolerance);
    List<CleanChain> chains = new ArrayList<>();
    for (Chain chain : chained.chains()) {
      chains.add(CleanChain.of(chain, tolerance, sharp, noisy));
    }
    OptionalDouble symmetryMove = OptionalDouble.empty();
    if (alike) {
      Mirroring.Mirrored mirrored = Mirroring.of(sized.file(), chains, tolerance, sharp);
      chains = mirrored.chains();
      symmetryMove = OptionalDouble.of(mirrored.largestMove());
    }
    return Result.of(sized, chained, chains, tolerance, symmetryMove);
  }
}
