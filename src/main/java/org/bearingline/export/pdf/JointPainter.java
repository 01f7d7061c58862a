package org.bearingline.export.pdf;

import java.util.List;
import org.bearingline.drawing.sheet.Joint;
import org.bearingline.drawing.sheet.Sheet;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.Ink;
import org.bearingline.export.LineStyle;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/**
 * The edges of a page that are joined to others: a grey flap where the next page is laid on, a cut
 * line where this page is trimmed, and half of each joining mark.
 */
final class JointPainter {

  private static final Ink SHADE = new Ink(0xe9, 0xe9, 0xe9);
  private static final Ink GREY = new Ink(0x55, 0x55, 0x55);
  private static final double THIN = 0.15;

  /** Half the mark's length along the edge, and its reach to either side, mm. */
  private static final double HALF = 4;

  private static final double REACH = 5;
  private static final double SIZE = 2.6;

  private final Canvas canvas;
  private final SheetPlan plan;
  private final Sheet sheet;

  JointPainter(Canvas canvas, SheetPlan plan, Sheet sheet) {
    this.canvas = canvas;
    this.plan = plan;
    this.sheet = sheet;
  }

  /** The flaps, to be drawn under everything. */
  void flaps() {
    Bounds cell = plan.frame().cell();
    double overlap = plan.choice().overlap();
    canvas.brush(SHADE);
    sheet
        .right()
        .ifPresent(
            name ->
                shade(new Bounds(cell.maxX() - overlap, cell.minY(), cell.maxX(), cell.maxY())));
    sheet
        .above()
        .ifPresent(
            name ->
                shade(new Bounds(cell.minX(), cell.maxY() - overlap, cell.maxX(), cell.maxY())));
  }

  private void shade(Bounds box) {
    canvas.box(box);
    canvas.fill();
  }

  /** Cut lines, half marks and the neighbours' names. */
  void marks() {
    for (Joint joint : plan.joints()) {
      if (joint.over().equals(sheet.name())) {
        cutLine(joint);
        joint.marks().forEach(mark -> mark(joint, mark, true));
      } else if (joint.under().equals(sheet.name())) {
        joint.marks().forEach(mark -> mark(joint, mark, false));
      }
    }
  }

  private void cutLine(Joint joint) {
    Bounds cell = plan.frame().cell();
    canvas.pen(new LineStyle(GREY, THIN, List.of(0.8, 0.8)), 0);
    Point low = new Point(cell.minX(), cell.minY());
    canvas.rule(
        low,
        joint.upright()
            ? new Point(cell.minX(), cell.maxY())
            : new Point(cell.maxX(), cell.minY()));
  }

  private void mark(Joint joint, Joint.Mark mark, boolean over) {
    Point middle = plan.frame().onPage(sheet, joint.point(mark));
    Point along = joint.upright() ? new Point(0, 1) : new Point(1, 0);
    // The page on top keeps what lies right of, or above, the edge; the one beneath the rest.
    Point kept = joint.upright() ? new Point(1, 0) : new Point(0, 1);
    Point tip = middle.plus(kept.times(over ? REACH : -REACH));
    canvas.pen(GREY, THIN);
    canvas.brush(GREY);
    Point high = middle.plus(along.times(HALF));
    Point low = middle.minus(along.times(HALF));
    canvas.polygon(false, high, tip, low);
    canvas.stroke();
    canvas.rule(middle, tip);
    double turn = joint.upright() ? 90 : 0;
    double aside = over ? -1.8 : mark.depth();
    Point place = middle.plus(kept.times(aside));
    String words = over ? "cut here, lay on " + joint.under() : joint.over();
    canvas.centred(Typeface.SEMIBOLD, SIZE, place, turn, 0.5, words);
  }
}
