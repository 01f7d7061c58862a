package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.topology.OutlineCheck;
import org.bearingline.outside.Sketch;

/** Cleans a drawing. */
public final class Cleaning {

  /** Shares of the tolerance that are tried where a clean loop crosses itself. */
  private static final double[] CLOSER = {0.25, 0.05};

  /** Samples beyond which that takes too long. */
  private static final int MOST_CLOSER = 20_000;

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
    List<String> notes = new ArrayList<>(chained.notes());
    int doubled = 0;
    for (Chain chain : chained.chains()) {
      CleanChain clean = CleanChain.of(chain, tolerance, sharp, noisy);
      // Two lines a tolerance apart may be meant; a tenth of it is the same line twice.
      Retraced single =
          clean.isLoop(tolerance) && Retraced.isSuspicious(clean.pieces())
              ? Retraced.without(chain, tolerance / 10)
              : null;
      if (single == null) {
        chains.add(uncrossed(clean, settings, tolerance, noisy, sized, notes));
        continue;
      }
      for (Chain one : single.chains()) {
        chains.add(CleanChain.of(one, tolerance, sharp, noisy));
      }
      doubled += single.doubled();
      if (single.at() != null) {
        notes.add(
            String.format(
                Locale.ROOT,
                "a line of %s that runs there and back and encloses nothing was left out, %.1f mm"
                    + " in all, the first at %s",
                chain.source(),
                single.length(),
                sized.place(single.at())));
      }
    }
    if (sized.noise().isEmpty()) {
      Waver.told(chains, tolerance, sharp).ifPresent(notes::add);
    }
    chained =
        new Chaining.Chained(
            chained.chains(), chained.gaps(), chained.doubledStrokes() + doubled, notes);
    OptionalDouble symmetryMove = OptionalDouble.empty();
    if (alike) {
      Mirroring.Mirrored mirrored = Mirroring.of(sized, chains, tolerance, sharp);
      chains = mirrored.chains();
      symmetryMove = OptionalDouble.of(mirrored.largestMove());
    }
    return Result.of(sized, chained, chains, tolerance, symmetryMove);
  }

  private static CleanChain uncrossed(
      CleanChain clean,
      CleaningSettings settings,
      double tolerance,
      boolean noisy,
      Sketch sized,
      List<String> notes) {
    CleanChain best = noisy ? clean : closer(clean, tolerance, settings.sharpCorner());
    if (!best.isLoop(tolerance) || !Retraced.isSuspicious(best.pieces())) {
      return best;
    }
    // Edges that run past their corner by less than a gap are drawn past each other, not crossed.
    TinyLoops cut = TinyLoops.without(best.pieces(), 2 * settings.gap());
    if (cut.count() == 0) {
      return best;
    }
    notes.add(
        String.format(
            Locale.ROOT,
            "where %s crosses itself, %s of up to %.2f mm of line %s cut off, %s at %s",
            clean.chain().source(),
            cut.count() == 1 ? "a loop" : cut.count() + " loops",
            cut.largest(),
            cut.count() == 1 ? "was" : "were",
            cut.count() == 1 ? "it was" : "the largest",
            sized.place(cut.at())));
    return best.with(cut.pieces());
  }

  // Two edges nearer to each other than the tolerance may cross when each of them moves a little.
  private static CleanChain closer(CleanChain clean, double tolerance, double sharp) {
    if (!clean.isLoop(tolerance)
        || clean.course().size > MOST_CLOSER
        || !Retraced.isSuspicious(clean.pieces())) {
      return clean;
    }
    for (double share : CLOSER) {
      CleanChain next = CleanChain.of(clean.chain(), share * tolerance, sharp, false);
      if (next.isLoop(tolerance)
          && OutlineCheck.crossings(List.of(new Loop(next.pieces()))).isEmpty()) {
        return next;
      }
    }
    return clean;
  }
}
