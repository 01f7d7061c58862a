package org.bearingline.shape.step;

import org.bearingline.outline.Primitive;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;

/**
 * One piece of an outline being drawn.
 *
 * @param place of the step that drew it
 */
record Drawn(Primitive primitive, EdgeKind kind, Place place) {

  Drawn with(Primitive other) {
    return new Drawn(other, kind, place);
  }
}
