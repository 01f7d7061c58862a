package org.bearingline.bench;

import org.bearingline.oracle.BenchmarkShapes;
import org.bearingline.oracle.JtsReference;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Thinning;
import org.locationtech.jts.geom.Geometry;

/** One shape ready for either library. The densest is thinned by both, within the timing. */
final class Subject {

  /** mm that the flat copy may miss an arc by. */
  static final double CHORD = 0.001;

  /** mm of thinning of the shape whose points lie nearer together than its noise allows. */
  static final double THINNING = 0.002;

  final BenchmarkShapes shape;
  final Region region;
  final JtsReference reference = new JtsReference(CHORD);
  final Geometry flat;

  Subject(BenchmarkShapes shape) {
    this.shape = shape;
    this.region = shape.region();
    this.flat = reference.flat(region);
  }

  private boolean isThinned() {
    return shape == BenchmarkShapes.NOISY_100K;
  }

  Region ours(Operation operation) {
    return operation.ours(isThinned() ? Thinning.thin(region, THINNING).region() : region);
  }

  Geometry jts(Operation operation) {
    return operation.jts(isThinned() ? JtsReference.thinned(flat, THINNING) : flat, reference);
  }
}
