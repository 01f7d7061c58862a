package org.bearingline.kit;

import java.util.Objects;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * A slot cutter on its bearing. It cuts (D − B)/2 deep, D and B being the diameters of cutter and
 * bearing, measured square to the edge that the bearing rides.
 *
 * @param cutter the disc of teeth
 * @param bearing narrower than the cutter
 * @param thickness of the slot it cuts, mm, more than 0
 */
public record SlotCutter(Cutter cutter, Follower.Bearing bearing, double thickness) {

  /** Fails with a {@link Problem} on a bearing no narrower than the cutter, or on no thickness. */
  public SlotCutter {
    Objects.requireNonNull(cutter);
    Objects.requireNonNull(bearing);
    if (!(bearing.diameter() < cutter.diameter())) {
      throw new Problem(
          Place.field("bearing"),
          "a slot cutter on a bearing no narrower than itself cuts no groove; choose a smaller"
              + " bearing");
    }
    if (!(thickness > 0) || !Double.isFinite(thickness)) {
      throw new Problem(
          Place.field("thickness"), "a slot cutter needs the thickness of its slot, more than 0");
    }
  }

  /** mm from the edge that the bearing rides to the floor of the groove. */
  public double depth() {
    return cutter.radius() - bearing.radius();
  }
}
