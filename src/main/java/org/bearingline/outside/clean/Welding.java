package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.CubicBezier;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outline.fit.CurveOnCurve;
import org.bearingline.outside.StrokePiece;

/** Moves the ends of stroke pieces so that they meet. */
final class Welding {

  private Welding() {}

  /**
   * Where two ends that miss each other are to meet: where their lines run into each other, if that
   * is within the gap of both, else half way.
   */
  static Point meeting(StrokePiece before, StrokePiece after, double gap) {
    Point a = before.end();
    Point b = after.start();
    Point half = a.towards(b, 0.5);
    Point in = arriving(before);
    Point out = leaving(after);
    if (in == null || out == null || Math.abs(in.cross(out)) < 0.1) {
      return half;
    }
    double along = b.minus(a).cross(out) / in.cross(out);
    Point met = a.plus(in.times(along));
    return met.distanceTo(a) <= gap && met.distanceTo(b) <= gap ? met : half;
  }

  static Point arriving(StrokePiece piece) {
    if (piece instanceof StrokePiece.Plain plain) {
      return plain.primitive().tangentAt(1);
    }
    if (piece instanceof StrokePiece.Free free) {
      return free.curve().directionBefore(1);
    }
    List<Point> points = ((StrokePiece.Chords) piece).points();
    for (int i = points.size() - 2; i >= 0; i--) {
      if (!points.get(i).equals(piece.end())) {
        return piece.end().minus(points.get(i)).unit();
      }
    }
    return null;
  }

  static Point leaving(StrokePiece piece) {
    if (piece instanceof StrokePiece.Plain plain) {
      return plain.primitive().tangentAt(0);
    }
    if (piece instanceof StrokePiece.Free free) {
      return free.curve().directionAfter(0);
    }
    for (Point p : ((StrokePiece.Chords) piece).points()) {
      if (!p.equals(piece.start())) {
        return p.minus(piece.start()).unit();
      }
    }
    return null;
  }

  /** The piece from one place to another; null where nothing of it is left. */
  static StrokePiece between(StrokePiece piece, Point start, Point end) {
    if (piece.start().equals(start) && piece.end().equals(end)) {
      return piece;
    }
    if (piece instanceof StrokePiece.Plain plain) {
      if (start.equals(end)) {
        return plain.primitive() instanceof Arc arc && arc.isFullCircle() ? piece : null;
      }
      if (plain.primitive() instanceof Arc arc && !arc.isFullCircle()) {
        return new StrokePiece.Plain(Arc.ofBulge(start, end, arc.bulge()));
      }
      return new StrokePiece.Plain(new Line(start, end));
    }
    if (piece instanceof StrokePiece.Chords chords) {
      List<Point> points = new ArrayList<>(chords.points());
      points.set(0, start);
      points.set(points.size() - 1, end);
      return new StrokePiece.Chords(points);
    }
    Curve curve = ((StrokePiece.Free) piece).curve();
    Point first = start.minus(piece.start());
    Point last = end.minus(piece.end());
    return new StrokePiece.Free(new Drawn(curve, first, last));
  }

  static StrokePiece reversed(StrokePiece piece) {
    if (piece instanceof StrokePiece.Plain plain) {
      return new StrokePiece.Plain(plain.primitive().reversed());
    }
    if (piece instanceof StrokePiece.Chords chords) {
      List<Point> points = new ArrayList<>(chords.points());
      Collections.reverse(points);
      return new StrokePiece.Chords(points);
    }
    Curve curve = ((StrokePiece.Free) piece).curve();
    if (curve instanceof CubicBezier b) {
      return new StrokePiece.Free(new CubicBezier(b.end(), b.second(), b.first(), b.start()));
    }
    return new StrokePiece.Free(new Backwards(curve));
  }

  /** A curve pulled along at its ends: by {@code first} at its start, {@code last} at its end. */
  private record Drawn(Curve curve, Point first, Point last) implements CurveOnCurve {

    @Override
    public Point pointAt(double t) {
      return curve.pointAt(t).plus(first.towards(last, t));
    }

    @Override
    public Point velocityAt(double t) {
      return curve.velocityAt(t).plus(last.minus(first));
    }
  }

  private record Backwards(Curve curve) implements CurveOnCurve {

    @Override
    public Point pointAt(double t) {
      return curve.pointAt(1 - t);
    }

    @Override
    public Point velocityAt(double t) {
      return curve.velocityAt(1 - t).times(-1);
    }

    @Override
    public Point accelerationAt(double t) {
      return curve.accelerationAt(1 - t);
    }

    @Override
    public List<Double> breaks() {
      List<Double> turned = new ArrayList<>();
      for (int i = curve.breaks().size() - 1; i >= 0; i--) {
        turned.add(1 - curve.breaks().get(i));
      }
      return turned;
    }

    @Override
    public Point directionAfter(double t) {
      return curve.directionBefore(1 - t).times(-1);
    }

    @Override
    public Point directionBefore(double t) {
      return curve.directionAfter(1 - t).times(-1);
    }
  }
}
