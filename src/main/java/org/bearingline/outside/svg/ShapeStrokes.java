package org.bearingline.outside.svg;

import static org.bearingline.outside.svg.SvgLength.Of.BOTH;
import static org.bearingline.outside.svg.SvgLength.Of.HEIGHT;
import static org.bearingline.outside.svg.SvgLength.Of.WIDTH;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.batik.parser.DefaultPointsHandler;
import org.apache.batik.parser.PointsParser;
import org.bearingline.outline.Point;
import org.bearingline.outside.Affine;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePen;

/** Draws the basic shapes of SVG (SVG 1.1, chapters 8 and 9). */
final class ShapeStrokes {

  /** The elements that draw lines. */
  static final Set<String> SHAPES =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");

  private final SvgElement element;
  private final Viewport viewport;
  private final StrokePen pen;

  private ShapeStrokes(SvgElement element, Viewport viewport, StrokePen pen) {
    this.element = element;
    this.viewport = viewport;
    this.pen = pen;
  }

  /**
   * The strokes of one shape; none where it has no size.
   *
   * @param map from the shape's coordinates to the sketch's
   * @param isOnlyFilled whether nothing of it shows but its inside, which ends in a straight line
   *     where the shape is open
   */
  static List<Stroke> of(
      SvgElement element,
      Viewport viewport,
      Affine map,
      boolean isOnlyFilled,
      DrawingLimits limits) {
    StrokePen pen = new StrokePen(map, limits, element.place(), isOnlyFilled);
    new ShapeStrokes(element, viewport, pen).draw();
    return pen.strokes();
  }

  private void draw() {
    switch (element.name()) {
      case "path" -> PathStrokes.draw(element, pen);
      case "rect" -> rectangle();
      case "circle" -> {
        double r = notBelow0("r", BOTH);
        ellipse(r, r);
      }
      case "ellipse" -> ellipse();
      case "line" -> {
        pen.moveTo(new Point(length("x1", WIDTH), length("y1", HEIGHT)));
        pen.lineTo(new Point(length("x2", WIDTH), length("y2", HEIGHT)));
      }
      case "polyline" -> points();
      case "polygon" -> {
        points();
        pen.close();
      }
      default -> throw new IllegalArgumentException(element.name() + " is no shape");
    }
  }

  private double length(String attribute, SvgLength.Of of) {
    return DrawingLimits.near(SvgLength.readOr0(element, attribute, of, viewport), element.place());
  }

  private double notBelow0(String attribute, SvgLength.Of of) {
    double value = length(attribute, of);
    if (value < 0) {
      throw element.problem(attribute + " of this " + element.name() + " is less than 0");
    }
    return value;
  }

  /** A half axis that is not given is as long as the other. */
  private Optional<Double> radius(String attribute, SvgLength.Of of) {
    return element.attribute(attribute).filter(said -> !said.equals("auto")).isEmpty()
        ? Optional.empty()
        : Optional.of(notBelow0(attribute, of));
  }

  private void rectangle() {
    double x = length("x", WIDTH);
    double y = length("y", HEIGHT);
    double width = notBelow0("width", WIDTH);
    double height = notBelow0("height", HEIGHT);
    if (width == 0 || height == 0) {
      return;
    }
    Optional<Double> givenX = radius("rx", WIDTH);
    Optional<Double> givenY = radius("ry", HEIGHT);
    double rx = Math.min(givenX.or(() -> givenY).orElse(0.0), width / 2);
    double ry = Math.min(givenY.or(() -> givenX).orElse(0.0), height / 2);
    boolean isRounded = rx > 0 && ry > 0;
    double a = isRounded ? rx : 0;
    double b = isRounded ? ry : 0;
    pen.moveTo(new Point(x + a, y));
    corner(x + width - a, y, x + width - a, y + b, -90, x + width, y + b, a, b);
    corner(
        x + width,
        y + height - b,
        x + width - a,
        y + height - b,
        0,
        x + width - a,
        y + height,
        a,
        b);
    corner(x + a, y + height, x + a, y + height - b, 90, x, y + height - b, a, b);
    corner(x, y + b, x + a, y + b, 180, x + a, y, a, b);
    pen.close();
  }

  /** A side, and the quarter of an ellipse after it. */
  private void corner(
      double sideX,
      double sideY,
      double centerX,
      double centerY,
      double from,
      double endX,
      double endY,
      double a,
      double b) {
    Point side = new Point(sideX, sideY);
    if (!side.equals(pen.at())) {
      pen.lineTo(side);
    }
    if (a > 0) {
      pen.ellipseTo(
          new Point(centerX, centerY),
          new Point(a, 0),
          new Point(0, b),
          from,
          90,
          new Point(endX, endY));
    }
  }

  private void ellipse() {
    Optional<Double> rx = radius("rx", WIDTH);
    Optional<Double> ry = radius("ry", HEIGHT);
    ellipse(rx.or(() -> ry).orElse(0.0), ry.or(() -> rx).orElse(0.0));
  }

  private void ellipse(double rx, double ry) {
    if (rx == 0 || ry == 0) {
      return;
    }
    Point center = new Point(length("cx", WIDTH), length("cy", HEIGHT));
    Point start = new Point(center.x() + rx, center.y());
    pen.moveTo(start);
    pen.ellipseTo(center, new Point(rx, 0), new Point(0, ry), 0, 360, start);
    pen.close();
  }

  private void points() {
    String text = element.attribute("points").orElse("");
    if (text.isEmpty()) {
      return;
    }
    PointsParser parser = new PointsParser();
    parser.setPointsHandler(
        new DefaultPointsHandler() {
          private boolean isFirst = true;

          @Override
          public void point(float x, float y) {
            Point p =
                new Point(
                    DrawingLimits.near(x, element.place()), DrawingLimits.near(y, element.place()));
            if (isFirst) {
              pen.moveTo(p);
              isFirst = false;
            } else {
              pen.lineTo(p);
            }
          }
        });
    Parsing.run(parser, element, "points", text);
  }
}
