package org.bearingline.outline.offset;

import org.bearingline.outline.Region;

/** Union, intersection and difference of regions of lines and arcs. */
public final class Overlay {

  private Overlay() {}

  public static Region union(Region a, Region b) {
    throw new UnsupportedOperationException();
  }

  public static Region intersection(Region a, Region b) {
    throw new UnsupportedOperationException();
  }

  /** a without b. */
  public static Region difference(Region a, Region b) {
    throw new UnsupportedOperationException();
  }
}
