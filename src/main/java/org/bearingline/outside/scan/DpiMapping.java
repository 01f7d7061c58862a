package org.bearingline.outside.scan;

import org.bearingline.outline.Point;

/**
 * A flatbed scan: square to the glass, its rows lying as the file's orientation says.
 *
 * @param width of the picture, pixels
 * @param height of the picture, pixels
 * @param mmX a pixel along a row
 * @param mmY a pixel along a column
 * @param orientation 1 to 8 (TIFF 6.0, tag 274)
 */
record DpiMapping(int width, int height, double mmX, double mmY, int orientation)
    implements Mapping {

  @Override
  public Point toMm(double x, double y) {
    double right = (x + 0.5) * mmX;
    double left = (width - 0.5 - x) * mmX;
    double down = (y + 0.5) * mmY;
    double up = (height - 0.5 - y) * mmY;
    return switch (orientation) {
      case 1 -> new Point(right, up);
      case 2 -> new Point(left, up);
      case 3 -> new Point(left, down);
      case 4 -> new Point(right, down);
      case 5 -> new Point(down, left);
      case 6 -> new Point(up, left);
      case 7 -> new Point(up, right);
      case 8 -> new Point(down, right);
      default -> throw new IllegalStateException("no such orientation: " + orientation);
    };
  }
}
