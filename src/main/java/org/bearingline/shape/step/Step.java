package org.bearingline.shape.step;

import org.bearingline.shape.formula.Values;

/** One step of an outline. */
@FunctionalInterface
public interface Step {

  void draw(Pen pen, Values values);
}
