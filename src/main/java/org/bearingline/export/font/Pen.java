package org.bearingline.export.font;

/** Receives the outlines of letters, in mm, y up. Areas follow the non-zero winding rule. */
public interface Pen {

  void moveTo(double x, double y);

  void lineTo(double x, double y);

  /** A quadratic curve by its control point and end, as TrueType outlines have them. */
  void quadTo(double cx, double cy, double x, double y);

  /** Closes the present contour. */
  void close();
}
