package org.bearingline.cutlist;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.routing.RoutingResult;

/**
 * A part of a job as the cut list needs it.
 *
 * @param result what routing found of it; its settings give allowance and thickness
 * @param quantity how many of the part, 1 or more
 * @param grainDegrees direction of the fibres in the part's drawing, 0 along x
 * @param grainMatters whether the blank must lie along the fibres
 * @param material such as a species; empty where not told
 * @param templateMaterial what templates are made of; empty where not told
 * @param templateThickness of their stock, mm; empty where any will do
 */
public record Ordered(
    RoutingResult result,
    int quantity,
    double grainDegrees,
    boolean grainMatters,
    Optional<String> material,
    Optional<String> templateMaterial,
    OptionalDouble templateThickness) {

  public Ordered {
    Objects.requireNonNull(result);
    Objects.requireNonNull(material);
    Objects.requireNonNull(templateMaterial);
    templateThickness.ifPresent(mm -> Sizes.check("template-thickness", mm));
    Sizes.checkCount(quantity);
  }

  /** With its fibres along x, and templates of any sheet. */
  public static Ordered of(RoutingResult result, int quantity, Optional<String> material) {
    return new Ordered(
        result, quantity, 0, true, material, Optional.empty(), OptionalDouble.empty());
  }
}
