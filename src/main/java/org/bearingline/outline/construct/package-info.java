/**
 * Constructions a maker draws with: a reverse curve between parallel edges, arcs by what is known
 * of them, tangent continuation, rounded corners, and a half completed by its mirror image. What a
 * maker can get wrong fails with a {@link org.bearingline.problem.Problem} at no place; the caller
 * knows the place and adds it.
 */
package org.bearingline.outline.construct;
