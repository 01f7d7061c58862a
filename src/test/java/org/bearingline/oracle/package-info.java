/**
 * Judges of the outline kernel that share no code with it: their own distance and inside functions
 * over lines and arcs, a simulation on a grid of cells, dense sampling of both curves, and a
 * general-purpose polygon library. Read {@link org.bearingline.oracle.Edge} first.
 */
package org.bearingline.oracle;
