package org.bearingline.cutlist;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A board, sheet or offcut the maker has.
 *
 * @param name as the maker calls it
 * @param purpose what may be cut from it
 * @param length mm along the fibres, more than 0
 * @param width mm, more than 0
 * @param thickness mm; empty where not known
 * @param material such as a species; empty where not told
 * @param quantity how many of this size, 1 or more
 */
public record Board(
    String name,
    Purpose purpose,
    double length,
    double width,
    OptionalDouble thickness,
    Optional<String> material,
    int quantity) {

  public Board {
    Objects.requireNonNull(name);
    Objects.requireNonNull(purpose);
    Objects.requireNonNull(material);
    Sizes.check("length", length);
    Sizes.check("width", width);
    thickness.ifPresent(mm -> Sizes.check("thickness", mm));
    Sizes.checkCount(quantity);
  }

  /** Area of one, mm². */
  public double area() {
    return length * width;
  }

  /** Whether the material and thickness of a blank can be had from this board. */
  boolean serves(Blank blank, SawRules rules) {
    return purpose == blank.purpose() && sameMaterial(blank) && thickEnough(blank, rules);
  }

  private boolean sameMaterial(Blank blank) {
    return material.isEmpty()
        || blank.material().isEmpty()
        || folded(material.get()).equals(folded(blank.material().get()));
  }

  private static String folded(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  private boolean thickEnough(Blank blank, SawRules rules) {
    if (thickness.isEmpty() || blank.thickness().isEmpty()) {
      return true;
    }
    double over = thickness.getAsDouble() - blank.thickness().getAsDouble();
    // Sheets, which may be turned, are used as thick as they are.
    double planing = blank.mayTurn() ? 0 : rules.planing();
    return over >= -SawRules.SAME_THICKNESS && over <= planing + SawRules.SAME_THICKNESS;
  }
}
