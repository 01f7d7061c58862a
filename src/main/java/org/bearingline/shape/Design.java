package org.bearingline.shape;

import java.util.Map;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;

/** Something with known measures that a part can be drawn of. */
public interface Design {

  /** The finished piece. */
  Part part();

  /**
   * What an expression beside it may name.
   *
   * @param bareUnits the units of a bare length; empty to refuse one
   */
  Scope scope(Optional<Units> bareUnits);

  /** The values of everything in {@link #scope}. */
  Values named();

  /** Each measure that is a length, mm. */
  Map<String, Double> lengths();

  /** Each measure as written; for the card. */
  Map<String, String> settings();
}
