package org.bearingline.shape;

import org.bearingline.shape.formula.Formula;

/**
 * What must hold before a shape is drawn.
 *
 * @param must a yes-or-no
 * @param sentence shown where it does not hold
 */
record Condition(Formula must, String sentence) {}
