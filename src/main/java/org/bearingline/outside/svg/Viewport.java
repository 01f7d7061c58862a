package org.bearingline.outside.svg;

/**
 * What percentages are of.
 *
 * @param width in user units; not a number where nothing says it
 * @param height in user units; not a number where nothing says it
 */
record Viewport(double width, double height) {

  /** Of a drawing that says nothing of its size. */
  static final Viewport UNKNOWN = new Viewport(Double.NaN, Double.NaN);

  double whole(SvgLength.Of of) {
    return switch (of) {
      case WIDTH -> width;
      case HEIGHT -> height;
      // SVG 1.1, section 7.10: the diagonal over the root of 2.
      case BOTH -> Math.sqrt((width * width + height * height) / 2);
    };
  }
}
