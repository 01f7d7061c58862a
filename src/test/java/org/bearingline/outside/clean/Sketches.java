package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.construct.Continuation;
import org.bearingline.outline.construct.Side;
import org.bearingline.outline.fit.CubicBezier;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/** Drawings for the tests. */
final class Sketches {

  private Sketches() {}

  static Sketch closed(List<StrokePiece> pieces) {
    return of(
        OptionalDouble.empty(),
        new Figure(List.of(new Stroke(pieces, true)), FillRule.NON_ZERO, "path"));
  }

  static Sketch of(OptionalDouble noise, Figure... figures) {
    return new Sketch("drawing.svg", List.of(figures), true, noise, List.of());
  }

  static Sketch of(Figure... figures) {
    return of(OptionalDouble.empty(), figures);
  }

  static Sketch polygon(List<Point> corners) {
    return closed(List.of(new StrokePiece.Chords(corners)));
  }

  static Figure loose(String source, Primitive... pieces) {
    List<Stroke> strokes = new ArrayList<>();
    for (Primitive piece : pieces) {
      strokes.add(new Stroke(List.of(new StrokePiece.Plain(piece)), false));
    }
    return new Figure(strokes, FillRule.EVEN_ODD, source);
  }

  static Figure loops(String source, FillRule rule, Loop... loops) {
    return new Figure(
        Arrays.stream(loops).map(loop -> new Stroke(plain(loop), true)).toList(), rule, source);
  }

  static List<StrokePiece> plain(Loop loop) {
    return loop.primitives().stream().map(p -> (StrokePiece) new StrokePiece.Plain(p)).toList();
  }

  static StrokePiece bezier(double... v) {
    return new StrokePiece.Free(curve(v));
  }

  static Curve curve(double... v) {
    return new CubicBezier(
        new Point(v[0], v[1]), new Point(v[2], v[3]), new Point(v[4], v[5]), new Point(v[6], v[7]));
  }

  static Line line(double... v) {
    return new Line(new Point(v[0], v[1]), new Point(v[2], v[3]));
  }

  static List<Point> circle(Point center, double radius, int chords) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < chords; i++) {
      corners.add(center.plus(Point.polar(radius, 7 + 360.0 * i / chords)));
    }
    return corners;
  }

  /** A rail 600 × 60 mm with one lift of 12 mm, radii 20 and 30, and corners of radius 8. */
  static Loop rail() {
    Line lower = line(8, 0, 592, 0);
    Arc first = Continuation.arc(lower, 8, Side.LEFT, 90);
    Line end = Continuation.line(first, 52);
    Line upper = line(600, 60, 520, 60);
    double turn = Math.toDegrees(Math.acos(1 - 12.0 / 50));
    Arc down = Continuation.arc(upper, 20, Side.LEFT, turn);
    Arc level = Continuation.arc(down, 30, Side.RIGHT, turn);
    Point last = new Point(0, level.end().y());
    Line left = new Line(last, new Point(0, 8));
    return new Loop(
        List.of(
            lower,
            first,
            end,
            upper,
            down,
            level,
            new Line(level.end(), last),
            left,
            Continuation.arc(left, 8, Side.LEFT, 90)));
  }

  /** Corners of chords that leave the loop by {@code rise} mm. */
  static List<Point> chopped(Loop loop, double rise) {
    List<Point> corners = new ArrayList<>();
    for (Primitive piece : loop.primitives()) {
      int n = 1;
      if (piece instanceof Arc arc) {
        double step = 2 * Math.acos(1 - rise / arc.radius());
        n = Math.max(2, (int) Math.ceil(Math.toRadians(Math.abs(arc.sweep())) / step));
      }
      for (int i = 0; i < n; i++) {
        corners.add(piece.pointAt((double) i / n));
      }
    }
    return corners;
  }

  /** About {@code count} points along the loop, each off by up to {@code noise} mm. */
  static List<Point> traced(Loop loop, int count, double noise, long seed) {
    Random random = new Random(seed);
    List<Point> points = new ArrayList<>();
    double length = Path.of(loop).length();
    for (Primitive piece : loop.primitives()) {
      int n = Math.max(1, (int) Math.round(count * piece.length() / length));
      for (int i = 0; i < n; i++) {
        Point off = Point.polar(noise * Math.sqrt(random.nextDouble()), 360 * random.nextDouble());
        points.add(piece.pointAt((double) i / n).plus(off));
      }
    }
    return points;
  }

  static Sketch noisy(List<Point> points, double noise) {
    return of(
        OptionalDouble.of(noise),
        new Figure(
            List.of(new Stroke(List.of(new StrokePiece.Chords(points)), true)),
            FillRule.NON_ZERO,
            "trace"));
  }
}
