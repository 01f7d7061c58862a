package org.bearingline.drawing.sheet;

import java.util.OptionalDouble;

/**
 * A size of paper.
 *
 * @param name as the maker writes it, such as {@code A4} or {@code roll:610mm}
 * @param width mm across: the shorter side of a sheet, the width of a roll
 * @param height mm along; empty for a roll, which is cut off as needed
 */
public record Paper(String name, double width, OptionalDouble height) {

  public boolean isRoll() {
    return height.isEmpty();
  }

  /**
   * The paper of that name ({@code A4}, {@code letter}, {@code roll:36in}, {@code 12inx18in});
   * fails with a Problem that tells the nearest name.
   */
  public static Paper parse(String text) {
    throw new UnsupportedOperationException();
  }
}
