/**
 * How an operation is set up at the router: passes and stops, what thickness of template keeps the
 * follower on it, what the bit is long enough for, where clamps may stand, and in which order the
 * operations change bits least. Heights are measured square to the face, in mm. Read {@link
 * org.bearingline.routing.setup.Setup} first.
 */
package org.bearingline.routing.setup;
