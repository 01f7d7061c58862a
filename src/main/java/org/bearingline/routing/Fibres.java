package org.bearingline.routing;

import org.bearingline.outline.Point;

/** Which way a panel's fibres run in its frame. */
public enum Fibres {
  /** Up and down, as in a door: the panel moves between the stiles. */
  UPRIGHT,
  /** From side to side, as in a low and wide panel: it moves between the rails. */
  LEVEL;

  /** Unit vector across the fibres, the way the panel swells and shrinks. */
  public Point across() {
    return this == UPRIGHT ? new Point(1, 0) : new Point(0, 1);
  }
}
