package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.topology.OutlineCheck;
import org.bearingline.outside.Sketch;
import org.bearingline.problem.CutOff;

/** Cleans a drawing. */
public final class Cleaning {

  /** Shares of the tolerance that are tried where a clean loop crosses itself. */
  private static final double[] CLOSER = {0.25, 0.05};

  /** Samples, and pieces, beyond which that takes too long. */
  private static final int MOST_CLOSER = 20_000;

  private final Sketch sized;
  private final CleaningSettings settings;
  private final double tolerance;
  private final double sharp;

  /** Whether points lie off the line by themselves. */
  private final boolean noisy;

  private final List<CleanChain> chains = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private Cleaning(Sketch sized, CleaningSettings settings) {
    this.sized = sized;
    this.settings = settings;
    tolerance = Math.max(settings.tolerance(), sized.noise().orElse(0));
    sharp = settings.sharpCorner();
    noisy = sized.noise().orElse(0) > 0;
  }

  /**
   * The drawing's outlines as few tangent lines and arcs. Faults stand in the report; a Problem is
   * thrown only where the drawing has no size or the settings contradict it.
   */
  public static CleanedOutline clean(Sketch sketch, CleaningSettings settings) {
    Sketch sized = Sizing.sized(sketch, settings);
    if (settings.symmetric() != CenterLine.HORIZONTAL) {
      return new Cleaning(sized, settings).cleaned(settings.symmetric() == CenterLine.VERTICAL);
    }
    // Seen in the diagonal, level becomes upright.
    Similarity turn = Similarity.mirror(Point.ORIGIN, new Point(1, 1));
    CleanedOutline turned = new Cleaning(Sizing.moved(sized, turn), settings).cleaned(true);
    return turned.moved(turn, sized);
  }

  private CleanedOutline cleaned(boolean mirrored) {
    Chaining.Chained chained = Chaining.of(sized, settings.gap(), tolerance);
    notes.addAll(chained.notes());
    int doubled = 0;
    for (Chain chain : chained.chains()) {
      CutOff.check();
      doubled += add(chain);
    }
    if (sized.noise().isEmpty()) {
      Waver.told(chains, tolerance, sharp).ifPresent(notes::add);
    }
    chained =
        new Chaining.Chained(
            chained.chains(), chained.gaps(), chained.doubledStrokes() + doubled, notes);
    Optional<UnitedChains> united =
        settings.unite()
            ? Optional.of(UnitedChains.of(sized, List.copyOf(chains), settings, tolerance))
            : Optional.empty();
    united.ifPresent(
        one -> {
          chains.clear();
          chains.addAll(one.chains());
        });
    boolean isOneLoop = chains.stream().filter(chain -> chain.isLoop(tolerance)).count() == 1;
    if (!mirrored || !isOneLoop) {
      CleanedOutline plain =
          Result.of(sized, chained, chains, tolerance, OptionalDouble.empty(), united);
      // Outlines side by side are no part, and nobody asks for the middle of them all.
      if (!mirrored || plain.isSeveral()) {
        return plain;
      }
    }
    Mirroring.Mirrored alike = Mirroring.of(sized, chains, tolerance, sharp);
    OptionalDouble move = OptionalDouble.of(alike.largestMove());
    return Result.of(sized, chained, alike.chains(), tolerance, move, united);
  }

  // Adds a chain made clean; how many of its pieces ran twice the same way.
  private int add(Chain chain) {
    CleanChain clean = CleanChain.of(chain, tolerance, sharp, noisy);
    // Two lines a tolerance apart may be meant; a tenth of it is the same line twice.
    Retraced single = isSuspicious(clean) ? Retraced.without(chain, tolerance / 10) : null;
    if (single == null) {
      chains.add(uncrossed(clean));
      return 0;
    }
    for (Chain one : single.chains()) {
      chains.add(CleanChain.of(one, tolerance, sharp, noisy));
    }
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
    return single.doubled();
  }

  private boolean isSuspicious(CleanChain clean) {
    return clean.isLoop(tolerance) && Retraced.isSuspicious(clean.pieces());
  }

  private CleanChain uncrossed(CleanChain clean) {
    CleanChain best = noisy ? clean : closer(clean);
    if (best.pieces().size() > MOST_CLOSER || !isSuspicious(best)) {
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
  private CleanChain closer(CleanChain clean) {
    if (clean.course().size > MOST_CLOSER || !isSuspicious(clean)) {
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
