package org.bearingline.outline.offset;

import org.bearingline.outline.Region;

/**
 * Dilation, erosion, closing and opening of a region by a disc, exact in lines and arcs. Every
 * result is checked before it is handed on.
 */
public final class Morphology {

  private Morphology() {}

  /** region ⊕ D(radius): all points no farther than {@code radius} ≥ 0 mm from the region. */
  public static OffsetResult dilate(Region region, double radius) {
    throw new UnsupportedOperationException();
  }

  /** region ⊖ D(radius): all points whose disc of {@code radius} ≥ 0 mm lies in the region. */
  public static OffsetResult erode(Region region, double radius) {
    throw new UnsupportedOperationException();
  }

  /** (region ⊕ D) ⊖ D: fills what a disc cannot enter from outside; covers the region. */
  public static OffsetResult close(Region region, double radius) {
    throw new UnsupportedOperationException();
  }

  /** (region ⊖ D) ⊕ D: takes off what a disc cannot enter from inside; covered by the region. */
  public static OffsetResult open(Region region, double radius) {
    throw new UnsupportedOperationException();
  }
}
