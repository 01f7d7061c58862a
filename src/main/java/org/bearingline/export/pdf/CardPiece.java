package org.bearingline.export.pdf;

import java.util.List;
import org.bearingline.export.Ink;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Point;

/**
 * A strip of a column of the card, with one or more texts side by side on one base line.
 *
 * @param height mm that it takes
 * @param cells the texts
 * @param rule whether a thin line closes it below
 * @param keep whether the next piece must follow in the same column
 * @param head what stands over it again where a column begins with it: the head of its table
 */
record CardPiece(double height, List<Cell> cells, double rule, boolean keep, List<CardPiece> head) {

  private static final Ink BLACK = new Ink(0, 0, 0);
  private static final Ink GREY = new Ink(0x88, 0x88, 0x88);

  /**
   * A text in a piece.
   *
   * @param x mm from the column's left edge
   * @param text one line
   */
  record Cell(double x, String text, Typeface face, double size) {}

  static CardPiece gap(double height) {
    return new CardPiece(height, List.of(), 0, false, List.of());
  }

  static CardPiece line(double height, double x, String text, Typeface face, double size) {
    return new CardPiece(height, List.of(new Cell(x, text, face, size)), 0, false, List.of());
  }

  CardPiece kept() {
    return new CardPiece(height, cells, rule, true, head);
  }

  CardPiece under(List<CardPiece> tableHead) {
    return new CardPiece(height, cells, rule, keep, tableHead);
  }

  boolean isGap() {
    return cells.isEmpty();
  }

  /** Draws it with its upper left corner at {@code corner}. */
  void draw(Canvas canvas, Point corner) {
    canvas.brush(BLACK);
    for (Cell cell : cells) {
      Point base = corner.plus(new Point(cell.x, -height * 0.74));
      canvas.text(cell.face, cell.size, base, cell.text);
    }
    if (rule > 0) {
      canvas.pen(GREY, 0.2);
      Point low = corner.plus(new Point(0, -height + 0.3));
      canvas.rule(low, low.plus(new Point(rule, 0)));
    }
  }
}
