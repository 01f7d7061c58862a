package org.bearingline.outside.unite;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;

/**
 * Finds where a union holds together by next to nothing: two of its inner corners, both new, with a
 * little wood between them and a long way round from one to the other.
 */
final class Necks {

  /** Share of the size within which a corner was drawn as one. */
  private static final double DRAWN = 1e-9;

  /** How much longer than the neck is wide the way round is; else something small stands out. */
  private static final double ROUND = 4;

  private final Region whole;
  private final List<Outline> drawn;
  private final double near;
  private final double same;

  private Necks(Region whole, List<Outline> drawn, double near) {
    this.whole = whole;
    this.drawn = drawn;
    this.near = near;
    same = DRAWN * (whole.bounds().width() + whole.bounds().height());
  }

  /**
   * A corner of the union.
   *
   * @param loop number of its loop
   * @param along mm from the loop's start
   * @param length mm of the loop
   */
  private record Corner(Point at, int loop, double along, double length) {

    double wayTo(Corner other) {
      if (loop != other.loop) {
        return Double.POSITIVE_INFINITY;
      }
      double way = Math.abs(along - other.along);
      return Math.min(way, length - way);
    }
  }

  /**
   * The middles of all necks narrower than {@code near} mm.
   *
   * @param drawn the shapes that were united
   */
  static List<Point> of(Region whole, List<Outline> drawn, double near) {
    return new Necks(whole, drawn, near).found();
  }

  private List<Point> found() {
    List<Corner> corners = corners();
    corners.sort(Comparator.comparingDouble(corner -> corner.at().x()));
    List<Point> found = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Corner a = corners.get(i);
      for (int j = i + 1; j < corners.size(); j++) {
        Corner b = corners.get(j);
        if (b.at().x() - a.at().x() > near) {
          break;
        }
        double width = a.at().distanceTo(b.at());
        Point middle = a.at().towards(b.at(), 0.5);
        if (width <= near && a.wayTo(b) > ROUND * near && whole.contains(middle)) {
          found.add(middle);
        }
      }
    }
    return found;
  }

  private List<Corner> corners() {
    List<Corner> corners = new ArrayList<>();
    List<Loop> loops = whole.loops();
    for (int l = 0; l < loops.size(); l++) {
      List<Primitive> pieces = loops.get(l).primitives();
      double along = 0;
      for (int i = 0; i < pieces.size(); i++) {
        Primitive piece = pieces.get(i);
        Point in = pieces.get((i + pieces.size() - 1) % pieces.size()).tangentAt(1);
        if (in.cross(piece.tangentAt(0)) < 0 && isNew(piece.start())) {
          corners.add(new Corner(piece.start(), l, along, loops.get(l).length()));
        }
        along += piece.length();
      }
    }
    return corners;
  }

  private boolean isNew(Point corner) {
    for (Outline outline : drawn) {
      for (Loop loop : outline.loops()) {
        for (Primitive piece : loop.primitives()) {
          if (piece.start().distanceTo(corner) <= same) {
            return false;
          }
        }
      }
    }
    return true;
  }
}
