package org.bearingline.outside.scan;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What a maker says about a photo or scan.
 *
 * @param dpi pixels in an inch, 20 to 10,000; empty to go by the corner marks or what the file says
 * @param apart what was measured between loose corner marks; empty where the sheet is whole
 * @param speck mm: what is smaller than a disc of this diameter is dust, grain or a nail hole
 * @param tolerance mm that the outline is wanted true to; a scan too coarse for it is warned of
 * @param raised how far the photographed face lies above the marks
 */
public record ScanSettings(
    OptionalDouble dpi,
    Optional<MarksApart> apart,
    double speck,
    double tolerance,
    Optional<RaisedFace> raised) {

  /** mm: a hole for a panel pin is smaller, a hole for a screw or a pencil is not. */
  public static final double DEFAULT_SPECK = 2;

  /** mm: what a filed template and a sharp pencil line are good for. */
  public static final double DEFAULT_TOLERANCE = 0.1;

  public ScanSettings {
    Objects.requireNonNull(dpi);
    Objects.requireNonNull(apart);
    Objects.requireNonNull(raised);
    if (dpi.isPresent() && !(dpi.getAsDouble() >= 20 && dpi.getAsDouble() <= 10_000)) {
      throw new Problem(Place.option("--dpi"), "a scan has 20 to 10000 dpi, usually 300");
    }
    if (dpi.isPresent() && apart.isPresent()) {
      throw new Problem(
          Place.option("--dpi"),
          "the size comes from the corner marks or from the dpi; give --marks-apart or --dpi, not"
              + " both");
    }
    if (dpi.isPresent() && raised.isPresent()) {
      throw new Problem(
          Place.option("--face-above"),
          "this is for a photo with corner marks; on a scanner's glass nothing is raised");
    }
    if (!(speck >= 0 && speck <= 1000)) {
      throw new Problem(Place.option("--speck"), "a speck is 0 to 1000 mm across, usually 2 mm");
    }
    if (!(tolerance > 0) || !Double.isFinite(tolerance)) {
      throw new IllegalArgumentException("a tolerance is more than 0, got " + tolerance);
    }
  }

  /** Nothing said: the marks sheet whole in the picture, or the dpi of the file. */
  public static ScanSettings usual() {
    return new ScanSettings(
        OptionalDouble.empty(),
        Optional.empty(),
        DEFAULT_SPECK,
        DEFAULT_TOLERANCE,
        Optional.empty());
  }

  public ScanSettings withDpi(double pixelsPerInch) {
    return new ScanSettings(OptionalDouble.of(pixelsPerInch), apart, speck, tolerance, raised);
  }

  public ScanSettings withApart(MarksApart measured) {
    return new ScanSettings(dpi, Optional.of(measured), speck, tolerance, raised);
  }

  public ScanSettings withSpeck(double mm) {
    return new ScanSettings(dpi, apart, mm, tolerance, raised);
  }

  public ScanSettings withTolerance(double mm) {
    return new ScanSettings(dpi, apart, speck, mm, raised);
  }

  public ScanSettings withRaised(RaisedFace face) {
    return new ScanSettings(dpi, apart, speck, tolerance, Optional.of(face));
  }
}
