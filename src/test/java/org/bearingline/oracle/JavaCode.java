package org.bearingline.oracle;

import java.util.stream.Collectors;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;

/** Prints a region as the Java code that makes it again to the last bit. */
final class JavaCode {

  private JavaCode() {}

  static String of(Region region) {
    return region.pieces().stream()
        .map(JavaCode::outline)
        .collect(Collectors.joining(",\n", "Region.of(\n", ")"));
  }

  private static String outline(Outline outline) {
    return outline.loops().stream()
        .map(JavaCode::loop)
        .collect(Collectors.joining(",\n", "  Outline.of(\n", ")"));
  }

  private static String loop(Loop loop) {
    return loop.primitives().stream()
        .map(
            p ->
                p.match(
                    line -> "new Line(" + point(line.start()) + ", " + point(line.end()) + ")",
                    JavaCode::arc))
        .collect(Collectors.joining(",\n      ", "    Loop.of(\n      ", ")"));
  }

  private static String arc(Arc arc) {
    return "new Arc("
        + point(arc.center())
        + ", "
        + arc.radius()
        + ", "
        + point(arc.start())
        + ", "
        + point(arc.end())
        + ", "
        + arc.sweep()
        + ")";
  }

  private static String point(Point p) {
    return "new Point(" + p.x() + ", " + p.y() + ")";
  }
}
