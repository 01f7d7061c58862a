package org.bearingline.outside.clean;

import java.util.Objects;
import java.util.OptionalDouble;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What a maker may ask of the cleaning.
 *
 * @param tolerance how far, in mm, the clean line may lie from the drawn one; where a sketch says
 *     that its own noise is larger, that counts instead
 * @param gap mm over which loose ends are joined
 * @param width mm the whole drawing is to be wide; alone it keeps the proportions
 * @param height mm the whole drawing is to be high; alone it keeps the proportions
 * @param symmetric the centre line in which the outline becomes its own mirror image
 * @param unite whether filled shapes that lie over or against each other become one
 * @param sharpCorner degrees: a joint that turns by less may be made tangent, where the tolerance
 *     allows; in (0, 90)
 */
public record CleaningSettings(
    double tolerance,
    double gap,
    OptionalDouble width,
    OptionalDouble height,
    CenterLine symmetric,
    boolean unite,
    double sharpCorner) {

  /** mm over which loose ends are joined unless another is asked for: what a pencil misses by. */
  public static final double DEFAULT_GAP = 0.1;

  /** Degrees under which a joint may be meant smooth. */
  public static final double DEFAULT_SHARP_CORNER = 10;

  public CleaningSettings {
    Objects.requireNonNull(symmetric);
    require(tolerance >= 1e-4 && tolerance <= 10, "--tolerance", "from 0.0001 mm to 10 mm");
    require(gap >= 0 && gap <= 1000, "--gap", "from 0 to 1000 mm");
    require(width.isEmpty() || isSize(width.getAsDouble()), "--width", "from 0.1 mm to 100 m");
    require(height.isEmpty() || isSize(height.getAsDouble()), "--height", "from 0.1 mm to 100 m");
    if (!(sharpCorner > 0 && sharpCorner < 90)) {
      throw new IllegalArgumentException("a sharp corner turns by 0° to 90°, got " + sharpCorner);
    }
  }

  /**
   * Tolerance 0.02 mm, gap 0.1 mm, the drawing's own size, no symmetry, nothing united, corners
   * from 10°.
   */
  public static CleaningSettings usual() {
    return new CleaningSettings(
        CurveFit.DEFAULT_TOLERANCE,
        DEFAULT_GAP,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        CenterLine.NONE,
        false,
        DEFAULT_SHARP_CORNER);
  }

  public CleaningSettings withTolerance(double mm) {
    return new CleaningSettings(mm, gap, width, height, symmetric, unite, sharpCorner);
  }

  public CleaningSettings withSize(OptionalDouble newWidth, OptionalDouble newHeight) {
    return new CleaningSettings(tolerance, gap, newWidth, newHeight, symmetric, unite, sharpCorner);
  }

  public CleaningSettings withSymmetry(CenterLine line) {
    return new CleaningSettings(tolerance, gap, width, height, line, unite, sharpCorner);
  }

  /** The same, with filled shapes united. */
  public CleaningSettings uniting() {
    return new CleaningSettings(tolerance, gap, width, height, symmetric, true, sharpCorner);
  }

  private static boolean isSize(double mm) {
    return mm >= 0.1 && mm <= 100_000;
  }

  private static void require(boolean holds, String option, String range) {
    if (!holds) {
      throw new Problem(
          Place.option(option), "a " + option.substring(2) + " " + range + " is wanted");
    }
  }
}
