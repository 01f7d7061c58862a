package org.bearingline.export.pdf;

import java.util.ArrayList;
import java.util.List;

/** Pours pieces into columns of given heights. */
final class CardColumns {

  private CardColumns() {}

  /**
   * The pieces of each column, as many columns as {@code heights}; what is left over comes in one
   * list more. Pieces that keep together are moved on together; gaps at a column's top fall away,
   * and a table that goes on there begins with its head again.
   */
  static List<List<CardPiece>> pour(List<CardPiece> pieces, List<Double> heights) {
    List<List<CardPiece>> columns = new ArrayList<>();
    int next = 0;
    for (double height : heights) {
      List<CardPiece> column = new ArrayList<>();
      double used = 0;
      while (next < pieces.size()) {
        if (column.isEmpty() && pieces.get(next).isGap()) {
          next++;
          continue;
        }
        boolean fresh = column.isEmpty();
        if (fresh) {
          List<CardPiece> head = pieces.get(next).head();
          column.addAll(head);
          used += height(head);
        }
        int end = endOfGroup(pieces, next);
        double group = height(pieces.subList(next, end));
        boolean tooLong = used + group > height && fresh;
        if (tooLong) {
          // A group longer than any column is cut where the column ends.
          end = next + 1;
          group = pieces.get(next).height();
        }
        if (used + group > height + 1e-9 && !(pieces.get(next).isGap())) {
          if (fresh) {
            column.clear();
          }
          break;
        }
        column.addAll(pieces.subList(next, end));
        used += group;
        next = end;
      }
      columns.add(column);
    }
    columns.add(new ArrayList<>(pieces.subList(next, pieces.size())));
    return columns;
  }

  private static int endOfGroup(List<CardPiece> pieces, int start) {
    int end = start;
    while (end < pieces.size() - 1 && pieces.get(end).keep()) {
      end++;
    }
    return end + 1;
  }

  static double height(List<CardPiece> pieces) {
    return pieces.stream().mapToDouble(CardPiece::height).sum();
  }

  /** mm of the taller one of the first two columns, without gaps at its end. */
  static double tallest(List<List<CardPiece>> poured) {
    return Math.max(filled(poured.get(0)), filled(poured.get(1)));
  }

  private static double filled(List<CardPiece> column) {
    int end = column.size();
    while (end > 0 && column.get(end - 1).isGap()) {
      end--;
    }
    return height(column.subList(0, end));
  }

  /** The least height of two equal columns that hold all pieces, if {@code most} is enough. */
  static double balanced(List<CardPiece> pieces, double most) {
    double height = most;
    while (height > 10 && fits(pieces, height - 2)) {
      height -= 2;
    }
    return height;
  }

  static boolean fits(List<CardPiece> pieces, double height) {
    List<List<CardPiece>> columns = pour(pieces, List.of(height, height));
    return columns.get(2).stream().allMatch(CardPiece::isGap);
  }
}
