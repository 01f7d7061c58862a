package org.bearingline.outside.scan;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * A pinhole camera over a table, by the textbook's equations.
 *
 * @param width of the picture, pixels
 * @param height of the picture, pixels
 * @param focal length in pixels
 * @param x mm of the lens over the table's plane
 * @param y mm of the lens
 * @param z mm of the lens above the table
 * @param nod degrees it looks upwards from straight down
 * @param lean degrees it looks to the right from straight down
 * @param roll degrees it is turned about its own axis
 */
record Camera(
    int width,
    int height,
    double focal,
    double x,
    double y,
    double z,
    double nod,
    double lean,
    double roll) {

  /** The same camera moved so that this place of the table is in the middle of its picture. */
  Camera lookingAt(double atX, double atY) {
    double[] ahead = turned(0, 0, -1);
    double far = z / -ahead[2];
    return new Camera(
        width, height, focal, atX - far * ahead[0], atY - far * ahead[1], z, nod, lean, roll);
  }

  /** From straight pixels to mm of the table, nine numbers. */
  double[] back() {
    double[] right = turned(1, 0, 0);
    double[] down = turned(0, -1, 0);
    double[] ahead = turned(0, 0, -1);
    double[] view = new double[9];
    double[][] rows = {right, down, ahead};
    for (int row = 0; row < 3; row++) {
      view[3 * row] = rows[row][0];
      view[3 * row + 1] = rows[row][1];
      view[3 * row + 2] = -(rows[row][0] * x + rows[row][1] * y + rows[row][2] * z);
    }
    double[] pixels = new double[9];
    for (int column = 0; column < 3; column++) {
      pixels[column] = focal * view[column] + (width - 1) / 2.0 * view[6 + column];
      pixels[3 + column] = focal * view[3 + column] + (height - 1) / 2.0 * view[6 + column];
      pixels[6 + column] = view[6 + column];
    }
    DMatrixRMaj back = new DMatrixRMaj(3, 3);
    CommonOps_DDRM.invert(new DMatrixRMaj(3, 3, true, pixels), back);
    return back.data;
  }

  private double[] turned(double ax, double ay, double az) {
    double r = Math.toRadians(roll);
    double x1 = Math.cos(r) * ax - Math.sin(r) * ay;
    double y1 = Math.sin(r) * ax + Math.cos(r) * ay;
    double n = Math.toRadians(nod);
    double y2 = Math.cos(n) * y1 - Math.sin(n) * az;
    double z2 = Math.sin(n) * y1 + Math.cos(n) * az;
    double l = Math.toRadians(-lean);
    return new double[] {
      Math.cos(l) * x1 + Math.sin(l) * z2, y2, -Math.sin(l) * x1 + Math.cos(l) * z2
    };
  }
}
