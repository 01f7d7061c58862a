package org.bearingline.routing.setup;

/** What the follower rides in a pass. */
public enum Riding {
  /** The template's edge. */
  TEMPLATE,
  /** The edge already routed, the template taken off. */
  ROUTED_EDGE,
  /** The edge already routed, the work turned over, with the bearing at the bit's tip. */
  ROUTED_EDGE_TURNED
}
