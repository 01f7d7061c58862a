package org.bearingline.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.export.LineStyle;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Primitive;

/**
 * Draws lines so that a page holds only what can be seen on it, and the dashes of a line that goes
 * on over several pages meet.
 */
final class Strokes {

  /** Room for the width of a line, mm. */
  private static final double EDGE = 1;

  private Strokes() {}

  /** Draws a chain, given in page coordinates, as far as it may touch {@code window}. */
  static void draw(Canvas canvas, List<Primitive> chain, LineStyle style, Bounds window) {
    Bounds near = window.grown(EDGE);
    List<Primitive> seen = new ArrayList<>();
    double length = 0;
    double begun = 0;
    for (Primitive primitive : chain) {
      if (near.intersects(primitive.bounds())) {
        if (seen.isEmpty()) {
          begun = length;
        }
        seen.add(primitive);
      } else {
        flush(canvas, seen, style, begun, false);
      }
      length += primitive.length();
    }
    boolean whole = seen.size() == chain.size();
    boolean closed = chain.get(0).start().equals(chain.get(chain.size() - 1).end());
    flush(canvas, seen, style, begun, whole && closed);
  }

  private static void flush(
      Canvas canvas, List<Primitive> seen, LineStyle style, double begun, boolean closed) {
    if (seen.isEmpty()) {
      return;
    }
    double period = style.dashes().stream().mapToDouble(Double::doubleValue).sum();
    canvas.pen(style, period > 0 ? begun % period : 0);
    canvas.chain(seen, closed);
    canvas.stroke();
    seen.clear();
  }
}
