package org.bearingline.outline.fit;

import org.bearingline.outline.Point;

/**
 * A biarc, or one arc told as the biarc of its halves, that follows a stretch of a curve.
 *
 * @param from parameter at its start
 * @param to parameter at its end
 * @param out unit direction at its start
 * @param in unit direction at its end
 * @param biarc its two pieces
 */
record Run(double from, double to, Point out, Point in, Biarc biarc) {}
