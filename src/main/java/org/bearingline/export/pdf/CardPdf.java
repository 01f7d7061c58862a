package org.bearingline.export.pdf;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.export.Ink;
import org.bearingline.export.Plot;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/**
 * Writes the card for the shop wall: title, picture, what to know in two columns, and the cautions
 * in a frame of their own. The words are as large as the fewest pages allow, 11 points to 9.5.
 */
public final class CardPdf {

  private static final Ink BLACK = new Ink(0, 0, 0);
  private static final double MARGIN = 12;
  private static final double GUTTER = 7;
  private static final double TITLE = 8;
  private static final double PAD = 3;

  /** Height of the picture, mm: as much as it likes, or as little as still can be read. */
  private static final double TALLEST_PICTURE = 105;

  private static final double LEAST_PICTURE = 50;

  /** Columns of a first page that cannot hold all: the picture shrinks for so much room, mm. */
  private static final double WORTHY_COLUMN = 60;

  /** Columns shorter than this, mm, hold no heading with what stands under it. */
  private static final double LEAST_COLUMN = 20;

  /** A small part is drawn larger than it is, up to this factor. */
  private static final double LARGEST_SCALE = 2;

  /** Lettering in the picture, mm of the em: 10 points. */
  private static final double LETTERING = 3.5;

  /** Below this, mm of the em, 8 points, a picture does not shrink for the words. */
  private static final double LEAST_LETTERING = 2.8;

  /** Height of a further picture, mm: two stand on a page with room for words. */
  private static final double TALLEST_OTHER = 80;

  private final Card card;
  private final Plot plot;
  private final List<Plot> others;
  private final PdfFile file;
  private final double width;
  private final double height;
  private final double column;
  private final CardText.Size size;

  private CardPdf(Card card, Plot plot, List<Plot> others, PdfFile file, CardText.Size size) {
    Paper paper = card.paper().office();
    this.card = card;
    this.plot = plot;
    this.others = others;
    this.file = file;
    this.size = size;
    this.width = paper.width();
    this.height = paper.height().orElseThrow();
    this.column = (width - 2 * MARGIN - GUTTER) / 2;
  }

  /** The file's bytes; {@code units} are those of the dimensions' words. */
  public static byte[] write(Card card, Units units) {
    try (PdfFile file = new PdfFile(card.title())) {
      Plot plot = Plot.of(card.picture(), units, Typeface.REGULAR::width);
      List<Plot> others =
          card.others().stream()
              .map(other -> Plot.of(other.drawing(), units, Typeface.REGULAR::width))
              .toList();
      best(card, plot, others, file).write();
      return file.bytes();
    }
  }

  /**
   * Cautions stand in their frame on the first page, unless one page holds all without the frame
   * and two are needed with it.
   */
  private static Layout best(Card card, Plot plot, List<Plot> others, PdfFile file) {
    for (boolean inFrame : new boolean[] {true, false}) {
      for (CardText.Size size : CardText.Size.ALL) {
        Layout layout = new CardPdf(card, plot, others, file, size).layout(inFrame);
        if (layout.pages() == 1) {
          return layout;
        }
      }
    }
    Layout best = null;
    for (CardText.Size size : CardText.Size.ALL) {
      Layout layout = new CardPdf(card, plot, others, file, size).layout(true);
      if (best == null || layout.pages() < best.pages()) {
        best = layout;
      }
    }
    return best;
  }

  /**
   * The enlargement with which the lettering of a picture of {@code box} reads at arm's length on
   * the card.
   */
  public static double enlargementFor(Bounds box) {
    // Dimensions stand outside the box; a fifth of the room is theirs.
    double scale = Math.min(150 / Math.max(1, box.width()), 75 / Math.max(1, box.height()));
    return LETTERING / Drawing.TEXT_HEIGHT / Math.min(LARGEST_SCALE, scale);
  }

  /** What stands where, before anything is drawn. */
  private record Layout(
      CardPdf on,
      List<CardPiece> head,
      List<CardPiece> across,
      List<CardPiece> cautions,
      double framed,
      double top,
      double tall,
      List<List<CardPiece>> first,
      List<Further> further) {

    int pages() {
      return 1 + further.size();
    }

    void write() {
      on.write(this);
    }
  }

  /** A page after the first: pictures on top, then two columns. */
  private record Further(List<Other> pictures, double top, List<List<CardPiece>> columns) {}

  /** A further picture with the upper edge of its heading. */
  private record Other(List<CardPiece> heading, Plot plot, double top, double tall) {

