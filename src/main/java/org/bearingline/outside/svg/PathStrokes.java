package org.bearingline.outside.svg;

import org.apache.batik.parser.PathHandler;
import org.apache.batik.parser.PathParser;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.EllipseArc;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.outside.StrokePen;

/**
 * Draws the data of a path. The parser tells each command with its numbers; the points they mean
 * are summed up here in double.
 */
final class PathStrokes implements PathHandler {

  private final SvgElement element;
  private final StrokePen pen;

  /** The control point that a smooth cubic command mirrors; the pen's place where there is none. */
  private Point lastCubic = Point.ORIGIN;

  /** The same for a smooth quadratic command. */
  private Point lastQuadratic = Point.ORIGIN;

  private boolean isClosed = true;

  private boolean hasBegun;

  private PathStrokes(SvgElement element, StrokePen pen) {
    this.element = element;
    this.pen = pen;
  }

  /** Draws the attribute {@code d}; a path without one shows nothing. */
  static void draw(SvgElement path, StrokePen pen) {
    String data = path.attribute("d").orElse("");
    if (!data.isEmpty() && !data.equals("none")) {
      PathParser parser = new PathParser();
      parser.setPathHandler(new PathStrokes(path, pen));
      Parsing.run(parser, path, "d", data);
    }
  }

  private Point absolute(float x, float y) {
    return new Point(
        DrawingLimits.near(x, element.place()), DrawingLimits.near(y, element.place()));
  }

  private Point relative(float x, float y) {
    return DrawingLimits.near(pen.at().plus(absolute(x, y)), element.place());
  }

  private void moveTo(Point p) {
    pen.moveTo(p);
    hasBegun = true;
    isClosed = false;
    rest();
  }

  private void lineTo(Point p) {
    begin();
    pen.lineTo(p);
    rest();
  }

  private void cubicTo(Point first, Point second, Point p) {
    begin();
    pen.cubicTo(first, second, p);
    rest();
    lastCubic = second;
  }

  private void quadTo(Point control, Point p) {
    begin();
    pen.quadTo(control, p);
    rest();
    lastQuadratic = control;
  }

  private void arcTo(float rx, float ry, float turn, boolean large, boolean sweep, Point p) {
    begin();
    double a = Math.abs(DrawingLimits.near(rx, element.place()));
    double b = Math.abs(DrawingLimits.near(ry, element.place()));
    DrawingLimits.near(turn, element.place());
    if (a == 0 || b == 0) {
      pen.lineTo(p);
    } else if (!p.equals(pen.at())) {
      pen.ellipseTo(EllipseArc.between(pen.at(), p, a, b, turn, large, sweep), p);
    }
    rest();
  }

  /** After a closed stroke, whatever follows begins where that one began. */
  private void begin() {
    if (!hasBegun) {
      throw element.problem("the path must begin with a move (M); correct or remove it");
    }
    if (isClosed) {
      pen.moveTo(pen.start());
      isClosed = false;
    }
  }

  private void rest() {
    lastCubic = pen.at();
    lastQuadratic = pen.at();
  }

  private Point mirrored(Point control) {
    return pen.at().times(2).minus(control);
  }

  @Override
  public void startPath() {
    // Nothing to prepare.
  }

  @Override
  public void endPath() {
    // The caller takes the strokes.
  }

  @Override
  public void closePath() {
    pen.close();
    isClosed = true;
    rest();
  }

  @Override
  public void movetoRel(float x, float y) {
    moveTo(relative(x, y));
  }

  @Override
  public void movetoAbs(float x, float y) {
    moveTo(absolute(x, y));
  }

  @Override
  public void linetoRel(float x, float y) {
    lineTo(relative(x, y));
  }

  @Override
  public void linetoAbs(float x, float y) {
    lineTo(absolute(x, y));
  }

  @Override
  public void linetoHorizontalRel(float x) {
    lineTo(relative(x, 0));
  }

  @Override
  public void linetoHorizontalAbs(float x) {
    lineTo(new Point(absolute(x, 0).x(), pen.at().y()));
  }

  @Override
  public void linetoVerticalRel(float y) {
    lineTo(relative(0, y));
  }

  @Override
  public void linetoVerticalAbs(float y) {
    lineTo(new Point(pen.at().x(), absolute(0, y).y()));
  }

  @Override
  public void curvetoCubicRel(float x1, float y1, float x2, float y2, float x, float y) {
    cubicTo(relative(x1, y1), relative(x2, y2), relative(x, y));
  }

  @Override
  public void curvetoCubicAbs(float x1, float y1, float x2, float y2, float x, float y) {
    cubicTo(absolute(x1, y1), absolute(x2, y2), absolute(x, y));
  }

  @Override
  public void curvetoCubicSmoothRel(float x2, float y2, float x, float y) {
    cubicTo(mirrored(lastCubic), relative(x2, y2), relative(x, y));
  }

  @Override
  public void curvetoCubicSmoothAbs(float x2, float y2, float x, float y) {
    cubicTo(mirrored(lastCubic), absolute(x2, y2), absolute(x, y));
  }

  @Override
  public void curvetoQuadraticRel(float x1, float y1, float x, float y) {
    quadTo(relative(x1, y1), relative(x, y));
  }

  @Override
  public void curvetoQuadraticAbs(float x1, float y1, float x, float y) {
    quadTo(absolute(x1, y1), absolute(x, y));
  }

  @Override
  public void curvetoQuadraticSmoothRel(float x, float y) {
    quadTo(mirrored(lastQuadratic), relative(x, y));
  }

  @Override
  public void curvetoQuadraticSmoothAbs(float x, float y) {
    quadTo(mirrored(lastQuadratic), absolute(x, y));
  }

  @Override
  public void arcRel(
      float rx, float ry, float turn, boolean large, boolean sweep, float x, float y) {
    arcTo(rx, ry, turn, large, sweep, relative(x, y));
  }

  @Override
  public void arcAbs(
      float rx, float ry, float turn, boolean large, boolean sweep, float x, float y) {
    arcTo(rx, ry, turn, large, sweep, absolute(x, y));
  }
}
