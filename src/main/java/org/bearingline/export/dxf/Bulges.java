package org.bearingline.export.dxf;

import org.bearingline.outline.Arc;

/**
 * The bulge of an arc for an LWPOLYLINE: the tangent of a quarter of its included angle, positive
 * where it turns left (DXF Reference, LWPOLYLINE, group code 42).
 */
final class Bulges {

  /** Above this share of the diameter, the chord says little about the angle. */
  private static final double LONG_CHORD = 0.9;

  private Bulges() {}

  /**
   * The bulge with which a reader finds the arc's radius. A reader works the radius out from the
   * chord, so the rounding of the ends of a short arc counts many times over; the bulge is
   * therefore taken from chord and radius. Near half a turn that would be badly conditioned, while
   * there the radius hardly hangs on the angle, and the angle is taken.
   */
  static double of(Arc arc) {
    double chord = arc.start().distanceTo(arc.end());
    double diameter = 2 * arc.radius();
    if (chord == 0 || chord > LONG_CHORD * diameter) {
      return arc.bulge();
    }
    double root = Math.sqrt((diameter - chord) * (diameter + chord));
    double shallow = chord / (diameter + root);
    double size = Math.abs(arc.sweep()) < 180 ? shallow : 1 / shallow;
    return arc.isCounterClockwise() ? size : -size;
  }
}
