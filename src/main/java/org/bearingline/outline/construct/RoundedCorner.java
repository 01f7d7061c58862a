package org.bearingline.outline.construct;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Primitive;

/**
 * A corner between two neighbours replaced by an arc tangent to both.
 *
 * @param before what is left of the piece before; empty where the arc takes all of it
 * @param arc the rounding
 * @param after what is left of the piece after; empty where the arc takes all of it
 */
public record RoundedCorner(Optional<Primitive> before, Arc arc, Optional<Primitive> after) {

  /** Rounds the corner where {@code before} ends and {@code after} starts; radius in mm. */
  public static RoundedCorner of(Primitive before, Primitive after, double radius) {
    throw new UnsupportedOperationException();
  }

  /** The largest radius in mm that fits, infinite where the pieces already run on tangent. */
  public static double largestRadius(Primitive before, Primitive after) {
    throw new UnsupportedOperationException();
  }

  /** The pieces in order: one to three. */
  public List<Primitive> primitives() {
    throw new UnsupportedOperationException();
  }
}
