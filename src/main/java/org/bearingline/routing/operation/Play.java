package org.bearingline.routing.operation;

import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.Overlay;

/**
 * Plays a tool forward along a template edge. Outside: what remains is (T ⊕ D(R)) ⊖ D(r). In an
 * opening E: what is cut is (E ⊖ D(R)) ⊕ D(r). A plug cut inside an opening: what remains is E ⊖
 * D(R + r).
 */
final class Play {

  /** Taken off both radii, in mm, so that a bit exactly as wide as its slot enters it. */
  private static final double JUST_FITS = 1e-5;

  /** Edges nearer than this, in mm, are one edge to the hand. */
  private static final double SAME = 1e-3;

  /** What is smaller than this, in mm², is rounding and not wood. */
  private static final double CRUMB_AREA = 0.05;

  private Play() {}

  /** What remains inside an outer edge, or what is cut in an opening. */
  static Region cut(Loop edge, boolean outside, Tooling tool) {
    Region region = Region.of(Outline.of(edge));
    double follower = tool.follower().radius() - JUST_FITS;
    double cutter = tool.cutter().radius() - JUST_FITS;
    return outside
        ? Morphology.erode(Morphology.dilate(region, follower).region(), cutter).region()
        : Morphology.dilate(Morphology.erode(region, follower).region(), cutter).region();
  }

  /** The plug that stays when the bit has gone round inside an opening. */
  static Region plug(Loop edge, Tooling tool) {
    return Morphology.erode(
            Region.of(Outline.of(edge)), tool.follower().radius() + tool.cutter().radius())
        .region();
  }

  /** Whether one cut errs from the design nowhere that another does not err too. */
  static boolean isNoWorse(Region cut, Region than, Region design) {
    double left =
        Overlay.difference(Overlay.difference(cut, design), Overlay.difference(than, design))
            .area();
    double missing =
        Overlay.difference(Overlay.difference(design, cut), Overlay.difference(design, than))
            .area();
    return left + missing < CRUMB_AREA;
  }

  static boolean same(Region a, Region b) {
    return EdgeMatch.deviation(a, b) < SAME;
  }
}
