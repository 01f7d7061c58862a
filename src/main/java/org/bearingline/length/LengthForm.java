package org.bearingline.length;

import java.util.Objects;
import java.util.Optional;

/**
 * What a caller accepts as a length.
 *
 * @param bare the units of a number written without a unit; empty where such a number is refused
 * @param signed whether a leading plus or minus is accepted
 */
public record LengthForm(Optional<Units> bare, boolean signed) {

  /** Every number carries its unit and there is no sign. */
  public static final LengthForm WITH_UNITS = new LengthForm(Optional.empty(), false);

  public LengthForm {
    Objects.requireNonNull(bare);
  }

  /** The same form, with bare numbers read in {@code units}. */
  public LengthForm bareIn(Units units) {
    return new LengthForm(Optional.of(units), signed);
  }

  /** The same form, with a sign accepted. */
  public LengthForm withSign() {
    return new LengthForm(bare, true);
  }
}
