package org.bearingline.outline.construct;

import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/** A drawn half completed by its mirror image in a straight axis. */
public final class MirroredHalf {

  private MirroredHalf() {}

  /**
   * The half followed by its mirror image: one chain. The half must end on the axis through p and
   * q; where a piece crosses the axis at right angles it and its image become one piece.
   */
  public static Path complete(Path half, Point p, Point q) {
    throw new UnsupportedOperationException();
  }

  /** The closed loop of a half that starts and ends on the axis. */
  public static Loop close(Path half, Point p, Point q) {
    throw new UnsupportedOperationException();
  }
}
