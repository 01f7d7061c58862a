package org.bearingline.routing.grain;

import org.bearingline.length.Length;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.Practice;

/**
 * How the fibres lie, and the limits between the classes of grain.
 *
 * @param fibreDegrees direction of the fibres, counter-clockwise from x; a half turn changes
 *     nothing
 * @param alongWithin fibres this near to the edge lie along it; degrees, 0 to 45
 * @param endGrainWithin fibres this near to square are end grain; degrees, 0 to 45
 * @param shortRatio wood whose length along the fibres is less than this share of its reach across
 *     them is short-grained; more than 0
 * @param leastReach limbs that reach less far across the fibres are let pass; mm, 0 or more
 * @param scanStep distance of the lines along which short grain is sought; mm, more than 0
 */
public record GrainSettings(
    double fibreDegrees,
    double alongWithin,
    double endGrainWithin,
    double shortRatio,
    double leastReach,
    double scanStep) {

  /** Fails with a {@link Problem} on figures out of range or without bound. */
  public GrainSettings {
    require(Double.isFinite(fibreDegrees), "grain", "the direction of the fibres in degrees");
    require(alongWithin >= 0 && alongWithin <= 45, "along-within", "an angle from 0 to 45 degrees");
    require(
        endGrainWithin >= 0 && endGrainWithin <= 45,
        "end-grain-within",
        "an angle from 0 to 45 degrees");
    require(shortRatio > 0 && shortRatio <= 100, "short-ratio", "a ratio above 0 and up to 100");
    require(leastReach >= 0 && leastReach <= Length.LARGEST, "least-reach", "a length from 0");
    require(scanStep >= 0.01 && scanStep <= Length.LARGEST, "scan-step", "a length above 0.01 mm");
  }

  private static void require(boolean fine, String field, String wanted) {
    if (!fine) {
      throw new Problem(Place.field(field), wanted + " is wanted here");
    }
  }

  /** Fibres along x and the limits of the table. */
  public static GrainSettings usual() {
    Practice limits = GrainLimits.shipped();
    return new GrainSettings(
        0,
        limits.number("along-within"),
        limits.number("end-grain-within"),
        limits.number("short-ratio"),
        limits.mm("least-reach"),
        limits.mm("scan-step"));
  }

  public GrainSettings withFibres(double degrees) {
    return new GrainSettings(
        degrees, alongWithin, endGrainWithin, shortRatio, leastReach, scanStep);
  }

  public GrainSettings withLimits(double along, double endGrain) {
    return new GrainSettings(fibreDegrees, along, endGrain, shortRatio, leastReach, scanStep);
  }

  public GrainSettings withShortGrain(double ratio, double reach, double step) {
    return new GrainSettings(fibreDegrees, alongWithin, endGrainWithin, ratio, reach, step);
  }
}
