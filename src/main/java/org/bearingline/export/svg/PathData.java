package org.bearingline.export.svg;

import java.util.function.DoubleFunction;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Path data in the page's coordinates: origin at the top left corner of the page, y down. Arcs stay
 * arcs.
 */
final class PathData {

  /**
   * A longer arc is written as two halves. SVG gives an arc by its ends and radius alone; near half
   * a turn the centre found from these moves by √(2 r δ) for a rounding δ of the ends, and a full
   * turn cannot be said at all.
   */
  private static final double LONGEST_SWEEP = 150;

  private final Bounds page;
  private final DoubleFunction<String> numbers;
  private final StringBuilder data = new StringBuilder();

  PathData(Bounds page) {
    this(page, SvgNumbers::fine);
  }

  PathData(Bounds page, DoubleFunction<String> numbers) {
    this.page = page;
    this.numbers = numbers;
  }

  double x(double x) {
    return x - page.minX();
  }

  double y(double y) {
    return page.maxY() - y;
  }

  PathData add(Path path) {
    moveTo(path.start());
    int n = path.primitives().size();
    for (int i = 0; i < n; i++) {
      Primitive piece = path.primitives().get(i);
      // The closing line of a closed path is the Z.
      if (!(i == n - 1 && n > 1 && path.isClosed() && piece instanceof Line)) {
        add(piece);
      }
    }
    if (path.isClosed()) {
      data.append('Z');
    }
    return this;
  }

  PathData triangle(Point a, Point b, Point c) {
    moveTo(a);
    lineTo(b);
    lineTo(c);
    data.append('Z');
    return this;
  }

  private void add(Primitive piece) {
    if (piece instanceof Arc arc) {
      arcTo(arc);
    } else {
      lineTo(piece.end());
    }
  }

  private void moveTo(Point p) {
    data.append('M');
    point(p);
  }

  private void lineTo(Point p) {
    data.append('L');
    point(p);
  }

  private void arcTo(Arc arc) {
    if (Math.abs(arc.sweep()) > LONGEST_SWEEP) {
      arcTo(arc.part(0, 0.5));
      arcTo(arc.part(0.5, 1));
      return;
    }
    String radius = numbers.apply(arc.radius());
    data.append('A').append(radius).append(' ').append(radius);
    // A counter-clockwise arc of the drawing has SVG's sweep flag 0, because y is turned over.
    data.append(" 0 0 ").append(arc.isCounterClockwise() ? '0' : '1').append(' ');
    point(arc.end());
  }

  private void point(Point p) {
    data.append(numbers.apply(x(p.x()))).append(' ').append(numbers.apply(y(p.y())));
  }

  @Override
  public String toString() {
    return data.toString();
  }
}
