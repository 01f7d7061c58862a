package org.bearingline.routing;

/**
 * The thinned edge of a panel thicker than its slot.
 *
 * @param width mm from the panel's edge to the shoulder, all round
 * @param thickness mm left to slide in the slot
 * @param waste mm of thickness taken off: from one face, or half of it from each
 * @param shoulderDriest most mm between the shoulder and the frame's edge, when driest
 * @param shoulderDampest least mm between them, when dampest
 */
public record Tongue(
    double width, double thickness, double waste, double shoulderDriest, double shoulderDampest) {}
