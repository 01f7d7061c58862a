package org.bearingline.job;

import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;

/** Where the centre lines of a part cross: those marked on it, else the middles of its outline. */
final class CentreLines {

  /** A line is upright or level where its ends agree to this, in mm. */
  private static final double STRAIGHT = 1e-6;

  private CentreLines() {}

  static Point crossing(Part part) {
    Bounds box = part.contour().loop().bounds();
    double x = box.center().x();
    double y = box.center().y();
    boolean upright = false;
    boolean level = false;
    for (Mark mark : part.marks()) {
      if (mark instanceof Mark.CentreLine line) {
        if (!upright && Math.abs(line.from().x() - line.to().x()) < STRAIGHT) {
          x = line.from().x();
          upright = true;
        }
        if (!level && Math.abs(line.from().y() - line.to().y()) < STRAIGHT) {
          y = line.from().y();
          level = true;
        }
      }
    }
    return new Point(x, y);
  }
}
