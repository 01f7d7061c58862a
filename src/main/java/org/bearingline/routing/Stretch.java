package org.bearingline.routing;

/** What a piece of a run-on edge is. */
enum Stretch {
  /** The part's own edge, shaped along the template. */
  ROUTED,
  /** The straight on which the follower enters and leaves. */
  RUN_OUT,
  /** Behind the sawn edges: nothing follows it. */
  BACKING;

  boolean isFollowed() {
    return this != BACKING;
  }
}
