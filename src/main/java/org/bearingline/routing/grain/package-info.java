/**
 * Feed and grain. t is the unit direction in which the cutter passes along the edge, n the normal
 * out of the wood, g the direction of the fibres signed so that g·t &gt; 0. Fibres run out into the
 * waste where g·n &gt; 0 and are cut clean; they dive into the part where g·n &lt; 0 and tear; near
 * |g·n| = 1 the edge is end grain, which breaks out where the cutter leaves it. Millimetres and
 * degrees; everything is drawn as seen from face A. Read {@link
 * org.bearingline.routing.grain.GrainReading} first, then {@link
 * org.bearingline.routing.grain.FeedPlan}.
 */
package org.bearingline.routing.grain;
