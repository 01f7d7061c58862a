package org.bearingline.outside.clean;

import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/** The box round all that is drawn. */
final class SketchBounds {

  private static final int SAMPLES = 64;
  private static final int HALVINGS = 40;

  private double minX = Double.POSITIVE_INFINITY;
  private double minY = Double.POSITIVE_INFINITY;
  private double maxX = Double.NEGATIVE_INFINITY;
  private double maxY = Double.NEGATIVE_INFINITY;

  private SketchBounds() {}

  static Bounds of(Sketch sketch) {
    SketchBounds box = new SketchBounds();
    for (Figure figure : sketch.figures()) {
      for (Stroke stroke : figure.strokes()) {
        stroke.pieces().forEach(box::add);
      }
    }
    return new Bounds(box.minX, box.minY, box.maxX, box.maxY);
  }

  private void add(StrokePiece piece) {
    if (piece instanceof StrokePiece.Plain plain) {
      Bounds box = plain.primitive().bounds();
      add(new Point(box.minX(), box.minY()));
      add(new Point(box.maxX(), box.maxY()));
    } else if (piece instanceof StrokePiece.Chords chords) {
      chords.points().forEach(this::add);
    } else if (piece instanceof StrokePiece.Free free) {
      add(free.curve());
    }
  }

  private void add(Point p) {
    minX = Math.min(minX, p.x());
    minY = Math.min(minY, p.y());
    maxX = Math.max(maxX, p.x());
    maxY = Math.max(maxY, p.y());
  }

  // Samples, and between two samples the place where the curve turns back in x or y.
  private void add(Curve curve) {
    int n = SAMPLES * curve.stretches();
    for (int i = 0; i <= n; i++) {
      add(curve.pointAt((double) i / n));
    }
    for (int i = 0; i < n; i++) {
      crest(curve, (double) i / n, (i + 1.0) / n, true);
      crest(curve, (double) i / n, (i + 1.0) / n, false);
    }
  }

  private void crest(Curve curve, double from, double to, boolean inX) {
    double low = from;
    double high = to;
    double before = speed(curve, low, inX);
    if (before * speed(curve, high, inX) >= 0) {
      return;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (speed(curve, middle, inX) * before > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    add(curve.pointAt(low));
  }

  private static double speed(Curve curve, double t, boolean inX) {
    Point v = curve.velocityAt(t);
    return inX ? v.x() : v.y();
  }
}
