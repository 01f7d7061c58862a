package org.bearingline.routing;

/** Where the router is. */
public enum Station {
  /** In the hands, above the work. */
  HAND_HELD,
  /** Under a table, bit upward, below the work. */
  TABLE
}
