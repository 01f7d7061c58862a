package org.bearingline.cutlist;

import java.util.Optional;
import java.util.OptionalDouble;

/** Blanks and boards for tests. */
final class Blanks {

  private Blanks() {}

  static Blank grained(String name, double length, double width, int quantity) {
    return new Blank(
        name,
        Purpose.PART,
        length,
        width,
        OptionalDouble.empty(),
        Optional.empty(),
        quantity,
        false);
  }

  static Blank turning(String name, double length, double width, int quantity) {
    return new Blank(
        name,
        Purpose.PART,
        length,
        width,
        OptionalDouble.empty(),
        Optional.empty(),
        quantity,
        true);
  }

  static Board board(String name, double length, double width, int quantity) {
    return new Board(
        name, Purpose.PART, length, width, OptionalDouble.empty(), Optional.empty(), quantity);
  }
}
