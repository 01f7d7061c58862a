package org.bearingline.cutlist;

import org.bearingline.outline.Bounds;

/**
 * Where one blank lies on its board.
 *
 * @param blank what it is
 * @param number which of its quantity, from 1
 * @param at on the board, whose low corner is the origin; x along the board's length, mm
 * @param turned whether it lies across the board, its length along y
 */
public record Placement(Blank blank, int number, Bounds at, boolean turned) {}
