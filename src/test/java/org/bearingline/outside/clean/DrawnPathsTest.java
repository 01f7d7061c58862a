package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.junit.jupiter.api.Test;

class DrawnPathsTest {

  private static StrokePiece line(double x0, double y0, double x1, double y1) {
    return new StrokePiece.Plain(new Line(new Point(x0, y0), new Point(x1, y1)));
  }

  /** Ends that miss each other by rounding part a stroke; it still closes on its own start. */
  @Test
  void aSquareIsAsLongAsItsSides() {
    Stroke open =
        new Stroke(
            List.of(line(0, 0, 100, 0), line(100, 0, 100, 100), line(100 - 1e-9, 100, 0, 100)),
            true);
    Sketch sketch =
        new Sketch(
            "square.svg",
            List.of(new Figure(List.of(open), FillRule.NON_ZERO, "path, line 1")),
            true,
            OptionalDouble.empty(),
            List.of());
    assertEquals(400, DrawnPaths.of(sketch).stream().mapToDouble(Path::length).sum(), 1e-6);
  }
}
