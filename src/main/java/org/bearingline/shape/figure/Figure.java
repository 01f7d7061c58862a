package org.bearingline.shape.figure;

import org.bearingline.part.Contour;
import org.bearingline.shape.formula.Values;

/** A closed figure that can be drawn once the measures are known. */
@FunctionalInterface
public interface Figure {

  Contour drawn(Values values);
}
