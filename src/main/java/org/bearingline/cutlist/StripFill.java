package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Fills one board with strips that run along or across it, each the best of its height by {@link
 * StripChoice}. The first cuts part the strips, the next the pieces, and what stands over a lower
 * piece of a strip is filled once more; so every cut goes right through.
 */
final class StripFill {

  /** Strips tried as the first of a board, by their worth for their height. */
  private static final int FIRST_TRIED = 2;

  private final CuttingTask task;
  private final int board;
  private final boolean across;
  private final double power;
  private final Effort effort;
  private final double length;
  private final double height;
  private Filled best = new Filled(List.of(), 0);

  /** Pieces laid on a board, and what they count. */
  record Filled(List<Layout.Laid> laid, double worth) {}

  private StripFill(CuttingTask task, int board, boolean across, double power, Effort effort) {
    this.effort = effort;
    StockBoard on = task.boards().get(board);
    this.task = task;
    this.board = board;
    this.across = across;
    this.power = power;
    this.length = across ? on.width() : on.length();
    this.height = across ? on.length() : on.width();
  }

  /**
   * The better one of strips along and across.
   *
   * @param rest how many of each kind there are
   * @param power of a piece's area that it counts with
   * @param effort that this costs
   */
  static Filled fill(CuttingTask task, int board, int[] rest, double power, Effort effort) {
    Filled along = new StripFill(task, board, false, power, effort).best(rest);
    Filled across = new StripFill(task, board, true, power, effort).best(rest);
    return across.worth() > along.worth() * (1 + 1e-12) ? across : along;
  }

  private Filled best(int[] rest) {
    go(rest, 0, List.of(), 0);
    return best;
  }

  /** Lays the next strip, from {@code from} mm up. */
  private void go(int[] rest, double from, List<Layout.Laid> laid, int depth) {
    double room = height - from;
    List<StripItem> items = items(rest, length, room);
    if (items.isEmpty()) {
      double worth = 0;
      for (Layout.Laid piece : laid) {
        worth += worth(piece.kind());
      }
      if (worth > best.worth() * (1 + 1e-12)) {
        best = new Filled(laid, worth);
      }
      return;
    }
    StripChoice choice = new StripChoice(items, length, task.kerf(), effort);
    for (StripChoice.Strip strip : tried(choice.strips(room), depth)) {
      int[] left = rest.clone();
      List<Layout.Laid> more = new ArrayList<>(laid);
      lay(choice.pieces(strip), strip.high(), from, left, more);
      go(left, from + strip.high() + task.kerf(), more, depth + 1);
    }
  }

  private List<StripChoice.Strip> tried(List<StripChoice.Strip> strips, int depth) {
    List<StripChoice.Strip> dense = new ArrayList<>(strips);
    dense.sort(Comparator.comparingDouble(strip -> -strip.worth() / (strip.high() + task.kerf())));
    List<StripChoice.Strip> tried =
        new ArrayList<>(dense.subList(0, Math.min(depth == 0 ? FIRST_TRIED : 1, dense.size())));
    StripChoice.Strip highest = strips.get(strips.size() - 1);
    if (depth < 1 && !tried.contains(highest)) {
      // Worth most of all, and perhaps the last for which there is room.
      tried.add(highest);
    }
    return tried;
  }

  private List<StripItem> items(int[] rest, double mostAlong, double mostHigh) {
    List<StripItem> items = new ArrayList<>();
    for (int kind = 0; kind < rest.length; kind++) {
      if (rest[kind] == 0 || !task.serves()[kind][board]) {
        continue;
      }
      PieceKind piece = task.kinds().get(kind);
      offer(items, kind, false, rest[kind], mostAlong, mostHigh);
      if (piece.mayTurn() && piece.length() != piece.width()) {
        offer(items, kind, true, rest[kind], mostAlong, mostHigh);
      }
    }
    return items;
  }

  private void offer(
      List<StripItem> items, int kind, boolean turned, int count, double along, double high) {
    PieceKind piece = task.kinds().get(kind);
    boolean lengthAlong = turned == across;
    double itsAlong = lengthAlong ? piece.length() : piece.width();
    double itsHigh = lengthAlong ? piece.width() : piece.length();
    if (itsAlong > along + CuttingTask.ROUNDING || itsHigh > high + CuttingTask.ROUNDING) {
      return;
    }
    StripItem item = new StripItem(kind, itsAlong, itsHigh, turned, worth(kind));
    int most = (int) ((along + task.kerf()) / (itsAlong + task.kerf()) + 1e-6);
    for (int i = 0; i < Math.min(count, Math.max(1, most)); i++) {
      items.add(item);
    }
  }

  private double worth(int kind) {
    return Math.pow(task.kinds().get(kind).area(), power);
  }

  private void lay(
      List<StripItem> pieces, double high, double from, int[] left, List<Layout.Laid> into) {
    double at = 0;
    List<double[]> over = new ArrayList<>();
    for (StripItem piece : pieces) {
      // Offered both ways, a piece may have been chosen twice.
      if (left[piece.kind()] == 0) {
        continue;
      }
      left[piece.kind()]--;
      into.add(laid(piece, at, from));
      double above = from + piece.high() + task.kerf();
      over.add(new double[] {at, above, piece.along(), from + high - above});
      at += piece.along() + task.kerf();
    }
    over.add(new double[] {at, from, length - at, high});
    over.sort(Comparator.comparingDouble(free -> -free[2] * free[3]));
    over.forEach(free -> fillUp(free[0], free[1], free[2], free[3], left, into));
  }

  private Layout.Laid laid(StripItem piece, double at, double up) {
    return across
        ? new Layout.Laid(piece.kind(), up, at, piece.turned())
        : new Layout.Laid(piece.kind(), at, up, piece.turned());
  }

  /** The largest piece that goes into a rest, then the two rests beside and above it. */
  private void fillUp(
      double x, double y, double along, double high, int[] left, List<Layout.Laid> into) {
    if (along <= CuttingTask.ROUNDING || high <= CuttingTask.ROUNDING) {
      return;
    }
    StripItem largest = null;
    for (StripItem item : items(left, along, high)) {
      if (largest == null || item.worth() > largest.worth()) {
        largest = item;
      }
    }
    if (largest == null) {
      return;
    }
    left[largest.kind()]--;
    into.add(laid(largest, x, y));
    double beside = along - largest.along() - task.kerf();
    double above = high - largest.high() - task.kerf();
    boolean wholeAbove = along * Math.max(0, above) >= high * Math.max(0, beside);
    double right = x + largest.along() + task.kerf();
    double up = y + largest.high() + task.kerf();
    fillUp(right, y, beside, wholeAbove ? largest.high() : high, left, into);
    fillUp(x, up, wholeAbove ? along : largest.along(), above, left, into);
  }
}
