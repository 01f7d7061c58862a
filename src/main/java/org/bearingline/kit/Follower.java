package org.bearingline.kit;

import java.util.OptionalDouble;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** What rides the template: a bearing on the bit, or a collar fixed to the router's base. */
public sealed interface Follower {

  /** Outside diameter in mm, more than 0. */
  double diameter();

  default double radius() {
    return diameter() / 2;
  }

  /** The trade's word: bearing or collar. */
  String kind();

  /** The bearing that copies the template's edge as it is: as wide as the cutter. */
  static Bearing flush(Cutter cutter) {
    return new Bearing(cutter.diameter());
  }

  /** A bearing on the bit's shank or tip. */
  record Bearing(double diameter) implements Follower {
    public Bearing {
      check(diameter);
    }

    @Override
    public String kind() {
      return "bearing";
    }
  }

  /**
   * A guide collar on the base; the bit passes through it, so it is wider than the cutter.
   *
   * @param diameter outside, mm
   * @param insideDiameter mm; empty where it is not known
   * @param tube mm that its tube hangs below the base; empty where it is not known
   */
  record Collar(double diameter, OptionalDouble insideDiameter, OptionalDouble tube)
      implements Follower {
    public Collar {
      check(diameter);
      if (insideDiameter.isPresent()
          && !(insideDiameter.getAsDouble() > 0 && insideDiameter.getAsDouble() < diameter)) {
        throw new Problem(
            Place.field("collar"),
            "a collar's inside diameter is more than 0 and less than its outside; measure both");
      }
    }

    public Collar(double diameter, OptionalDouble insideDiameter) {
      this(diameter, insideDiameter, OptionalDouble.empty());
    }

    public Collar(double diameter) {
      this(diameter, OptionalDouble.empty());
    }

    @Override
    public String kind() {
      return "collar";
    }
  }

  private static void check(double diameter) {
    if (!(diameter > 0) || !Double.isFinite(diameter)) {
      throw new Problem(
          Place.field("follower"),
          "a bearing or collar needs a diameter above 0; give its outside diameter");
    }
  }
}
