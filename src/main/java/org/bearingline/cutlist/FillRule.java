package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One way to fill boards by straight-through cuts: which piece next, in which free rectangle, and
 * how the rest of that rectangle is cut. The names of the choices follow the literature on packing
 * rectangles (best short side fit and so on).
 */
record FillRule(Order order, Choice choice, Split split) {

  /** Which pieces come first, largest before smallest. */
  enum Order {
    AREA(Comparator.comparingDouble(PieceKind::area)),
    LENGTH(Comparator.comparingDouble(PieceKind::length)),
    WIDTH(Comparator.comparingDouble(PieceKind::width)),
    LONGER_SIDE(Comparator.comparingDouble(k -> Math.max(k.length(), k.width()))),
    SHORTER_SIDE(Comparator.comparingDouble(k -> Math.min(k.length(), k.width()))),
    PERIMETER(Comparator.comparingDouble(k -> k.length() + k.width())),
    /** Whichever piece matches a free rectangle best. */
    BEST_MATCH(Comparator.comparingDouble(PieceKind::area));

    private final Comparator<PieceKind> by;

    Order(Comparator<PieceKind> by) {
      this.by = by;
    }

    /** The kinds' numbers, largest first; where equal, by area and then as given. */
    List<Integer> sorted(List<PieceKind> kinds) {
      List<Integer> numbers = new ArrayList<>();
      for (int i = 0; i < kinds.size(); i++) {
        numbers.add(i);
      }
      Comparator<PieceKind> larger = by.thenComparingDouble(PieceKind::area).reversed();
      numbers.sort((a, b) -> larger.compare(kinds.get(a), kinds.get(b)));
      return numbers;
    }
  }

  /** Which free rectangle takes it: the one with the least of this left over. */
  enum Choice {
    SHORT_SIDE,
    LONG_SIDE,
    AREA,
    /** The first board with room, then the short side. */
    FIRST_BOARD;

    double waste(double restLength, double restWidth, double freeArea, int board) {
      return switch (this) {
        case SHORT_SIDE -> Math.min(restLength, restWidth);
        case LONG_SIDE -> Math.max(restLength, restWidth);
        case AREA -> freeArea;
        // Boards are told apart by more than any rest can be long.
        case FIRST_BOARD -> board * 1e6 + Math.min(restLength, restWidth);
      };
    }
  }

  /** Whether the first cut beside a placed piece runs along the board. */
  enum Split {
    RIP_FIRST,
    CROSSCUT_FIRST,
    SHORTER_REST,
    LONGER_REST,
    LARGEST_REST,
    EVEN_RESTS;

    boolean ripsFirst(double length, double width, double restLength, double restWidth) {
      // Ripping first leaves the whole length above the piece, crosscutting the whole width.
      double above = (length + restLength) * restWidth;
      double beside = (width + restWidth) * restLength;
      return switch (this) {
        case RIP_FIRST -> true;
        case CROSSCUT_FIRST -> false;
        case SHORTER_REST -> restLength < restWidth;
        case LONGER_REST -> restLength >= restWidth;
        case LARGEST_REST -> above >= beside;
        case EVEN_RESTS -> above < beside;
      };
    }
  }

  static List<FillRule> all() {
    List<FillRule> rules = new ArrayList<>();
    for (Order order : Order.values()) {
      for (Choice choice : Choice.values()) {
        for (Split split : Split.values()) {
          rules.add(new FillRule(order, choice, split));
        }
      }
    }
    return rules;
  }
}
