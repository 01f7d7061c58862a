package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The routed edge of a rail as the rail is drawn.
 *
 * @param inner between the shoulders, wood on the left
 * @param whole over the tenons too
 * @param intoWood unit vector along the shoulders, from the edge into the rail
 */
record RailEdge(Path inner, Path whole, Point intoWood) {

  /** Sine of the angle below which two shoulder lines are parallel: 0.1 mm in 100. */
  private static final double PARALLEL = 1e-3;

  /** Pieces of an edge that turn less than this, in degrees, make one straight. */
  private static final double STRAIGHT = 1e-6;

  private static final int STEPS = 60;

  /**
   * The one routed edge of a rail, between its two shoulder lines, or from end to end where it has
   * none.
   */
  static RailEdge of(Part part) {
    List<GroovedRuns.Run> runs = GroovedRuns.of(part, GrooveExtent.through());
    Path whole = runs.get(0).edge();
    if (runs.size() > 1 || whole.isClosed()) {
      throw new Problem(
          Place.field(part.name()),
          "a rail has one routed edge, the one its panel sits in, and this part has "
              + (whole.isClosed() ? "one that runs all round" : "" + runs.size())
              + "; make its other edges sawn");
    }
    List<Mark.ShoulderLine> shoulders = new ArrayList<>();
    for (Mark mark : part.marks()) {
      if (mark instanceof Mark.ShoulderLine line && crosses(whole, line)) {
        shoulders.add(line);
      }
    }
    if (shoulders.isEmpty()) {
      Point chord = whole.end().minus(whole.start());
      return new RailEdge(whole, whole, chord.left().unit());
    }
    if (shoulders.size() != 2) {
      throw new Problem(
          Place.field(part.name()),
          "a rail has a shoulder line at each end of its edge, two together, and this part has "
              + shoulders.size());
    }
    return between(part, whole, shoulders.get(0), shoulders.get(1));
  }

  private static RailEdge between(Part part, Path whole, Mark.ShoulderLine a, Mark.ShoulderLine b) {
    PathPlace atA = crossing(whole, a);
    PathPlace atB = crossing(whole, b);
    boolean ordered = atA.length(whole) < atB.length(whole);
    PathPlace from = ordered ? atA : atB;
    PathPlace until = ordered ? atB : atA;
    List<Primitive> pieces = from.to(until, whole);
    Point along = a.to().minus(a.from()).unit();
    if (Math.abs(along.cross(b.to().minus(b.from()).unit())) > PARALLEL || pieces.isEmpty()) {
      throw new Problem(
          Place.field(part.name()),
          "the two shoulder lines of a rail stand apart and parallel to each other; mend them");
    }
    Path inner = new Path(pieces);
    Point chord = inner.end().minus(inner.start());
    return new RailEdge(inner, whole, chord.cross(along) > 0 ? along : along.times(-1));
  }

  private static double side(Mark.ShoulderLine line, Point p) {
    return line.to().minus(line.from()).cross(p.minus(line.from()));
  }

  private static boolean crosses(Path path, Mark.ShoulderLine line) {
    return side(line, path.start()) * side(line, path.end()) <= 0;
  }

  /** The first place where the path comes over the endless line through the shoulder. */
  private static PathPlace crossing(Path path, Mark.ShoulderLine line) {
    double before = Math.signum(side(line, path.start()));
    List<Primitive> pieces = path.primitives();
    for (int i = 0; i < pieces.size(); i++) {
      if (before == 0) {
        return new PathPlace(0, 0);
      }
      if (before * side(line, pieces.get(i).end()) > 0) {
        continue;
      }
      double low = 0;
      double high = 1;
      for (int step = 0; step < STEPS; step++) {
        double middle = (low + high) / 2;
        if (before * side(line, pieces.get(i).pointAt(middle)) > 0) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return new PathPlace(i, high);
    }
    return new PathPlace(pieces.size() - 1, 1);
  }

  /** Whether the edge between the shoulders is one straight. */
  boolean isStraight() {
    Point first = inner.primitives().get(0).tangentAt(0);
    for (Primitive piece : inner.primitives()) {
      boolean on =
          piece.curvature() == 0
              && Math.abs(Math.toDegrees(Math.asin(first.cross(piece.tangentAt(0))))) < STRAIGHT;
      if (!on) {
        return false;
      }
    }
    return true;
  }
}
