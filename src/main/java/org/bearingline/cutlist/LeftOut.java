package org.bearingline.cutlist;

/**
 * Blanks for which no board was left.
 *
 * @param blank what did not fit
 * @param count how many of its quantity
 * @param reason one sentence: why, and what would do
 */
public record LeftOut(Blank blank, int count, String reason) {}
