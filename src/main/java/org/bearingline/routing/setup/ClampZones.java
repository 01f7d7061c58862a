package org.bearingline.routing.setup;

import java.util.List;
import java.util.Objects;
import org.bearingline.length.Units;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;

/**
 * (S \ (K ⊕ D(b + c))) ∘ D(f): where on the surface S that the router's base slides over a clamp's
 * foot of radius f may stand, K being the paths of the cutter's centre, b the base's radius and c
 * the clearance; ∘ is the opening, which leaves out what is too narrow for the foot.
 *
 * @param settings base, clearance and foot
 * @param zones the largest first
 * @param sentences for the card
 */
public record ClampZones(ClampSettings settings, List<ClampZone> zones, List<String> sentences) {

  public ClampZones {
    Objects.requireNonNull(settings);
    zones = List.copyOf(zones);
    sentences = List.copyOf(sentences);
  }

  /**
   * The zones.
   *
   * @param surface the template, or the blank where the template lies under it
   * @param cutterCentre the cutter's paths, run-out included
   */
  public static ClampZones of(
      Outline surface, List<Path> cutterCentre, ClampSettings settings, Units units) {
    return new ClampZoneMaker(surface, cutterCentre, settings, units).zones();
  }
}
