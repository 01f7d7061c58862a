package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Cavity;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;

/**
 * Whether a part is its own mirror image: its edges are compared, line by line and arc by arc, with
 * their images in a centre line.
 */
final class Symmetry {

  /**
   * An edge that lies this near to its image, in mm, is symmetrical to a shop; drawn curves are
   * themselves held to a fiftieth of a millimetre.
   */
  private static final double TOLERANCE = 0.05;

  private Symmetry() {}

  /** Centre lines of a part: those marked on it, then the middle lines of its outline. */
  static List<Mark.CentreLine> axes(Part part) {
    List<Mark.CentreLine> axes = new ArrayList<>();
    for (Mark mark : part.marks()) {
      if (mark instanceof Mark.CentreLine line && line.from().distanceTo(line.to()) > 0) {
        axes.add(line);
      }
    }
    Bounds box = part.contour().loop().bounds();
    Point c = box.center();
    axes.add(
        new Mark.CentreLine(new Point(c.x(), box.minY()), new Point(c.x(), box.maxY()), "centre"));
    axes.add(
        new Mark.CentreLine(new Point(box.minX(), c.y()), new Point(box.maxX(), c.y()), "centre"));
    return axes;
  }

  /** The first centre line in which part and operations are their own image. */
  static Optional<Mark.CentreLine> axisOf(Part part, List<Operation> operations) {
    return axes(part).stream()
        .filter(axis -> isSymmetrical(part, operations, mirror(axis)))
        .findFirst();
  }

  static Similarity mirror(Mark.CentreLine axis) {
    return Similarity.mirror(axis.from(), axis.to());
  }

  private static boolean isSymmetrical(Part part, List<Operation> operations, Similarity mirror) {
    return same(part.contour().loop(), part.contour().loop().transformed(mirror))
        && part.cavities().stream()
            .allMatch(cavity -> part.cavities().stream().anyMatch(o -> same(cavity, o, mirror)))
        && drilled(part).stream()
            .allMatch(hole -> drilled(part).stream().anyMatch(o -> same(hole, o, mirror)))
        && operations.stream()
            .allMatch(op -> operations.stream().anyMatch(o -> sameEdge(op, o, mirror)))
        && holes(operations).stream()
            .allMatch(hole -> holes(operations).stream().anyMatch(o -> same(hole, o, mirror)));
  }

  private static boolean same(Cavity a, Cavity b, Similarity mirror) {
    return a.kind() == b.kind()
        && a.depth().equals(b.depth())
        && same(a.contour().loop().transformed(mirror), b.contour().loop());
  }

  private static boolean sameEdge(Operation a, Operation b, Similarity mirror) {
    if (a.target().isEmpty()) {
      return true;
    }
    return b.target().isPresent()
        && a.face() == b.face()
        && a.depth().equals(b.depth())
        && a.tooling().equals(b.tooling())
        && same(
            a.target().get().contour().loop().transformed(mirror),
            b.target().get().contour().loop());
  }

  /** A hole with the face it is drilled from. */
  private record Faced(Hole hole, Face face) {}

  private static List<Mark.DrillCentre> drilled(Part part) {
    return part.marks().stream()
        .filter(Mark.DrillCentre.class::isInstance)
        .map(Mark.DrillCentre.class::cast)
        .toList();
  }

  private static boolean same(Mark.DrillCentre a, Mark.DrillCentre b, Similarity mirror) {
    return a.diameter() == b.diameter() && mirror.apply(a.at()).distanceTo(b.at()) < TOLERANCE;
  }

  private static List<Faced> holes(List<Operation> operations) {
    List<Faced> holes = new ArrayList<>();
    for (Operation operation : operations) {
      operation.holes().forEach(hole -> holes.add(new Faced(hole, operation.face())));
    }
    return holes;
  }

  private static boolean same(Faced a, Faced b, Similarity mirror) {
    return a.face() == b.face()
        && a.hole().diameter() == b.hole().diameter()
        && a.hole().depth().equals(b.hole().depth())
        && mirror.apply(a.hole().at()).distanceTo(b.hole().at()) < TOLERANCE;
  }

  /** Whether a plate with all its openings is its own image. */
  static boolean isSymmetrical(Outline plate, Similarity mirror) {
    return EdgeMatch.deviation(plate.loops(), plate.transformed(mirror).loops()) < TOLERANCE;
  }

  /** Whether marks for drilling are their own image. */
  static boolean areSymmetrical(List<Hole> guides, Similarity mirror) {
    return guides.stream()
        .allMatch(
            hole ->
                guides.stream()
                    .anyMatch(other -> mirror.apply(hole.at()).distanceTo(other.at()) < TOLERANCE));
  }

  private static boolean same(Loop a, Loop b) {
    return EdgeMatch.deviation(a, b) < TOLERANCE;
  }
}
