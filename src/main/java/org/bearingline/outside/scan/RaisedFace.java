package org.bearingline.outside.scan;

import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * A template whose photographed face lies above the marks: nearer the camera, it looks larger and
 * moved away from the point under the lens.
 *
 * @param above mm of the face above the marks, such as the template's thickness; 0 to 200
 * @param camera mm of the lens above the marks, at least three times {@code above}
 */
public record RaisedFace(double above, double camera) {

  public RaisedFace {
    if (!(above >= 0 && above <= 200)) {
      throw new Problem(
          Place.option("--face-above"), "the face lies 0 to 200 mm above the marks, not farther");
    }
    if (!(camera >= 3 * above && camera > 0 && camera <= 20_000)) {
      throw new Problem(
          Place.option("--camera-above"),
          "give how far the lens was above the marks, more than three times what the face is above"
              + " them and no more than 20 m");
    }
  }
}
