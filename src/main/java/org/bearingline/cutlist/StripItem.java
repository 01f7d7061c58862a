package org.bearingline.cutlist;

/**
 * A piece as it may lie in a strip.
 *
 * @param kind of the task
 * @param along mm in the strip's direction
 * @param high mm square to it
 * @param turned whether the piece lies across its board
 * @param worth what it counts
 */
record StripItem(int kind, double along, double high, boolean turned, double worth) {}
