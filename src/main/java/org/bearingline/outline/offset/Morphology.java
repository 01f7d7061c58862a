package org.bearingline.outline.offset;

import java.util.Optional;
import org.bearingline.outline.Region;
import org.bearingline.problem.CutOff;

/**
 * Dilation, erosion, closing and opening of a region by a disc, exact in lines and arcs. Every
 * result is checked before it is handed on.
 *
 * <p>Discs are closed: a slot or hole exactly as wide as the disc counts as one the disc does not
 * enter, and its closing fills it. Who wants an exact fit to pass takes a disc smaller by a
 * thousandth of a millimetre.
 */
public final class Morphology {

  enum Operation {
    DILATE,
    ERODE,
    CLOSE,
    OPEN
  }

  /** Where points lie within rounding of each other, telling them apart less finely helps. */
  private static final int TRIES = 3;

  private Morphology() {}

  /** region ⊕ D(radius): all points no farther than {@code radius} ≥ 0 mm from the region. */
  public static OffsetResult dilate(Region region, double radius) {
    return run(Operation.DILATE, region, radius);
  }

  /** region ⊖ D(radius): all points whose disc of {@code radius} ≥ 0 mm lies in the region. */
  public static OffsetResult erode(Region region, double radius) {
    return run(Operation.ERODE, region, radius);
  }

  /** (region ⊕ D) ⊖ D: fills what a disc cannot enter from outside; covers the region. */
  public static OffsetResult close(Region region, double radius) {
    return run(Operation.CLOSE, region, radius);
  }

  /** (region ⊖ D) ⊕ D: takes off what a disc cannot enter from inside; covered by the region. */
  public static OffsetResult open(Region region, double radius) {
    return run(Operation.OPEN, region, radius);
  }

  private static OffsetResult run(Operation operation, Region region, double radius) {
    if (!(radius >= 0) || !Double.isFinite(radius)) {
      throw new IllegalArgumentException("a disc needs a radius of 0 or more, got " + radius);
    }
    if (region.isEmpty() || radius == 0) {
      return new OffsetResult(region, 0, Optional.empty());
    }
    CutOff.check();
    Frame frame = Frame.of(region, radius);
    Unproven failure = null;
    for (int i = 0; i < TRIES; i++) {
      try {
        Region result = exactly(operation, new ExactWay(region, frame), radius);
        return new OffsetResult(result, frame.promise(), Optional.empty());
      } catch (Unproven unproven) {
        failure = failure == null ? unproven : failure;
        frame = frame.coarser();
      }
    }
    return new FallBack(region, radius).run(operation, failure);
  }

  private static Region exactly(Operation operation, ExactWay exact, double radius)
      throws Unproven {
    return switch (operation) {
      case DILATE -> exact.dilate(radius);
      case ERODE -> exact.erode(radius);
      case CLOSE -> exact.close(radius);
      case OPEN -> exact.open(radius);
    };
  }
}
