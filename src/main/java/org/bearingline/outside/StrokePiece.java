package org.bearingline.outside;

import java.util.List;
import java.util.Objects;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.fit.Curve;

/** One piece of a stroke: a line or arc as drawn, or a free curve. */
public sealed interface StrokePiece {

  Point start();

  Point end();

  /** A straight line or a circular arc. */
  record Plain(Primitive primitive) implements StrokePiece {
    public Plain {
      Objects.requireNonNull(primitive);
    }

    @Override
    public Point start() {
      return primitive.start();
    }

    @Override
    public Point end() {
      return primitive.end();
    }
  }

  /** A Bézier, an arc of an ellipse or another free curve, in mm. */
  record Free(Curve curve) implements StrokePiece {
    public Free {
      Objects.requireNonNull(curve);
    }

    @Override
    public Point start() {
      return curve.pointAt(0);
    }

    @Override
    public Point end() {
      return curve.pointAt(1);
    }
  }

  /**
   * Straight lines from point to point, kept together so that a traced edge of many thousand points
   * stays cheap.
   *
   * @param points two or more; points that fall on each other are allowed
   */
  record Chords(List<Point> points) implements StrokePiece {
    public Chords {
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("chords run from one point to another");
      }
    }

    @Override
    public Point start() {
      return points.get(0);
    }

    @Override
    public Point end() {
      return points.get(points.size() - 1);
    }
  }
}
