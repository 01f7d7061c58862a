package org.bearingline.routing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Cuts the run-on ends of a line off, at the end of the wood or a little past it. */
final class StockClip {

  private static final int STEPS = 60;

  /** An end counts for a path that starts or stops this near to its run-out, in run-outs. */
  private static final double BESIDE = 1.5;

  private StockClip() {}

  /** The line up to {@code past} mm along the run-outs at its ends. */
  static Path clip(Path path, ExtendedEdge edge, double past) {
    return trimmed(path, edge, (end, p) -> p.minus(end.at()).dot(end.outward()) - past);
  }

  /** The line up to the lines of the sawn edges. */
  static Path toSaw(Path path, ExtendedEdge edge) {
    return trimmed(path, edge, StockEnd::beyond);
  }

  private interface Beyond {
    double of(StockEnd end, Point p);
  }

  private static Path trimmed(Path path, ExtendedEdge edge, Beyond beyond) {
    if (path.isClosed() || edge.ends().isEmpty()) {
      return path;
    }
    Path back = reversed(trimmedAtStart(path, edge, beyond));
    return reversed(trimmedAtStart(back, edge, beyond));
  }

  private static Path trimmedAtStart(Path path, ExtendedEdge edge, Beyond beyond) {
    StockEnd end = nearest(path.start(), edge);
    if (end == null || beyond.of(end, path.start()) <= 0) {
      return path;
    }
    List<Primitive> pieces = path.primitives();
    for (int i = 0; i < pieces.size(); i++) {
      Primitive piece = pieces.get(i);
      if (beyond.of(end, piece.end()) < 0) {
        List<Primitive> rest = new ArrayList<>();
        double share = crossing(piece, end, beyond);
        rest.add(share > 0 ? piece.part(share, 1) : piece);
        rest.addAll(pieces.subList(i + 1, pieces.size()));
        return new Path(rest);
      }
    }
    return path;
  }

  /** The share where a piece that begins beyond comes inside. */
  private static double crossing(Primitive piece, StockEnd end, Beyond beyond) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < STEPS; i++) {
      double middle = (low + high) / 2;
      if (beyond.of(end, piece.pointAt(middle)) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private static StockEnd nearest(Point p, ExtendedEdge edge) {
    StockEnd nearest = null;
    double least = BESIDE * edge.runOut();
    for (StockEnd end : edge.ends()) {
      double distance = p.distanceTo(end.at().plus(end.outward().times(edge.runOut())));
      if (distance < least) {
        least = distance;
        nearest = end;
      }
    }
    return nearest;
  }

  private static Path reversed(Path path) {
    List<Primitive> back = new ArrayList<>();
    for (Primitive piece : path.primitives()) {
      back.add(piece.reversed());
    }
    Collections.reverse(back);
    return new Path(back);
  }
}
