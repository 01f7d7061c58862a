package org.bearingline.shape;

import org.bearingline.part.Mark;
import org.bearingline.shape.formula.Values;

/** A mark that can be drawn once the measures are known. */
@FunctionalInterface
interface MarkPlan {

  Mark drawn(Values values);
}
