package org.bearingline.outside;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.Curve;

/** Looks at sketches in tests: samples their pieces and measures distances to them. */
public final class Sketches {

  private Sketches() {}

  public static List<StrokePiece> pieces(Sketch sketch) {
    return sketch.figures().stream()
        .flatMap(figure -> figure.strokes().stream())
        .flatMap(stroke -> stroke.pieces().stream())
        .toList();
  }

  /** Points along a piece, its ends among them; of chords the corners. */
  public static List<Point> sampled(StrokePiece piece, int steps) {
    List<Point> points = new ArrayList<>();
    if (piece instanceof StrokePiece.Chords chords) {
      return chords.points();
    }
    for (int i = 0; i <= steps; i++) {
      double t = (double) i / steps;
      points.add(
          piece instanceof StrokePiece.Plain plain
              ? plain.primitive().pointAt(t)
              : ((StrokePiece.Free) piece).curve().pointAt(t));
    }
    return points;
  }

  public static Bounds bounds(Sketch sketch) {
    return pieces(sketch).stream()
        .map(piece -> box(sampled(piece, 256)))
        .reduce(Bounds::union)
        .orElseThrow();
  }

  public static Bounds box(List<Point> points) {
    return points.stream().map(Bounds::of).reduce(Bounds::union).orElseThrow();
  }

  /** A piece with the box round it, so that far ones need not be measured. */
  public record Boxed(StrokePiece piece, Bounds box) {
    public static List<Boxed> of(Sketch sketch) {
      return pieces(sketch).stream()
          .map(piece -> new Boxed(piece, Sketches.box(sampled(piece, 64))))
          .toList();
    }
  }

  /** Distance from a point to the nearest of many pieces; more than {@code near} where none is. */
  public static double distance(Point p, List<Boxed> all, double near) {
    double least = Double.POSITIVE_INFINITY;
    for (Boxed one : all) {
      Bounds box = one.box();
      double margin = near + 0.1 * Math.max(box.width(), box.height());
      if (p.x() > box.minX() - margin
          && p.x() < box.maxX() + margin
          && p.y() > box.minY() - margin
          && p.y() < box.maxY() + margin) {
        least = Math.min(least, distance(p, one.piece()));
      }
    }
    return least;
  }

  public static double distance(Point p, StrokePiece piece) {
    if (piece instanceof StrokePiece.Plain plain) {
      return plain.primitive().distanceTo(p);
    }
    if (piece instanceof StrokePiece.Chords chords) {
      return distance(p, chords.points());
    }
    Curve curve = ((StrokePiece.Free) piece).curve();
    int steps = 128;
    int best = 0;
    for (int i = 1; i <= steps; i++) {
      if (gap(curve, i, steps, p) < gap(curve, best, steps, p)) {
        best = i;
      }
    }
    double least = refined(curve, best, steps, p);
    // A closed curve is as near at its other end.
    return best == 0 ? Math.min(least, refined(curve, steps, steps, p)) : least;
  }

  private static double refined(Curve curve, int best, int steps, Point p) {
    double low = Math.max(0, (best - 1.0) / steps);
    double high = Math.min(1, (best + 1.0) / steps);
    for (int i = 0; i < 90; i++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (curve.pointAt(a).distanceTo(p) < curve.pointAt(b).distanceTo(p)) {
        high = b;
      } else {
        low = a;
      }
    }
    return curve.pointAt((low + high) / 2).distanceTo(p);
  }

  private static double gap(Curve curve, int i, int steps, Point p) {
    return curve.pointAt((double) i / steps).distanceTo(p);
  }

  /** Distance to a polyline. */
  public static double distance(Point p, List<Point> polyline) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < polyline.size(); i++) {
      Point a = polyline.get(i - 1);
      Point b = polyline.get(i);
      least = Math.min(least, a.equals(b) ? p.distanceTo(a) : new Line(a, b).distanceTo(p));
    }
    return least;
  }
}