    double whole() {
      return CardColumns.height(heading) + tall + 3;
    }
  }

  private Layout layout(boolean inFrame) {
    CardText text = text(column);
    List<CardPiece> pieces = new ArrayList<>();
    card.sections().forEach(section -> pieces.addAll(text.section(section)));
    List<CardPiece> cautions = inFrame ? cautions() : List.of();
    double framed = cautions.isEmpty() ? 0 : CardColumns.height(cautions) + 2 * PAD + 3;
    if (!inFrame && !card.cautions().isEmpty()) {
      pieces.addAll(text.section(Card.Section.of("Take care", card.cautions())));
    }
    List<CardPiece> head = head();
    List<CardPiece> across = across();
    double wide = CardColumns.height(across);
    double top = height - MARGIN - CardColumns.height(head) - 2;
    double room = top - MARGIN - framed - 3 - wide;
    if (framed > 0 && room < LEAST_PICTURE) {
      return layout(false);
    }
    double tall = pictureHeight(room, pieces);
    double most = room - tall;
    boolean single = CardColumns.fits(pieces, most);
    double first = single ? CardColumns.balanced(pieces, most) : most;
    List<List<CardPiece>> poured =
        single || most >= LEAST_COLUMN
            ? CardColumns.pour(pieces, List.of(first, first))
            : List.of(List.of(), List.of(), pieces);
    if (!single) {
      // What the columns leave over is the picture's.
      tall = Math.min(tall + most - CardColumns.tallest(poured), tallest());
    }
    List<Further> further = further(single ? List.of() : poured.get(2));
    return new Layout(this, head, across, cautions, framed, top, tall, poured, further);
  }

  private CardText text(double wide) {
    return new CardText(file.fonts(), wide, size);
  }

  private void write(Layout layout) {
    double top = layout.top();
    double tall = layout.tall();
    double columnTop = top - tall - 3 - CardColumns.height(layout.across());
    try (Canvas canvas = new Canvas(file, width, height, 1, 1)) {
      draw(canvas, layout.head(), MARGIN, height - MARGIN);
      picture(canvas, plot, new Bounds(MARGIN, top - tall, width - MARGIN, top));
      draw(canvas, layout.across(), MARGIN, top - tall - 3);
      columns(canvas, layout.first(), columnTop);
      if (!layout.cautions().isEmpty()) {
        frame(canvas, layout.cautions(), layout.framed() - 3);
      }
      pageNumber(canvas, 1, layout.pages());
    }
    writeFurther(layout.further(), layout.pages());
  }

  private List<CardPiece> head() {
    List<CardPiece> head = new ArrayList<>();
    double wide = width - 2 * MARGIN;
    for (String line :
        new TextFlow(file.fonts(), Typeface.SEMIBOLD, TITLE).lines(card.title(), wide)) {
      head.add(CardPiece.line(TITLE * 1.2, 0, line, Typeface.SEMIBOLD, TITLE));
    }
    head.addAll(text(wide).paragraph(card.subtitle(), size.heading()));
    return head;
  }

  private List<CardPiece> across() {
    CardText text = text(width - 2 * MARGIN);
    return card.across().map(text::section).orElse(List.of());
  }

  private List<CardPiece> cautions() {
    List<CardPiece> pieces = new ArrayList<>();
    if (card.cautions().isEmpty()) {
      return pieces;
    }
    CardText text = text(width - 2 * MARGIN - 2 * PAD);
    pieces.addAll(text.section(Card.Section.of("Take care", card.cautions())));
    while (pieces.get(pieces.size() - 1).isGap()) {
      pieces.remove(pieces.size() - 1);
    }
    return pieces;
  }

  /** mm of a picture as tall as it likes to be. */
  private double tallest() {
    return Math.min(natural(plot), TALLEST_PICTURE);
  }

  private double natural(Plot plot) {
    double scale = (width - 2 * MARGIN) / plot.content().width();
    return Math.min(LARGEST_SCALE, scale) * plot.content().height();
  }

  /**
   * As tall as the picture likes, less where that lets the words stay on the first page, or at
   * least fewer of them go on to another.
   */
  private double pictureHeight(double room, List<CardPiece> pieces) {
    double legible =
        LEAST_LETTERING
            / (Drawing.TEXT_HEIGHT * card.picture().enlargement())
            * plot.content().height();
    double least = Math.min(tallest(), Math.max(legible, LEAST_PICTURE));
    for (double tall = tallest(); tall > least; tall -= 5) {
      if (CardColumns.fits(pieces, room - tall)) {
        return tall;
      }
    }
    if (CardColumns.fits(pieces, room - least)) {
      return least;
    }
    double worthy = Math.max(least, Math.min(tallest(), room - WORTHY_COLUMN));
    // Where no words fit under it all the same, the picture takes what there is.
    return room - worthy >= LEAST_COLUMN ? worthy : Math.min(tallest(), room);
  }

