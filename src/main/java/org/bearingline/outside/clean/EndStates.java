package org.bearingline.outside.clean;

/**
 * How a run of tangent pieces is held at its ends.
 *
 * @param start the state in which it must start, or null where that is free
 * @param end the state in which it must end, or null where that is free
 * @param ring whether it must end as it starts
 */
record EndStates(TangentChain.State start, TangentChain.State end, boolean ring) {

  /** Free at both ends. */
  static final EndStates FREE = new EndStates(null, null, false);

  /** Once round. */
  static final EndStates RING = new EndStates(null, null, true);

  boolean areFree() {
    return start == null && end == null;
  }
}
