package org.bearingline.outside.clean;

import java.util.List;
import org.bearingline.outline.Primitive;

/**
 * Pieces that run on smoothly from one corner of a chain to the next.
 *
 * @param from the sample at its first corner
 * @param to the sample at its last corner
 * @param pieces tangent to each other; a ring's last ends where the first starts
 * @param ring whether there is no corner at all
 */
record Group(int from, int to, List<Primitive> pieces, boolean ring) {}
