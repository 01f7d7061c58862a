package org.bearingline.outside.scan;

import java.util.Arrays;
import org.bearingline.outline.Point;

/**
 * A closed edge in pixels, the template on its left as seen on the picture.
 *
 * @param xs pixels to the right
 * @param ys pixels downwards
 * @param atRim whether it runs along the end of what is looked at
 * @param atMark whether it runs along a corner mark
 */
record TracedLoop(double[] xs, double[] ys, boolean atRim, boolean atMark) {

  int size() {
    return xs.length;
  }

  Point point(int i) {
    int at = Math.floorMod(i, xs.length);
    return new Point(xs[at], ys[at]);
  }

  /** Pixels²: positive round the template, negative round an opening. */
  double area() {
    double twice = 0;
    for (int i = 0; i < xs.length; i++) {
      int next = (i + 1) % xs.length;
      twice += xs[next] * ys[i] - xs[i] * ys[next];
    }
    return twice / 2;
  }

  /** Whether a place lies inside, by counting edges to its right. */
  boolean surrounds(Point place) {
    boolean inside = false;
    for (int i = 0; i < xs.length; i++) {
      int next = (i + 1) % xs.length;
      if (ys[i] <= place.y() != ys[next] <= place.y()) {
        double x = xs[i] + (xs[next] - xs[i]) * (place.y() - ys[i]) / (ys[next] - ys[i]);
        inside ^= x > place.x();
      }
    }
    return inside;
  }

  /** Whether it runs along two sides of the picture that meet, as a template hardly ever does. */
  boolean reachesCorner(GreyImage image) {
    double[] box = box();
    boolean beside = box[0] < 1 || box[2] > image.width() - 2;
    boolean above = box[1] < 1 || box[3] > image.height() - 2;
    return atRim && beside && above;
  }

  double[] box() {
    return new double[] {
      Arrays.stream(xs).min().orElseThrow(),
      Arrays.stream(ys).min().orElseThrow(),
      Arrays.stream(xs).max().orElseThrow(),
      Arrays.stream(ys).max().orElseThrow()
    };
  }
}
