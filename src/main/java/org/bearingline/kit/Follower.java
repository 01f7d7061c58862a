package org.bearingline.kit;

/** What rides the template: a bearing on the bit, or a collar fixed to the router's base. */
public sealed interface Follower {

  /** Outside diameter in mm, more than 0. */
  double diameter();

  default double radius() {
    return diameter() / 2;
  }

  /** The trade's word: bearing or collar. */
  String kind();

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

  /** A guide collar on the base; the bit passes through it, so it is wider than the cutter. */
  record Collar(double diameter) implements Follower {
    public Collar {
      check(diameter);
    }

    @Override
    public String kind() {
      return "collar";
    }
  }

  private static void check(double diameter) {
    if (!(diameter > 0) || !Double.isFinite(diameter)) {
      throw new IllegalArgumentException("a follower has a positive diameter, got " + diameter);
    }
  }
}
