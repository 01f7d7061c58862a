package org.bearingline.outside.clean;

/**
 * Samples that lie along one straight or circle.
 *
 * @param from the first sample
 * @param to the last sample, more than {@code from}
 * @param carrier what they lie along
 * @param drawn whether the carrier is exactly what was drawn
 */
record Stretch(int from, int to, Carrier carrier, boolean drawn) {

  boolean isStraight() {
    return carrier.curvature() == 0;
  }
}
