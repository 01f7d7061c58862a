package org.bearingline.drawing.sheet;

import java.util.Optional;
import org.bearingline.outline.Bounds;

/**
 * One printed page.
 *
 * @param name row letter and column number, such as {@code B2}; row A is on top
 * @param row 0 on top
 * @param column 0 on the left
 * @param cell what it shows, in plan coordinates
 * @param left name of the page to the left, if it is printed
 * @param right name of the page to the right
 * @param above name of the page above
 * @param below name of the page below
 */
public record Sheet(
    String name,
    int row,
    int column,
    Bounds cell,
    Optional<String> left,
    Optional<String> right,
    Optional<String> above,
    Optional<String> below) {}
