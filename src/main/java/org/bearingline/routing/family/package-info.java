/**
 * Parts that share a curve, and templates that serve more than their own length: one template for a
 * family, half a template about a centre line. Read {@link org.bearingline.routing.family.Family}
 * first. Millimetres and degrees; a shared template is drawn in its host part's own coordinates.
 */
package org.bearingline.routing.family;
