package org.bearingline.routing.family;

import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.routing.RoutingResult;

/** Finds parts that share a curve. */
public final class Families {

  /**
   * Curves whose points lie nearer than this, in mm, are the same: a thousandth of an inch, below
   * what a bearing leaves.
   */
  public static final double TOLERANCE = 0.0254;

  private Families() {}

  /** Families of two parts or more, in the order of their first part. */
  public static List<Family> of(List<RoutingResult> parts, Units units) {
    throw new UnsupportedOperationException("being written");
  }
}
