package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/**
 * Finds the order of straight-through cuts that frees the pieces of one board. A cut that frees a
 * large offcut comes first, so that it stays in one piece; then crosscuts, which make the board
 * handy, then rips.
 */
final class CutSequence {

  /** A rest is worth keeping from this size on each side, in mm: two inches, common practice. */
  private static final double WORTH_KEEPING = 50.8;

  private static final double NEAR = 1e-5;

  private final double kerf;
  private final List<SawCut> cuts = new ArrayList<>();
  private final List<Bounds> offcuts = new ArrayList<>();

  private CutSequence(double kerf) {
    this.kerf = kerf;
  }

  /** The cuts and what is left. */
  record Sawn(List<SawCut> cuts, List<Bounds> offcuts) {}

  /**
   * A cut that could come next.
   *
   * @param across whether it is a crosscut
   * @param at low side of the kerf, mm
   * @param waste area of the side without pieces, mm²; 0 where both have some
   * @param keep whether that side is worth keeping
   */
  private record Choice(boolean across, double at, double waste, boolean keep) {}

  /** Fails where the pieces cannot be freed by cuts that go right through. */
  static Sawn of(Bounds usable, List<Bounds> pieces, double kerf) {
    CutSequence sequence = new CutSequence(kerf);
    sequence.saw(usable, pieces);
    sequence.offcuts.sort(
        Comparator.comparingDouble((Bounds box) -> -box.width() * box.height())
            .thenComparingDouble(Bounds::minX)
            .thenComparingDouble(Bounds::minY));
    return new Sawn(sequence.cuts, sequence.offcuts);
  }

  private void saw(Bounds region, List<Bounds> pieces) {
    if (pieces.isEmpty()) {
      if (isWorthKeeping(region)) {
        offcuts.add(region);
      }
      return;
    }
    Optional<Choice> best =
        choices(region, pieces).stream()
            .min(
                Comparator.comparing((Choice c) -> !c.keep())
                    .thenComparingDouble(c -> c.keep() ? -c.waste() : 0)
                    .thenComparing(c -> c.waste() > 0)
                    .thenComparing(c -> !c.across())
                    .thenComparingDouble(Choice::at));
    if (best.isEmpty()) {
      if (pieces.size() > 1) {
        throw new IllegalStateException("no cut goes right through " + region);
      }
      return;
    }
    Choice cut = best.get();
    cuts.add(record(region, cut));
    List<Bounds> low = new ArrayList<>();
    List<Bounds> high = new ArrayList<>();
    for (Bounds piece : pieces) {
      (end(piece, cut.across()) <= cut.at() + NEAR ? low : high).add(piece);
    }
    lowSide(region, cut).ifPresent(side -> saw(side, low));
    highSide(region, cut).ifPresent(side -> saw(side, high));
  }

  private List<Choice> choices(Bounds region, List<Bounds> pieces) {
    List<Choice> all = new ArrayList<>();
    for (boolean across : new boolean[] {true, false}) {
      double first = Double.POSITIVE_INFINITY;
      for (Bounds piece : pieces) {
        first = Math.min(first, start(piece, across));
        double at = end(piece, across);
        if (at < end(region, across) - NEAR && isThrough(pieces, across, at)) {
          all.add(choice(region, pieces, across, at));
        }
      }
      if (first > start(region, across) + NEAR) {
        all.add(choice(region, pieces, across, first - kerf));
      }
    }
    return all;
  }

  private boolean isThrough(List<Bounds> pieces, boolean across, double at) {
    for (Bounds piece : pieces) {
      if (end(piece, across) > at + NEAR && start(piece, across) < at + kerf - NEAR) {
        return false;
      }
    }
    return true;
  }

  private Choice choice(Bounds region, List<Bounds> pieces, boolean across, double at) {
    Choice cut = new Choice(across, at, 0, false);
    boolean someLow = pieces.stream().anyMatch(p -> end(p, across) <= at + NEAR);
    boolean someHigh = pieces.stream().anyMatch(p -> end(p, across) > at + NEAR);
    if (someLow && someHigh) {
      return cut;
    }
    Optional<Bounds> rest = someLow ? highSide(region, cut) : lowSide(region, cut);
    double area = rest.map(box -> box.width() * box.height()).orElse(0.0);
    // A rest thinner than the saw is waste too.
    return new Choice(
        across, at, Math.max(area, NEAR), rest.filter(CutSequence::isWorthKeeping).isPresent());
  }

  private SawCut record(Bounds region, Choice cut) {
    double setting = Math.max(0, cut.at() - start(region, cut.across()));
    double middle = cut.at() + kerf / 2;
    Point from = cut.across() ? new Point(middle, region.minY()) : new Point(region.minX(), middle);
    Point to = cut.across() ? new Point(middle, region.maxY()) : new Point(region.maxX(), middle);
    SawCut.Direction direction = cut.across() ? SawCut.Direction.CROSSCUT : SawCut.Direction.RIP;
    return new SawCut(cuts.size() + 1, direction, region, from, to, setting);
  }

  private static Optional<Bounds> lowSide(Bounds region, Choice cut) {
    return side(region, cut.across(), start(region, cut.across()), cut.at());
  }

  private Optional<Bounds> highSide(Bounds region, Choice cut) {
    return side(region, cut.across(), cut.at() + kerf, end(region, cut.across()));
  }

  private static Optional<Bounds> side(Bounds region, boolean across, double from, double to) {
    if (to - from <= NEAR) {
      return Optional.empty();
    }
    return Optional.of(
        across
            ? new Bounds(from, region.minY(), to, region.maxY())
            : new Bounds(region.minX(), from, region.maxX(), to));
  }

  private static boolean isWorthKeeping(Bounds box) {
    return Math.min(box.width(), box.height()) >= WORTH_KEEPING;
  }

  private static double start(Bounds box, boolean across) {
    return across ? box.minX() : box.minY();
  }

  private static double end(Bounds box, boolean across) {
    return across ? box.maxX() : box.maxY();
  }
}
