package org.bearingline.outside.svg;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/**
 * The white page that many programs lay under a drawing, which would else be the part's edge. White
 * on a white page is no part: nobody would see what is drawn.
 */
final class PageBackground {

  /** Share of a page by which its background may be smaller: its numbers are rounded. */
  private static final double SLACK = 1e-3;

  private PageBackground() {}

  /**
   * Whether a shape is one.
   *
   * @param page what the drawing's frame shows, in the sketch's coordinates; empty where it has
   *     none
   * @param style of the shape
   */
  static boolean isOne(
      SvgElement element, Style style, List<Stroke> strokes, Optional<Bounds> page) {
    if (page.isEmpty() || !element.isA("rect") || !style.isWhite() || style.isStroked()) {
      return false;
    }
    // Four straight sides are one run of chords; a round corner would part them.
    List<StrokePiece> sides = strokes.get(0).pieces();
    if (sides.size() != 1 || !(sides.get(0) instanceof StrokePiece.Chords chords)) {
      return false;
    }
    Bounds box = Bounds.of(chords.points().get(0));
    for (Point p : chords.points()) {
      box = box.union(Bounds.of(p));
    }
    Bounds all = box.grown(SLACK * Math.max(page.get().width(), page.get().height()));
    return all.union(page.get()).equals(all);
  }
}
