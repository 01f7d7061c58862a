package org.bearingline.part;

/** How a stretch of the part's edge comes about. */
public enum EdgeKind {
  /** Shaped along the template. */
  ROUTED,
  /**
   * A straight reference edge made at the saw or jointer: never routed, it locates the template.
   */
  SAWN
}
