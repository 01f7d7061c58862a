package org.bearingline.outline.construct;

/**
 * A segment of a circle: what an arc and its chord enclose. Formulas as in the tables of circular
 * segments of engineering handbooks.
 *
 * @param radius mm, more than 0
 * @param angle degrees at the centre, more than 0, at most 360
 */
public record CircleSegment(double radius, double angle) {

  public CircleSegment {
    Sizes.requirePositive("radius", radius);
    Sizes.requireTurn("angle of the arc", angle, 360);
  }

  /** By chord and rise in mm: r = (c² + 4 h²) / (8 h), angle = 4 atan(2 h / c). */
  public static CircleSegment ofChordAndRise(double chord, double rise) {
    Sizes.requirePositive("chord", chord);
    Sizes.requirePositive("rise", rise);
    return new CircleSegment(
        (chord * chord + 4 * rise * rise) / (8 * rise),
        Math.toDegrees(4 * Math.atan2(2 * rise, chord)));
  }

  /** By radius and rise in mm; the rise is at most the diameter. */
  public static CircleSegment ofRadiusAndRise(double radius, double rise) {
    Sizes.requirePositive("radius", radius);
    Sizes.requirePositive("rise", rise);
    if (rise > 2 * radius) {
      throw Sizes.refusal(
          "a rise of %s is more than the circle has; at most %s"
              .formatted(Sizes.about(rise), Sizes.atMost(2 * radius)));
    }
    return new CircleSegment(
        radius, Math.toDegrees(4 * Math.atan2(Math.sqrt(rise), Math.sqrt(2 * radius - rise))));
  }

  /** By radius and chord in mm, the shorter way round; the chord is at most the diameter. */
  public static CircleSegment ofRadiusAndChord(double radius, double chord) {
    Sizes.requirePositive("radius", radius);
    Sizes.requirePositive("chord", chord);
    if (chord > 2 * radius) {
      throw Sizes.refusal(
          "a radius of %s does not span %s; it must be at least %s"
              .formatted(Sizes.about(radius), Sizes.about(chord), Sizes.atLeast(chord / 2)));
    }
    return new CircleSegment(radius, Math.toDegrees(2 * Math.asin(chord / (2 * radius))));
  }

  /** Straight distance in mm between the ends of the arc. */
  public double chord() {
    return 2 * radius * Math.sin(Math.toRadians(angle) / 2);
  }

  /** Height in mm of the arc's middle above the chord. */
  public double rise() {
    double quarter = Math.sin(Math.toRadians(angle) / 4);
    return 2 * radius * quarter * quarter;
  }

  /** Length in mm along the arc. */
  public double arcLength() {
    return radius * Math.toRadians(angle);
  }

  /** Area in mm² between arc and chord. */
  public double area() {
    double radians = Math.toRadians(angle);
    return radius * radius * (radians - Math.sin(radians)) / 2;
  }
}
