package org.bearingline.outside.clean;

import java.util.List;

/**
 * What a course is fitted with.
 *
 * @param carriers finds the straights and circles along its samples
 * @param joints tells its corners
 * @param tolerance mm
 * @param sharpDegrees degrees from which a joint is a corner
 */
record Fitting(
    Course course, CarrierFit carriers, Joints joints, double tolerance, double sharpDegrees) {

  static Fitting of(Course course, double tolerance, double sharpDegrees) {
    CarrierFit carriers = new CarrierFit(course);
    return new Fitting(course, carriers, new Joints(course, sharpDegrees), tolerance, sharpDegrees);
  }

  /** The same course, another tolerance asked for. */
  Fitting asking(double other) {
    return new Fitting(course, carriers, joints, other, sharpDegrees);
  }

  /** Cuts the course into stretches that keep to a share of the tolerance. */
  Segmentation cut(double share) {
    return new Segmentation(course, carriers, share * tolerance);
  }

  boolean isCorner(Stretch before, Stretch after) {
    return joints.isCorner(before, after, tolerance);
  }

  Window window(List<Stretch> stretches) {
    return new Window(this, stretches);
  }
}
