package org.bearingline.outside;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.CubicBezier;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outline.fit.EllipseArc;
import org.bearingline.outline.fit.QuadraticBezier;
import org.bearingline.problem.Place;

/**
 * Draws the strokes of one element: takes points in the element's own coordinates and keeps them in
 * those of the sketch. Straight pieces that follow each other are kept together; pieces without
 * length are dropped.
 */
public final class StrokePen {

  /**
   * A curve all of whose points lie within this distance, in units of the sketch, has no length.
   */
  private static final double NOTHING = 1e-7;

  private final Affine map;
  private final DrawingLimits limits;
  private final Place place;
  private final boolean closes;
  private final List<Stroke> strokes = new ArrayList<>();
  private List<StrokePiece> pieces = new ArrayList<>();
  private List<Point> straight = new ArrayList<>();
  private Point start = Point.ORIGIN;
  private Point at = Point.ORIGIN;

  /** The end of the last curve that came in the sketch's coordinates. */
  private Point reached = Point.ORIGIN;

  /**
   * @param map from the element's coordinates to those of the sketch
   * @param limits counts what is drawn
   * @param place of the element, for messages
   */
  public StrokePen(Affine map, DrawingLimits limits, Place place) {
    this(map, limits, place, false);
  }

  /**
   * The same.
   *
   * @param closes whether a stroke of two and more pieces that is left open goes straight back to
   *     its start
   */
  public StrokePen(Affine map, DrawingLimits limits, Place place, boolean closes) {
    this.map = map;
    this.limits = limits;
    this.place = place;
    this.closes = closes;
  }

  /** Where the pen is, in the element's coordinates. */
  public Point at() {
    return at;
  }

  /** Where the stroke began, in the element's coordinates. */
  public Point start() {
    return start;
  }

  /** Lifts the pen and begins a stroke at {@code p}. */
  public void moveTo(Point p) {
    leave();
    start = p;
    at = p;
  }

  public void lineTo(Point p) {
    if (straight.isEmpty()) {
      straight.add(mapped(at));
    }
    limits.addPoints(1, place);
    straight.add(mapped(p));
    at = p;
  }

  public void quadTo(Point control, Point p) {
    limits.addPoints(2, place);
    curve(new QuadraticBezier(mapped(at), mapped(control), mapped(p)), mapped(control), p);
  }

  public void cubicTo(Point first, Point second, Point p) {
    limits.addPoints(3, place);
    Point a = mapped(first);
    Point b = mapped(second);
    Point far = a.distanceTo(mapped(at)) > b.distanceTo(mapped(at)) ? a : b;
    curve(new CubicBezier(mapped(at), a, b, mapped(p)), far, p);
  }

  /** Lifts the pen and begins a stroke at a point of the sketch, for {@link #curveTo} alone. */
  public void beginAt(Point inSketch) {
    leave();
    reached = inSketch;
  }

  /** A curve in the sketch's coordinates that goes on where the last one ended. */
  public void curveTo(Curve curve) {
    limits.addPoints(4, place);
    if (curve.pointAt(0.5).distanceTo(reached) > NOTHING
        || curve.pointAt(1).distanceTo(reached) > NOTHING) {
      pieces.add(new StrokePiece.Free(curve));
    }
    reached = curve.pointAt(1);
  }

  private void curve(Curve curve, Point far, Point p) {
    Point from = mapped(at);
    if (far.distanceTo(from) > NOTHING || mapped(p).distanceTo(from) > NOTHING) {
      endStraight();
      pieces.add(new StrokePiece.Free(curve));
    }
    at = p;
  }

  /** An arc of an ellipse in the element's coordinates that ends at {@code p}. */
  public void ellipseTo(EllipseArc arc, Point p) {
    Point u = Point.polar(arc.semiAxis(), arc.rotation());
    Point v = Point.polar(arc.otherSemiAxis(), arc.rotation() + 90);
    ellipseTo(arc.center(), u, v, arc.from(), arc.sweep(), p);
  }

  /** The same by centre and conjugate half diameters, as {@link EllipsePiece#of} has them. */
  public void ellipseTo(Point center, Point u, Point v, double from, double sweep, Point p) {
    limits.addPoints(4, place);
    Point middle = mapped(center);
    Point reach = map.applyToVector(u);
    Point other = map.applyToVector(v);
    DrawingLimits.near(middle.norm() + reach.norm() + other.norm(), place);
    EllipsePiece.of(middle, reach, other, from, sweep)
        .ifPresentOrElse(
            piece -> {
              endStraight();
              pieces.add(piece);
              at = p;
            },
            () -> lineTo(p));
  }

  private void leave() {
    boolean isLine = straight.size() == 2 && pieces.isEmpty();
    if (closes && !isLine && !(straight.isEmpty() && pieces.isEmpty())) {
      close();
    } else {
      lift(false);
    }
  }

  /** Goes straight back to where the stroke began and ends it there. */
  public void close() {
    if (!at.equals(start)) {
      lineTo(start);
    }
    lift(true);
    at = start;
  }

  /** Every stroke drawn; ends the last one. */
  public List<Stroke> strokes() {
    leave();
    return List.copyOf(strokes);
  }

  /** Ends the stroke without going back; {@code isClosed} where it came back by itself. */
  public void lift(boolean isClosed) {
    endStraight();
    if (!pieces.isEmpty()) {
      strokes.add(new Stroke(pieces, isClosed));
      pieces = new ArrayList<>();
    }
  }

  private void endStraight() {
    if (straight.isEmpty()) {
      return;
    }
    Point first = straight.get(0);
    if (straight.stream().allMatch(first::equals)) {
      // A point, however often it was drawn.
      straight = new ArrayList<>();
      return;
    }
    if (straight.size() > 2) {
      pieces.add(new StrokePiece.Chords(straight));
    } else {
      pieces.add(new StrokePiece.Plain(new Line(first, straight.get(1))));
    }
    straight = new ArrayList<>();
  }

  private Point mapped(Point p) {
    double x = map.a() * p.x() + map.c() * p.y() + map.e();
    double y = map.b() * p.x() + map.d() * p.y() + map.f();
    return new Point(DrawingLimits.near(x, place), DrawingLimits.near(y, place));
  }
}
