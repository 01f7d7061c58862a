package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * A place on a path.
 *
 * @param index of the primitive
 * @param share of its length, in [0, 1]
 */
record PathPlace(int index, double share) {

  /** A share nearer than this to an end of a piece leaves nothing worth keeping. */
  private static final double WHOLE = 1e-9;

  /** The place {@code length} mm along, from 0 to the path's length. */
  static PathPlace along(Path path, double length) {
    double rest = length;
    List<Primitive> pieces = path.primitives();
    for (int i = 0; i < pieces.size(); i++) {
      double here = pieces.get(i).length();
      if (rest <= here || i == pieces.size() - 1) {
        return new PathPlace(i, Math.min(1, rest / here));
      }
      rest -= here;
    }
    throw new IllegalStateException("a path has at least one primitive");
  }

  /** The place nearest to a point. */
  static PathPlace nearest(Path path, Point p) {
    PathPlace best = new PathPlace(0, 0);
    double least = Double.POSITIVE_INFINITY;
    List<Primitive> pieces = path.primitives();
    for (int i = 0; i < pieces.size(); i++) {
      double share = pieces.get(i).nearestShare(p);
      double distance = pieces.get(i).pointAt(share).distanceTo(p);
      if (distance < least) {
        least = distance;
        best = new PathPlace(i, share);
      }
    }
    return best;
  }

  Point on(Path path) {
    return path.primitives().get(index).pointAt(share);
  }

  /** Unit vector in the direction of travel. */
  Point tangent(Path path) {
    return path.primitives().get(index).tangentAt(share);
  }

  /** mm from the start of the path. */
  double length(Path path) {
    double sum = 0;
    for (int i = 0; i < index; i++) {
      sum += path.primitives().get(i).length();
    }
    return sum + share * path.primitives().get(index).length();
  }

  /** The pieces of a path from here to a later place; none where they are the same. */
  List<Primitive> to(PathPlace end, Path path) {
    List<Primitive> pieces = new ArrayList<>();
    for (int i = index; i <= end.index; i++) {
      double from = i == index ? share : 0;
      double until = i == end.index ? end.share : 1;
      if (until > from + WHOLE) {
        Primitive piece = path.primitives().get(i);
        pieces.add(from == 0 && until == 1 ? piece : piece.part(from, until));
      }
    }
    return pieces;
  }
}
