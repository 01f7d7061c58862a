package org.bearingline.export.pdf;

import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.DrawnLines;
import org.bearingline.drawing.sheet.Sheet;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.Ink;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/** A small picture of all pages with the drawing over them; this page is filled. */
final class PageMap {

  private static final Ink FRAME = new Ink(0x77, 0x77, 0x77);
  private static final Ink HERE = new Ink(0xc4, 0xd3, 0xe6);
  private static final Ink LINES = new Ink(0x99, 0x99, 0x99);
  private static final Ink NAMES = new Ink(0, 0, 0);

  private final SheetPlan plan;
  private final Bounds box;
  private final List<Primitive> lines;
  private final Similarity toPage;

  PageMap(SheetPlan plan, Drawing drawing) {
    this.plan = plan;
    this.box = plan.frame().map().grown(-0.5);
    Bounds all = plan.sheets().stream().map(this::tile).reduce(Bounds::union).orElseThrow();
    double scale = Math.min(box.width() / all.width(), box.height() / all.height());
    Similarity small = plan.placement().then(Similarity.scaling(scale));
    Similarity shift =
        Similarity.translation(box.minX() - scale * all.minX(), box.maxY() - scale * all.maxY());
    this.toPage = Similarity.scaling(scale).then(shift);
    this.lines =
        DrawnLines.of(drawing).stream().map(p -> p.transformed(small.then(shift))).toList();
  }

  /** What a page adds to the whole: its cell with half of each overlap taken off. */
  private Bounds tile(Sheet sheet) {
    double half = plan.choice().overlap() / 2;
    Bounds cell = sheet.cell();
    return new Bounds(
        cell.minX() + (sheet.left().isPresent() ? half : 0),
        cell.minY() + (sheet.below().isPresent() ? half : 0),
        cell.maxX() - (sheet.right().isPresent() ? half : 0),
        cell.maxY() - (sheet.above().isPresent() ? half : 0));
  }

  void draw(Canvas canvas, Sheet here) {
    canvas.brush(HERE);
    canvas.box(placed(here));
    canvas.fill();
    canvas.pen(FRAME, 0.15);
    for (Sheet sheet : plan.sheets()) {
      canvas.box(placed(sheet));
    }
    canvas.stroke();
    canvas.pen(LINES, 0.1);
    for (Primitive line : lines) {
      canvas.chain(List.of(line), false);
    }
    canvas.stroke();
    canvas.brush(NAMES);
    for (Sheet sheet : plan.sheets()) {
      name(canvas, sheet);
    }
  }

  private void name(Canvas canvas, Sheet sheet) {
    Bounds tile = placed(sheet);
    double size = Math.min(2.8, tile.height() * 0.6);
    double width = canvas.fonts().width(Typeface.REGULAR, size, sheet.name());
    if (plan.sheets().size() > 1 && size >= 1.8 && width < tile.width() - 0.6) {
      Point corner = new Point(tile.minX() + 0.4, tile.maxY() - size * 0.85);
      canvas.text(Typeface.REGULAR, size, corner, sheet.name());
    }
  }

  private Bounds placed(Sheet sheet) {
    Bounds tile = tile(sheet);
    return Bounds.of(
        toPage.apply(new Point(tile.minX(), tile.minY())),
        toPage.apply(new Point(tile.maxX(), tile.maxY())));
  }
}
