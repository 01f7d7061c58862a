package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.StrokePiece;

/** Compares a traced edge with the outline that was photographed. */
final class Truth {

  private Truth() {}

  /**
   * How far traced points lie from the outline, mm.
   *
   * @param mean of the distances without sign
   * @param most of them
   * @param bias mean distance to the outside: positive where the trace is too large
   */
  record Errors(double mean, double most, double bias) {
    @Override
    public String toString() {
      return "mean %.4f most %.4f bias %+.4f mm".formatted(mean, most, bias);
    }
  }

  static List<Point> points(Sketch sketch) {
    List<Point> points = new ArrayList<>();
    sketch.figures().stream()
        .flatMap(figure -> figure.strokes().stream())
        .flatMap(stroke -> stroke.pieces().stream())
        .forEach(piece -> points.addAll(((StrokePiece.Chords) piece).points()));
    return points;
  }

  /** The errors of points as they lie. */
  static Errors errors(List<Point> points, Outline truth) {
    double sum = 0;
    double most = 0;
    double bias = 0;
    for (Point point : points) {
      double distance = nearest(point, truth).distanceTo(point);
      sum += distance;
      most = Math.max(most, distance);
      bias += truth.contains(point) ? -distance : distance;
    }
    return new Errors(sum / points.size(), most, bias / points.size());
  }

  /** The errors after the truth was moved and turned, not stretched, to fit best. */
  static Errors errorsWhereverItLies(List<Point> points, Outline truth) {
    return errors(points, truth.transformed(placed(points, truth)));
  }

  /** The rigid motion that fits the truth best, from a start not far from it. */
  static Similarity placed(List<Point> points, Outline truth) {
    Similarity motion = Similarity.identity();
    int step = Math.max(1, points.size() / 2000);
    for (int round = 0; round < 25; round++) {
      Outline moved = truth.transformed(motion);
      Point center = moved.bounds().center();
      double[][] normal = new double[3][4];
      for (int i = 0; i < points.size(); i += step) {
        Point foot = nearest(points.get(i), moved);
        Point off = points.get(i).minus(foot);
        double length = off.norm();
        if (length < 1e-9) {
          continue;
        }
        Point n = off.times(1 / length);
        double[] row = {n.x(), n.y(), foot.minus(center).cross(n), length};
        for (int a = 0; a < 3; a++) {
          for (int b = 0; b < 4; b++) {
            normal[a][b] += row[a] * row[b];
          }
        }
      }
      double[] change = solve(normal);
      motion =
          motion
              .then(Similarity.rotation(Math.toDegrees(change[2]), center))
              .then(Similarity.translation(change[0], change[1]));
    }
    return motion;
  }

  private static double[] solve(double[][] m) {
    for (int a = 0; a < 3; a++) {
      m[a][a] += 1e-9;
      for (int b = 0; b < 3; b++) {
        if (b != a) {
          double factor = m[b][a] / m[a][a];
          for (int c = 0; c < 4; c++) {
            m[b][c] -= factor * m[a][c];
          }
        }
      }
    }
    return new double[] {m[0][3] / m[0][0], m[1][3] / m[1][1], m[2][3] / m[2][2]};
  }

  private static Point nearest(Point point, Outline outline) {
    Point best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Loop loop : outline.loops()) {
      for (Primitive piece : loop.primitives()) {
        List<Double> shares = Arrays.asList(0.0, 1.0, piece.nearestShare(point));
        for (double share : shares) {
          Point at = piece.pointAt(Math.max(0, Math.min(1, share)));
          if (at.distanceTo(point) < least) {
            least = at.distanceTo(point);
            best = at;
          }
        }
      }
    }
    return best;
  }
}
