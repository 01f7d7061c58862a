package org.bearingline.outline.fit;

import java.util.List;
import org.bearingline.outline.Path;
import org.bearingline.outline.Primitive;

/**
 * A curve as lines and arcs.
 *
 * @param primitives at least one, each starting where the one before ends
 * @param maxDeviation largest distance in mm between the curve and the primitives, as measured
 */
public record FittedCurve(List<Primitive> primitives, double maxDeviation) {

  public FittedCurve {
    primitives = List.copyOf(primitives);
  }

  /** The primitives as a path. */
  public Path path() {
    return new Path(primitives);
  }
}
