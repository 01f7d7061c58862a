package org.bearingline.length;

import java.math.BigDecimal;
import java.util.List;

/** The units a length may be written in, with their spellings. */
enum LengthUnit {
  MILLIMETRE("1", "mm"),
  CENTIMETRE("10", "cm"),
  METRE("1000", "m"),
  // The international inch and foot, exact since 1959.
  INCH("25.4", "in", "\"", "inch", "inches"),
  FOOT("304.8", "ft", "'", "foot", "feet");

  private final BigDecimal millimetres;
  private final List<String> spellings;

  LengthUnit(String millimetres, String... spellings) {
    this.millimetres = new BigDecimal(millimetres);
    this.spellings = List.of(spellings);
  }

  BigDecimal millimetres() {
    return millimetres;
  }

  /** The unit of that spelling in lower case; the spelling must be one of the known ones. */
  static LengthUnit spelt(String spelling) {
    for (LengthUnit unit : values()) {
      if (unit.spellings.contains(spelling)) {
        return unit;
      }
    }
    throw new IllegalArgumentException("no unit is spelt " + spelling);
  }

  static LengthUnit of(Units units) {
    return units == Units.INCH ? INCH : MILLIMETRE;
  }
}
