package org.bearingline.routing;

import org.bearingline.outline.Point;

/**
 * A = (T ⊕ D(R)) ⊖ D(r), worked forward from the finished template and compared with P. It knows
 * nothing of how the template was made.
 *
 * @param maxDeviation largest distance in mm between the cut edge and the routed edge, either way,
 *     outside the named leftovers and overcuts
 * @param at where it is
 * @param samples how many places were compared
 */
public record Proof(double maxDeviation, Point at, int samples) {}
