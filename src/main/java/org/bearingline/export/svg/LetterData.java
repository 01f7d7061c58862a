package org.bearingline.export.svg;

import org.bearingline.export.Figure;
import org.bearingline.export.font.Pen;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/** Path data of words, in the page's coordinates. */
final class LetterData implements Pen {

  private final Bounds page;
  private final StringBuilder data = new StringBuilder();

  private LetterData(Bounds page) {
    this.page = page;
  }

  static String of(Figure.Words words, Bounds page) {
    LetterData letters = new LetterData(page);
    double drop = Typeface.REGULAR.capHeight(words.height()) / 2;
    Point base = words.left().plus(Point.polar(drop, words.degrees() - 90));
    Typeface.REGULAR.draw(words.text(), words.height(), base, words.degrees(), letters);
    return letters.data.toString();
  }

  @Override
  public void moveTo(double x, double y) {
    append('M', x, y);
  }

  @Override
  public void lineTo(double x, double y) {
    append('L', x, y);
  }

  @Override
  public void quadTo(double cx, double cy, double x, double y) {
    append('Q', cx, cy);
    append(' ', x, y);
  }

  @Override
  public void close() {
    data.append('Z');
  }

  private void append(char command, double x, double y) {
    data.append(command)
        .append(SvgNumbers.coarse(x - page.minX()))
        .append(' ')
        .append(SvgNumbers.coarse(page.maxY() - y));
  }
}
