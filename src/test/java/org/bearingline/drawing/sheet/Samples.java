package org.bearingline.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/** Points along the lines of a drawing: a way to look at it that knows nothing of cells. */
final class Samples {

  private Samples() {}

  static List<Point> of(Drawing drawing, Similarity placement, double apart) {
    List<Point> points = new ArrayList<>();
    for (Primitive line : DrawnLines.of(drawing)) {
      int n = Math.max(1, (int) Math.ceil(line.length() / apart));
      for (int i = 0; i <= n; i++) {
        points.add(placement.apply(line.pointAt((double) i / n)));
      }
    }
    return points;
  }
}