  private static void picture(Canvas canvas, Plot plot, Bounds box) {
    Bounds content = plot.content();
    double scale =
        Math.min(
            LARGEST_SCALE,
            Math.min(box.width() / content.width(), box.height() / content.height()));
    Point shift = box.center().minus(content.center().times(scale));
    Similarity toPage =
        Similarity.scaling(scale).then(Similarity.translation(shift.x(), shift.y()));
    new PlotPainter(canvas, toPage, box.grown(2)).draw(plot);
  }

  private void columns(Canvas canvas, List<List<CardPiece>> poured, double top) {
    draw(canvas, poured.get(0), MARGIN, top);
    draw(canvas, poured.get(1), MARGIN + column + GUTTER, top);
  }

  private static void draw(Canvas canvas, List<CardPiece> pieces, double x, double top) {
    double y = top;
    for (CardPiece piece : pieces) {
      piece.draw(canvas, new Point(x, y));
      y -= piece.height();
    }
  }

  private void frame(Canvas canvas, List<CardPiece> cautions, double tall) {
    Bounds box = new Bounds(MARGIN, MARGIN, width - MARGIN, MARGIN + tall);
    canvas.pen(BLACK, 0.5);
    canvas.box(box);
    canvas.stroke();
    draw(canvas, cautions, MARGIN + PAD, box.maxY() - PAD);
  }

  private List<Further> further(List<CardPiece> rest) {
    List<Further> pages = new ArrayList<>();
    Deque<Other> pictures = new ArrayDeque<>(otherPictures());
    List<CardPiece> left = rest;
    while (!pictures.isEmpty() || left.stream().anyMatch(piece -> !piece.isGap())) {
      double top = height - MARGIN;
      List<Other> placed = new ArrayList<>();
      while (!pictures.isEmpty() && (placed.isEmpty() || top - pictures.peek().whole() >= MARGIN)) {
        Other next = pictures.remove();
        placed.add(new Other(next.heading(), next.plot(), top, next.tall()));
        top -= next.whole();
      }
      double most = top - MARGIN;
      List<List<CardPiece>> poured = List.of(List.of(), List.of(), left);
      if (most >= LEAST_COLUMN) {
        double tall = CardColumns.fits(left, most) ? CardColumns.balanced(left, most) : most;
        poured = CardColumns.pour(left, List.of(tall, tall));
      }
      pages.add(new Further(placed, top, poured));
      left = poured.get(2);
    }
    return pages;
  }

  private List<Other> otherPictures() {
    List<Other> pictures = new ArrayList<>();
    for (int i = 0; i < others.size(); i++) {
      double tall = Math.min(natural(others.get(i)), TALLEST_OTHER);
      CardText text = text(width - 2 * MARGIN);
      List<CardPiece> heading = new ArrayList<>(text.heading(card.others().get(i).heading()));
      heading.add(CardPiece.gap(2));
      pictures.add(new Other(heading, others.get(i), 0, tall));
    }
    return pictures;
  }

  private void writeFurther(List<Further> pages, int count) {
    for (int i = 0; i < pages.size(); i++) {
      Further page = pages.get(i);
      try (Canvas canvas = new Canvas(file, width, height, 1, 1)) {
        for (Other other : page.pictures()) {
          draw(canvas, other.heading(), MARGIN, other.top());
          double top = other.top() - CardColumns.height(other.heading());
          picture(
              canvas, other.plot(), new Bounds(MARGIN, top - other.tall(), width - MARGIN, top));
        }
        columns(canvas, page.columns(), page.top());
        pageNumber(canvas, i + 2, count);
      }
    }
  }

  private void pageNumber(Canvas canvas, int page, int pages) {
    if (pages > 1) {
      canvas.brush(BLACK);
      String words = card.title() + ", page " + page + " of " + pages;
      double wide = file.fonts().width(Typeface.REGULAR, size.body(), words);
      double squeeze = Math.min(1, (width - 2 * MARGIN) / wide);
      Point at = new Point(width - MARGIN, MARGIN - 6);
      canvas.text(Typeface.REGULAR, size.body(), at, 0, 1, squeeze, words);
    }
  }
}
