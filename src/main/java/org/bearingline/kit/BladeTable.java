package org.bearingline.kit;

/** Band-saw blade widths and the tightest curve each turns. */
public final class BladeTable {

  private BladeTable() {}

  static BladeTable shipped() {
    throw new UnsupportedOperationException();
  }

  double smallestRadius(double width) {
    throw new UnsupportedOperationException();
  }
}
