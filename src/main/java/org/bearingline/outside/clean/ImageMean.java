package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.StrokePiece;

/**
 * A drawn loop half way to a mirror image: each sample half way to what is nearest, each corner
 * half way to the image's nearest corner.
 *
 * @param course the samples there
 * @param move mm that a sample went at most
 */
record ImageMean(Course course, double move) {

  static ImageMean of(Course drawn, Loop image, double sharpDegrees) {
    List<Point> corners = corners(image, Math.sin(Math.toRadians(sharpDegrees)));
    Course mean = new Course();
    mean.closed = true;
    List<Point> points = new ArrayList<>();
    double move = 0;
    for (int i = 0; i < drawn.size; i++) {
      Point p = drawn.at(i);
      Point q = drawn.corner[i] ? nearest(corners, p, image) : nearest(image, p);
      Point half = p.towards(q, 0.5);
      move = Math.max(move, half.distanceTo(p));
      points.add(half);
      Course.Step step = drawn.step[i] == Course.Step.ARC ? Course.Step.CURVE : drawn.step[i];
      mean.add(half.x(), half.y(), step, null);
      mean.corner[i] = drawn.corner[i];
      mean.bent[i] = drawn.bent[i];
    }
    mean.elements.add(new StrokePiece.Chords(points));
    return new ImageMean(mean, move);
  }

  private static List<Point> corners(Loop image, double sharp) {
    List<Point> corners = new ArrayList<>();
    List<Primitive> all = image.primitives();
    for (int i = 0; i < all.size(); i++) {
      Point in = all.get((i + all.size() - 1) % all.size()).tangentAt(1);
      if (Math.abs(in.cross(all.get(i).tangentAt(0))) > sharp) {
        corners.add(all.get(i).start());
      }
    }
    return corners;
  }

  private static Point nearest(Loop loop, Point p) {
    Point best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Primitive piece : loop.primitives()) {
      Point near = piece.nearestTo(p);
      double apart = near.distanceTo(p);
      if (apart < least) {
        least = apart;
        best = near;
      }
    }
    return best;
  }

  // Of an image without corners what is nearest.
  private static Point nearest(List<Point> corners, Point p, Loop image) {
    return corners.stream()
        .min(Comparator.comparingDouble(p::distanceTo))
        .orElseGet(() -> nearest(image, p));
  }
}
