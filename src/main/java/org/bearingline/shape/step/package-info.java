/**
 * The steps an outline is drawn with, one file a step. Each is read from its field of a shape file
 * into formulas, and draws with a {@link org.bearingline.shape.step.Pen} once the measures are
 * known.
 */
package org.bearingline.shape.step;
