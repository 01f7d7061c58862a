package org.bearingline.routing.setup;

import org.bearingline.length.Units;
import org.bearingline.routing.Practice;

/**
 * The router's base and the clamp; mm.
 *
 * @param baseDiameter of a round base, or the circle round a base of another form
 * @param clearance kept between base and clamp
 * @param pad diameter of the clamp's foot, or width of a strip of tape
 */
public record ClampSettings(double baseDiameter, double clearance, double pad) {

  /** Fails with a {@link org.bearingline.problem.Problem} on lengths that cannot be. */
  public ClampSettings {
    Checks.above0("base", baseDiameter);
    Checks.from0("clearance", clearance);
    Checks.above0("pad", pad);
  }

  /** The usual sizes of the table. */
  public static ClampSettings usual() {
    return usual(Units.INCH);
  }

  /** The same, round in the units the maker thinks in. */
  public static ClampSettings usual(Units units) {
    Practice practice = SetupPractice.shipped();
    return new ClampSettings(
        practice.mm("base-diameter", units),
        practice.mm("clamp-clearance", units),
        practice.mm("clamp-pad", units));
  }

  public ClampSettings withBase(double diameter) {
    return new ClampSettings(diameter, clearance, pad);
  }
}
