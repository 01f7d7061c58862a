/**
 * Free curves turned into tangent-continuous lines and arcs within a stated tolerance, once, on
 * entry. Read {@link org.bearingline.outline.fit.CurveFit} first.
 */
package org.bearingline.outline.fit;
