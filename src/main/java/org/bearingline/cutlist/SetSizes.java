package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * For every set of pieces the least rectangles from which straight-through cuts can make it: of a
 * set's layouts the first cut parts it into two sets, side by side or one above the other, so its
 * least sizes follow from theirs. Nothing is left out but what fits no board and what another
 * rectangle beats both ways.
 */
final class SetSizes {

  /** Work after which the search gives up, in pairs of rectangles put together. */
  private static final long MOST_PAIRS = 6_000_000;

  private final CuttingTask task;
  private final PieceSets sets;
  private final List<List<Size>> sizes = new ArrayList<>();
  private long pairs;

  /**
   * A rectangle that holds a set.
   *
   * @param length mm
   * @param width mm
   * @param how how it is made up
   */
  record Size(double length, double width, How how) {}

  /** How a rectangle is made up: one piece, or two rectangles beside or above each other. */
  sealed interface How {
    record Piece(int kind, boolean turned) implements How {}

    record Two(Size first, Size second, boolean beside) implements How {}
  }

  private SetSizes(CuttingTask task, PieceSets sets) {
    this.task = task;
    this.sets = sets;
  }

  /** All sizes, or nothing where that is too much work. */
  static Optional<SetSizes> of(CuttingTask task, PieceSets sets) {
    SetSizes all = new SetSizes(task, sets);
    all.sizes.add(List.of());
    for (int set = 1; set < sets.size(); set++) {
      if (!all.add(set)) {
        return Optional.empty();
      }
    }
    return Optional.of(all);
  }

  private boolean add(int set) {
    List<Size> found = new ArrayList<>();
    for (int kind = 0; kind < task.kinds().size(); kind++) {
      if (sets.single(kind) == set) {
        PieceKind piece = task.kinds().get(kind);
        keep(found, new Size(piece.length(), piece.width(), new How.Piece(kind, false)));
        if (piece.mayTurn()) {
          keep(found, new Size(piece.width(), piece.length(), new How.Piece(kind, true)));
        }
      }
    }
    // Each pair of sets once: the one with the smaller number first.
    for (int part = 1; part <= set / 2; part++) {
      if (sets.isWithin(part, set)) {
        List<Size> firsts = sizes.get(part);
        List<Size> seconds = sizes.get(set - part);
        pairs += (long) firsts.size() * seconds.size();
        if (pairs > MOST_PAIRS) {
          return false;
        }
        for (Size first : firsts) {
          for (Size second : seconds) {
            putTogether(found, first, second);
          }
        }
      }
    }
    sizes.add(least(found));
    return true;
  }

  private void putTogether(List<Size> found, Size a, Size b) {
    double kerf = task.kerf();
    keep(
        found,
        new Size(
            a.length() + kerf + b.length(),
            Math.max(a.width(), b.width()),
            new How.Two(a, b, true)));
    keep(
        found,
        new Size(
            Math.max(a.length(), b.length()),
            a.width() + kerf + b.width(),
            new How.Two(a, b, false)));
  }

  private void keep(List<Size> found, Size size) {
    for (StockBoard board : task.boards()) {
      if (fits(size, board)) {
        found.add(size);
        return;
      }
    }
  }

  private static boolean fits(Size size, StockBoard board) {
    return size.length() <= board.length() + CuttingTask.ROUNDING
        && size.width() <= board.width() + CuttingTask.ROUNDING;
  }

  private static List<Size> least(List<Size> found) {
    found.sort(Comparator.comparingDouble(Size::length).thenComparingDouble(Size::width));
    List<Size> least = new ArrayList<>();
    double narrowest = Double.POSITIVE_INFINITY;
    for (Size size : found) {
      if (size.width() < narrowest) {
        least.add(size);
        narrowest = size.width();
      }
    }
    return List.copyOf(least);
  }

  /** A rectangle that holds the set and fits the board; empty where there is none. */
  Optional<Size> on(int set, int board) {
    for (int kind = 0; kind < task.kinds().size(); kind++) {
      if (sets.count(set, kind) > 0 && !task.serves()[kind][board]) {
        return Optional.empty();
      }
    }
    StockBoard on = task.boards().get(board);
    return sizes.get(set).stream().filter(size -> fits(size, on)).findFirst();
  }

  /** The pieces of a rectangle, from its low corner at the given point. */
  void lay(Size size, double x, double y, List<Layout.Laid> into) {
    if (size.how() instanceof How.Piece piece) {
      into.add(new Layout.Laid(piece.kind(), x, y, piece.turned()));
      return;
    }
    How.Two two = (How.Two) size.how();
    lay(two.first(), x, y, into);
    double kerf = task.kerf();
    if (two.beside()) {
      lay(two.second(), x + two.first().length() + kerf, y, into);
    } else {
      lay(two.second(), x, y + two.first().width() + kerf, into);
    }
  }
}
