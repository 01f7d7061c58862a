package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;

/**
 * A routed edge as curves with straights along the part's length between them: a part's length runs
 * along x, and it is along such straights that a part can be slid on a template.
 *
 * @param curves in the order of travel, wood on the left; a straight that is not along x belongs to
 *     its curve
 * @param straights mm before the first curve, between curves, and after the last; 0 where there is
 *     none
 * @param sense 1 where the edge travels towards +x, so that the wood is above it, −1 the other way
 * @param straightStart whether the edge begins along x, so that it can be run on
 * @param straightEnd whether it ends along x
 */
record Course(
    List<Path> curves, double[] straights, int sense, boolean straightStart, boolean straightEnd) {

  /** Sine of the angle to x below which a piece runs along x. */
  private static final double ALONG_X = 1e-6;

  /**
   * The course of a part's outer edge; empty where it is routed all round, in several stretches or
   * nowhere, and where it holds no arc.
   *
   * @param contour counter-clockwise
   */
  static Optional<Course> of(Contour contour) {
    List<Primitive> chain = onlyChain(contour);
    boolean curved = chain.stream().anyMatch(piece -> piece.curvature() != 0);
    if (!curved) {
      return Optional.empty();
    }
    Point start = chain.get(0).start();
    Point end = chain.get(chain.size() - 1).end();
    int sense = end.x() >= start.x() ? 1 : -1;
    List<Path> curves = new ArrayList<>();
    List<Double> straights = new ArrayList<>();
    List<Primitive> curve = new ArrayList<>();
    double straight = 0;
    for (Primitive piece : chain) {
      if (piece.curvature() == 0 && isAlong(piece.tangentAt(0), sense)) {
        if (!curve.isEmpty()) {
          curves.add(new Path(curve));
          curve = new ArrayList<>();
        }
        straight += piece.length();
      } else {
        if (curve.isEmpty()) {
          straights.add(straight);
          straight = 0;
        }
        curve.add(piece);
      }
    }
    if (!curve.isEmpty()) {
      curves.add(new Path(curve));
    }
    straights.add(straight);
    return Optional.of(
        new Course(
            List.copyOf(curves),
            straights.stream().mapToDouble(Double::doubleValue).toArray(),
            sense,
            isAlong(chain.get(0).tangentAt(0), sense),
            isAlong(chain.get(chain.size() - 1).tangentAt(1), sense)));
  }

  private static boolean isAlong(Point tangent, int sense) {
    return Math.abs(tangent.y()) <= ALONG_X && tangent.x() * sense > 0;
  }

  /** The routed stretch, where there is one and only one and it is not closed. */
  private static List<Primitive> onlyChain(Contour contour) {
    List<Primitive> chain = new ArrayList<>();
    int n = contour.kinds().size();
    int starts = 0;
    int first = -1;
    for (int i = 0; i < n; i++) {
      if (contour.kinds().get(i) == EdgeKind.ROUTED
          && contour.kinds().get((i + n - 1) % n) == EdgeKind.SAWN) {
        starts++;
        first = i;
      }
    }
    if (starts == 1) {
      for (int i = first; contour.kinds().get(i % n) == EdgeKind.ROUTED; i++) {
        chain.add(contour.loop().primitives().get(i % n));
      }
    }
    return chain;
  }

  Point start(int curve) {
    return curves.get(curve).start();
  }

  Point end(int curve) {
    return curves.get(curve).end();
  }

  int size() {
    return curves.size();
  }
}
