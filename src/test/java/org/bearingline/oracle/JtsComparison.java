package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.outline.Region;
import org.locationtech.jts.geom.Geometry;

/**
 * An offset against the JTS buffer of a finely flattened copy: area, and the distance between the
 * edges both ways.
 *
 * <p>JTS's edge lies where the distance to the input is d within its bound. The true edge is then
 * near as well, if the distance to the input changes quickly there: along a ridge between two feet
 * it changes by the cosine of half the angle the feet span. Samples whose feet lie less than d
 * apart (60°) must be within twice the bound, since 1 / cos 30° &lt; 2; others sit on a ridge
 * between opposite walls, where a hair decides whether there is an edge at all, and are let off.
 */
final class JtsComparison {

  private final Region input;
  private final Edges edges;
  private final double distance;
  private final JtsReference reference;

  JtsComparison(Region input, double distance, double tolerance) {
    this.input = input;
    this.edges = Edges.of(input);
    this.distance = distance;
    this.reference = new JtsReference(tolerance);
  }

  /**
   * Everything that disagrees, as sentences; empty also where JTS cannot read the flat copy. JTS
   * may lose a whole piece where a slot is exactly as wide as the disc, and finds it again at a
   * distance that is more or less by its own bound; so a disagreement counts where it stays at all
   * three.
   */
  List<String> disagreements(Region result) {
    Geometry flat = reference.flat(input);
    if (!flat.isValid()) {
      return List.of();
    }
    double bound = reference.bound(input, distance);
    List<String> found = disagreements(result, reference.buffer(flat, distance), bound);
    if (found.isEmpty()
        || disagreements(result, reference.buffer(flat, distance + bound), 2 * bound).isEmpty()
        || disagreements(result, reference.buffer(flat, distance - bound), 2 * bound).isEmpty()) {
      return List.of();
    }
    return found;
  }

  private List<String> disagreements(Region result, Geometry buffer, double bound) {
    List<String> found = new ArrayList<>();
    double areas = Math.abs(buffer.getArea() - result.area());
    double most = JtsReference.areaBound(input, distance, bound);
    if (!(areas <= most)) {
      found.add(
          String.format(
              Locale.ROOT,
              "areas %.6f and %.6f (JTS) differ by more than %.6f mm²",
              result.area(),
              buffer.getArea(),
              most));
    }
    Edges theirs = JtsReference.edges(buffer);
    Edges ours = Edges.of(result);
    compare("JTS's edge has no match", theirs, ours, 2, bound, found, true);
    compare("the result's edge has no match in JTS's", ours, theirs, 9, bound, found, false);
    return found;
  }

  // JTS leaves crumbs of its raw curve now and then: an edge of its that is not at its distance
  // from
  // the input is no witness. Ours must be, which the sampling checks.
  private void compare(
      String what,
      Edges walked,
      Edges other,
      int perEdge,
      double bound,
      List<String> found,
      boolean witnessed) {
    Deviation worst = Deviation.NONE;
    for (int i = 0; i < walked.count(); i++) {
      Edge edge = walked.place(i).edge();
      for (int k = 0; k < perEdge - 1; k++) {
        double x = edge.x(k / (perEdge - 1.0));
        double y = edge.y(k / (perEdge - 1.0));
        double apart = other.distance(x, y);
        if (apart > 2 * bound
            && !onRidge(x, y, bound)
            && !(witnessed && Math.abs(edges.distance(x, y) - Math.abs(distance)) > bound)) {
          worst = worst.with(apart, x, y);
        }
      }
    }
    if (worst.samples() > 0) {
      found.add(what + " within " + 2 * bound + " mm: " + worst);
    }
  }

  private boolean onRidge(double x, double y, double bound) {
    double d = Math.abs(distance);
    List<double[]> feet = new ArrayList<>();
    for (int i = 0; i < edges.count(); i++) {
      Edge edge = edges.place(i).edge();
      if (edge.distance(x, y) > d + 2 * bound) {
        continue;
      }
      // An arc hollow about the sample has feet all along, not one.
      int feetOfEdge = edge.isArc() && Math.hypot(x - edge.cx(), y - edge.cy()) < 4 * bound ? 9 : 1;
      for (int k = 0; k < feetOfEdge; k++) {
        double t = feetOfEdge == 1 ? edge.foot(x, y) : k / 8.0;
        feet.add(new double[] {edge.x(t), edge.y(t)});
      }
    }
    for (double[] p : feet) {
      for (double[] q : feet) {
        if (Math.hypot(p[0] - q[0], p[1] - q[1]) >= d) {
          return true;
        }
      }
    }
    return false;
  }
}
