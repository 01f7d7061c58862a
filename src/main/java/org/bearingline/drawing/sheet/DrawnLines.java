package org.bearingline.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * The lines of a drawing that pages must show: strokes, edges of filled areas, drill circles with
 * their crosses, arrows. Words and dimensions are shown where there is room for them.
 */
public final class DrawnLines {

  private DrawnLines() {}

  /** All lines of the drawing, in drawing order. */
  public static List<Primitive> of(Drawing drawing) {
    return drawing.layers().stream().flatMap(DrawnLines::of).toList();
  }

  /** The lines of one layer. */
  public static Stream<Primitive> of(Layer layer) {
    return layer.items().stream().flatMap(item -> of(item).stream());
  }

  /** Whether a layer has a line to see, so that a legend must tell of it. */
  public static boolean holdsLines(Layer layer) {
    return of(layer).findAny().isPresent();
  }

  private static List<Primitive> of(Item item) {
    if (item instanceof Item.Stroke stroke) {
      return stroke.path().primitives();
    }
    if (item instanceof Item.Arrow arrow) {
      return arrow.path().primitives();
    }
    if (item instanceof Item.Fill fill) {
      return fill.outline().loops().stream().flatMap(loop -> loop.primitives().stream()).toList();
    }
    if (item instanceof Item.Drill drill) {
      return of(drill);
    }
    return List.of();
  }

  /** The circle of a hole and the cross at its centre, whose arms reach a little past the edge. */
  public static List<Primitive> of(Item.Drill drill) {
    double arm = drill.diameter() / 2 + Math.max(1.5, drill.diameter() / 8);
    Point at = drill.at();
    List<Primitive> lines = new ArrayList<>();
    lines.add(Arc.circle(at, drill.diameter() / 2));
    lines.add(new Line(at.plus(new Point(-arm, 0)), at.plus(new Point(arm, 0))));
    lines.add(new Line(at.plus(new Point(0, -arm)), at.plus(new Point(0, arm))));
    return lines;
  }
}
