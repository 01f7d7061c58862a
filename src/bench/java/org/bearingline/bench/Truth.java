package org.bearingline.bench;

import org.bearingline.oracle.DenseSampling;
import org.bearingline.oracle.Edges;
import org.bearingline.oracle.JtsReference;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.locationtech.jts.geom.Geometry;

/**
 * How far the results of both libraries lie from the exact curve, and how many pieces they take.
 */
final class Truth {

  /**
   * @param ourError mm, the worst of both ways
   * @param jtsError mm, the worst of both ways
   * @param ourPieces lines and arcs
   * @param jtsVertices vertices, the closing one not counted
   */
  record Row(double ourError, double jtsError, int ourPieces, int jtsVertices) {}

  private final Subject subject;

  Truth(Subject subject) {
    this.subject = subject;
  }

  /** A closing is held against the exact dilation, which its own row checks against the input. */
  Row of(Operation operation) {
    Region exact = operation == Operation.CLOSING ? dilated() : subject.region;
    double distance = operation == Operation.OUT ? operation.radius : -operation.radius;
    int perEdge = exact.size() > 1000 ? 3 : 33;
    DenseSampling sampling = new DenseSampling(exact, distance, perEdge);
    Region ours = subject.ours(operation);
    Geometry jts = subject.jts(operation);
    return new Row(
        error(sampling, Edges.of(ours)),
        error(sampling, JtsReference.edges(jts)),
        ours.size(),
        jts.getNumPoints() - rings(jts));
  }

  private Region dilated() {
    return Morphology.dilate(subject.region, Operation.CLOSING.radius).region();
  }

  private static double error(DenseSampling sampling, Edges result) {
    return Math.max(sampling.forward(result).worst(), sampling.backward(result).worst());
  }

  private static int rings(Geometry geometry) {
    return geometry.getBoundary().getNumGeometries();
  }
}
