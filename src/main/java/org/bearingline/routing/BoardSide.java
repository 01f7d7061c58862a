package org.bearingline.routing;

import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/** One of the four ways out of a part or an opening as it is drawn. */
public enum BoardSide {
  LEFT(-1, 0),
  RIGHT(1, 0),
  TOP(0, 1),
  BOTTOM(0, -1);

  private final Point outward;

  BoardSide(double x, double y) {
    this.outward = new Point(x, y);
  }

  /** Unit vector out of the part. */
  public Point outward() {
    return outward;
  }

  /** The side that this one becomes in a mirror: the way out nearest to its image. */
  BoardSide mirrored(Similarity mirror) {
    Point image = mirror.apply(outward).minus(mirror.apply(Point.ORIGIN));
    BoardSide nearest = this;
    for (BoardSide side : values()) {
      if (side.outward.dot(image) > nearest.outward.dot(image)) {
        nearest = side;
      }
    }
    return nearest;
  }

  public String word() {
    return switch (this) {
      case LEFT -> "left";
      case RIGHT -> "right";
      case TOP -> "top";
      case BOTTOM -> "bottom";
    };
  }
}
