package org.bearingline.oracle;

import java.util.Locale;

/**
 * The worst of many samples.
 *
 * @param worst mm
 * @param x where
 * @param y where
 * @param samples how many were judged
 */
public record Deviation(double worst, double x, double y, int samples) {

  static final Deviation NONE = new Deviation(0, 0, 0, 0);

  Deviation with(double error, double atX, double atY) {
    // NaN must not pass for small.
    return error <= worst
        ? new Deviation(worst, x, y, samples + 1)
        : new Deviation(error, atX, atY, samples + 1);
  }

  Deviation and(Deviation other) {
    Deviation worse = other.worst <= worst ? this : other;
    return new Deviation(worse.worst, worse.x, worse.y, samples + other.samples);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.3e mm at (%.7f, %.7f), %d samples", worst, x, y, samples);
  }
}
