package org.bearingline.export.pdf;

import java.util.List;
import org.bearingline.drawing.sheet.Margins;
import org.bearingline.export.Ink;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/**
 * Writes the page of corner marks. Nothing is printed between the four crosses: there the template
 * lies, and any line would be taken for its edge. Lengths are true mm of the printed paper.
 *
 * <p>The marks' edges lie a whole number of a printer's dots from each other. A printer moves every
 * edge to its next dot; these it moves all alike, so that four marks cut apart are of one size and
 * square, which a view of them is found by.
 */
public final class MarksPdf {

  private static final Ink BLACK = new Ink(0, 0, 0);
  private static final Ink WHITE = new Ink(255, 255, 255);
  private static final Ink GREY = new Ink(0x66, 0x66, 0x66);
  private static final double SIZE = 2.9;
  private static final double LINE = 3.75;
  private static final double TITLE = 4.4;
  private static final double LETTER = 8;
  private static final double TICK = 4;

  /** White round a mark, as a share of its side. */
  private static final double QUIET = 1 / 7.0;

  /** mm: the coarsest dots of the printers in use, common practice; finer ones have it as well. */
  private static final double DOT = 25.4 / 600;

  private final MarksPage page;
  private final Canvas canvas;
  private final double side;
  private final double high;
  private final double width;
  private final double height;
  private final Point[] centres;

  private MarksPdf(MarksPage page, Canvas canvas, double width, double height) {
    this.page = page;
    this.canvas = canvas;
    this.width = width;
    this.height = height;
    double dotX = DOT * page.printed().x() / 100;
    double dotY = DOT * page.printed().y() / 100;
    this.side = whole(page.side(), dotX);
    this.high = whole(page.side(), dotY);
    double across = whole(page.across(), dotX);
    double along = whole(page.along(), dotY);
    double left = whole((width - across - side) / 2, dotX) + side / 2;
    // Dots are counted from the upper left corner of the paper.
    double down = whole(Margins.usual().side() + page.side() * QUIET, dotY);
    double top = height - down - high / 2;
    this.centres =
        new Point[] {
          new Point(left, top),
          new Point(left + across, top),
          new Point(left + across, top - along),
          new Point(left, top - along)
        };
  }

  private static double whole(double length, double dot) {
    return dot * Math.rint(length / dot);
  }

  /** The file's bytes. */
  public static byte[] write(MarksPage page) {
    Margins margins = Margins.usual();
    double printsX = page.printed().x() / 100;
    double printsY = page.printed().y() / 100;
    double marks = page.along() + page.side() * (1 + 2 * QUIET);
    double length =
        page.paper()
            .height()
            .orElse((marks + margins.side() + margins.foot() + MarksPage.WORDS) / printsY);
    double width = page.paper().width();
    try (PdfFile file = new PdfFile(page.title())) {
      try (Canvas canvas = new Canvas(file, width, length, 1 / printsX, 1 / printsY)) {
        // A printer that enlarges pushes the rim out of the paper, so only a smaller print counts.
        new MarksPdf(page, canvas, width * Math.min(1, printsX), length * Math.min(1, printsY))
            .draw();
      }
      return file.bytes();
    }
  }

  private void draw() {
    for (int i = 0; i < centres.length; i++) {
      mark(page.marks().get(i), centres[i]);
      cross(centres[i]);
      letter(i);
    }
    cutTicks();
    double half = page.side() / 2;
    double barLeft = (width - ScaleBar.INCHES) / 2;
    new ScaleBar("X", new Point(barLeft, centres[0].y() + half / 2), false).draw(canvas);
    double barLow = centres[3].y() + (page.along() - ScaleBar.INCHES) / 2;
    new ScaleBar("Y", new Point(centres[0].x() - half / 2, barLow), true).draw(canvas);
    words();
  }

  private void mark(MarksPage.Mark mark, Point centre) {
    int rows = mark.cells().size();
    double across = side / rows;
    double along = high / rows;
    double left = centre.x() - side / 2;
    double top = centre.y() + high / 2;
    // The black square first, then its white cells: black cells side by side would show seams.
    canvas.brush(BLACK);
    canvas.box(new Bounds(left, top - high, left + side, top));
    canvas.fill();
    canvas.brush(WHITE);
    for (int row = 0; row < rows; row++) {
      List<Boolean> cells = mark.cells().get(row);
      for (int column = 0; column < cells.size(); column++) {
        if (!cells.get(column)) {
          canvas.box(
              new Bounds(
                  left + column * across,
                  top - (row + 1) * along,
                  left + (column + 1) * across,
                  top - row * along));
        }
      }
    }
    canvas.fill();
  }

  /** A cross that shows on black and on white. */
  private void cross(Point centre) {
    double arm = page.side() / page.marks().get(0).cells().size() * 0.36;
    for (boolean broad : new boolean[] {true, false}) {
      canvas.pen(broad ? WHITE : BLACK, broad ? 0.55 : 0.18);
      canvas.rule(centre.plus(new Point(-arm, 0)), centre.plus(new Point(arm, 0)));
      canvas.rule(centre.plus(new Point(0, -arm)), centre.plus(new Point(0, arm)));
    }
  }

  /** The mark's name beside it, outside the four crosses. */
  private void letter(int i) {
    double aside = page.side() * (0.5 + QUIET) + LETTER / 3;
    double x = centres[i].x() + (i == 0 || i == 3 ? aside : -aside);
    double y = centres[i].y() + (i < 2 ? 1 : -1) * page.side() / 3.4;
    canvas.brush(BLACK);
    canvas.centred(
        Typeface.SEMIBOLD, LETTER, new Point(x, y), 0, 0.5, page.marks().get(i).letter());
  }

  /** Where to cut the page in four: at its rim only, so that no line lies under the template. */
  private void cutTicks() {
    double rim = Margins.usual().side();
    double x = width / 2;
    double y = centres[3].y() + page.along() / 2;
    canvas.pen(GREY, 0.25);
    canvas.rule(new Point(x, height - rim), new Point(x, height - rim - TICK));
    double low = centres[3].y() - page.side() * (0.5 + QUIET) + TICK;
    canvas.rule(new Point(x, low), new Point(x, low - TICK));
    canvas.rule(new Point(rim, y), new Point(rim + TICK, y));
    canvas.rule(new Point(width - rim, y), new Point(width - rim - TICK, y));
  }

  private void words() {
    double left = centres[0].x() - page.side() / 2;
    double room = page.across() + page.side();
    double base = centres[3].y() - page.side() * (0.5 + QUIET) - TITLE;
    canvas.brush(BLACK);
    canvas.text(Typeface.SEMIBOLD, TITLE, new Point(left, base), page.title());
    base -= LINE + 0.8;
    TextFlow flow = new TextFlow(canvas.fonts(), Typeface.REGULAR, SIZE);
    for (String paragraph : page.words()) {
      for (String line : flow.lines(paragraph, Math.min(room, 260))) {
        canvas.text(Typeface.REGULAR, SIZE, new Point(left, base), line);
        base -= LINE;
      }
    }
  }
}
