package org.bearingline.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.export.font.Typeface;

/** Cuts the words of a card into pieces of a column's width. */
final class CardText {

  private static final double POINT = 25.4 / 72;

  private static final double GAP_BETWEEN_CELLS = 3;
  private static final double GAP_AFTER_SECTION = 3;
  private static final double GAP_AFTER_LINE = 0.8;

  /**
   * How large and how close the words stand. All are legible at arm's length; the smaller ones are
   * for cards that would run over to another page for a few lines.
   *
   * @param body of the words, mm of the em
   * @param line from one base line to the next, in ems
   */
  record Size(double body, double line) {

    /** From the most comfortable on: 11 points down to 9.5. */
    static final List<Size> ALL =
        List.of(
            new Size(11 * POINT, 1.3),
            new Size(10.5 * POINT, 1.26),
            new Size(10 * POINT, 1.24),
            new Size(9.5 * POINT, 1.22));

    double heading() {
      return body * 13 / 11;
    }

    /** mm of a gap that is {@code usual} at the most comfortable size. */
    double gap(double usual) {
      return usual * body / (11 * POINT);
    }
  }

  private final Fonts fonts;
  private final double width;
  private final Size size;

  CardText(Fonts fonts, double width, Size size) {
    this.fonts = fonts;
    this.width = width;
    this.size = size;
  }

  /** A section's heading, paragraphs and table. */
  List<CardPiece> section(Card.Section section) {
    List<CardPiece> pieces = new ArrayList<>(heading(section.heading()));
    for (String paragraph : section.lines()) {
      pieces.addAll(paragraph(paragraph, size.body()));
      pieces.add(CardPiece.gap(size.gap(GAP_AFTER_LINE)));
    }
    if (!section.rows().isEmpty()) {
      keepLastLine(pieces);
      pieces.addAll(table(section.rows()));
    }
    pieces.add(CardPiece.gap(size.gap(GAP_AFTER_SECTION)));
    return pieces;
  }

  /** A heading, which never leaves what stands under it. */
  List<CardPiece> heading(String words) {
    List<CardPiece> pieces = new ArrayList<>();
    for (String line : flow(Typeface.SEMIBOLD, size.heading()).lines(words, width)) {
      pieces.add(
          CardPiece.line(
                  size.heading() * size.line() + 0.6, 0, line, Typeface.SEMIBOLD, size.heading())
              .kept());
    }
    return pieces;
  }

  /** What announces a table stands in the same column. */
  private static void keepLastLine(List<CardPiece> pieces) {
    for (int i = pieces.size() - 1;
        i >= 0 && (pieces.get(i).isGap() || !pieces.get(i).keep());
        i--) {
      pieces.set(i, pieces.get(i).kept());
      if (!pieces.get(i).isGap()) {
        return;
      }
    }
  }

  /** A paragraph in the given size; its first two lines and its last two stay together. */
  List<CardPiece> paragraph(String text, double em) {
    List<CardPiece> pieces = new ArrayList<>();
    for (String line : flow(Typeface.REGULAR, em).lines(text, width)) {
      pieces.add(CardPiece.line(em * size.line(), 0, line, Typeface.REGULAR, em));
    }
    if (pieces.size() > 1) {
      pieces.set(0, pieces.get(0).kept());
      pieces.set(pieces.size() - 2, pieces.get(pieces.size() - 2).kept());
    }
    return pieces;
  }

  private TextFlow flow(Typeface face, double em) {
    return new TextFlow(fonts, face, em);
  }

  private List<CardPiece> table(List<List<String>> rows) {
    double[] widths = columnWidths(rows);
    List<CardPiece> head = row(rows.get(0), widths, true);
    List<CardPiece> pieces = new ArrayList<>(head);
    for (int i = 1; i < rows.size(); i++) {
      List<CardPiece> row = row(rows.get(i), widths, false);
      // The first row never leaves its head.
      pieces.add(i == 1 ? row.get(0) : row.get(0).under(head));
      pieces.addAll(row.subList(1, row.size()));
    }
    return pieces;
  }

  private static Typeface face(boolean head) {
    return head ? Typeface.SEMIBOLD : Typeface.REGULAR;
  }

  /** Each column as wide as its words; where that is too much, the wide ones give way. */
  private double[] columnWidths(List<List<String>> rows) {
    int columns = rows.stream().mapToInt(List::size).max().orElseThrow();
    double[] widths = new double[columns];
    for (int i = 0; i < rows.size(); i++) {
      for (int j = 0; j < rows.get(i).size(); j++) {
        double wide = flow(face(i == 0), size.body()).width(rows.get(i).get(j));
        widths[j] = Math.max(widths[j], wide + 0.01);
      }
    }
    double room = width - GAP_BETWEEN_CELLS * (columns - 1);
    double limit = limit(widths, room);
    for (int j = 0; j < columns; j++) {
      widths[j] = Math.min(widths[j], limit);
    }
    return widths;
  }

  /** The width to which the widest columns must be cut so that all fit into {@code room}. */
  private static double limit(double[] widths, double room) {
    double low = 0;
    double high = room;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      double sum = 0;
      for (double wide : widths) {
        sum += Math.min(wide, middle);
      }
      if (sum <= room) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private List<CardPiece> row(List<String> cells, double[] widths, boolean head) {
    List<List<String>> wrapped = new ArrayList<>();
    int lines = 1;
    for (int j = 0; j < cells.size(); j++) {
      List<String> cell = flow(face(head), size.body()).lines(cells.get(j), widths[j]);
      wrapped.add(cell);
      lines = Math.max(lines, cell.size());
    }
    List<CardPiece> pieces = new ArrayList<>();
    for (int line = 0; line < lines; line++) {
      List<CardPiece.Cell> texts = new ArrayList<>();
      double x = 0;
      for (int j = 0; j < cells.size(); j++) {
        if (line < wrapped.get(j).size()) {
          texts.add(new CardPiece.Cell(x, wrapped.get(j).get(line), face(head), size.body()));
        }
        x += widths[j] + GAP_BETWEEN_CELLS;
      }
      boolean last = line == lines - 1;
      double height = size.body() * size.line() + (last && head ? 0.8 : 0);
      double rule = last && head ? x - GAP_BETWEEN_CELLS : 0;
      pieces.add(new CardPiece(height, texts, rule, head || !last, List.of()));
    }
    return pieces;
  }
}
