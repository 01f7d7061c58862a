package org.bearingline.outline;

/** Trigonometry in degrees, exact at the multiples of 90° that furniture is full of. */
public final class Degrees {

  private Degrees() {}

  public static double cos(double degrees) {
    return sin(degrees + 90);
  }

  public static double sin(double degrees) {
    double turn = degrees % 360;
    if (turn % 90 == 0) {
      int quarter = (int) (turn / 90);
      return switch (Math.floorMod(quarter, 4)) {
        case 1 -> 1;
        case 3 -> -1;
        default -> 0;
      };
    }
    return Math.sin(Math.toRadians(turn));
  }

  /** The direction of a vector, in (-180, 180]. */
  public static double of(Point vector) {
    double degrees = Math.toDegrees(Math.atan2(vector.y(), vector.x()));
    return degrees == -180 ? 180 : degrees;
  }

  /** The same direction in [0, 360). */
  public static double normalised(double degrees) {
    double turn = degrees % 360;
    double positive = turn < 0 ? turn + 360 : turn;
    return positive >= 360 ? 0 : positive;
  }
}
