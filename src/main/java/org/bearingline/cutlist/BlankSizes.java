package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Template;

/** The blank of a part: its box with wood for the bit to take on routed sides. */
final class BlankSizes {

  private BlankSizes() {}

  static Blank ofPart(Ordered ordered) {
    RoutingResult result = ordered.result();
    Part part = result.part();
    Bounds box = BlankBox.of(part.contour().transformed(alongGrain(ordered)), allowance(ordered));
    return new Blank(
        part.name(),
        Purpose.PART,
        box.width(),
        box.height(),
        result.settings().thickness(),
        ordered.material(),
        ordered.quantity(),
        !ordered.grainMatters());
  }

  private static double allowance(Ordered ordered) {
    return ordered.result().settings().allowance();
  }

  /** Turns the part so that its fibres run along x. */
  private static Similarity alongGrain(Ordered ordered) {
    return Similarity.rotation(-ordered.grainDegrees(), Point.ORIGIN);
  }

  /** One blank for each plate: its own box, for plates are made to their line. */
  static List<Blank> ofTemplates(Ordered ordered) {
    List<Blank> blanks = new ArrayList<>();
    for (Template template : ordered.result().templates()) {
      blanks.add(
          plate(
              ordered.result().part().name() + ", " + template.title(),
              template.plate().bounds(),
              ordered.templateThickness(),
              ordered.templateMaterial()));
    }
    return blanks;
  }

  /**
   * Likewise of a plate that serves several parts.
   *
   * @param thickness of the stock of templates, mm; empty where any will do
   */
  static Blank ofPlate(SharedPlate shared, OptionalDouble thickness) {
    return plate(shared.name(), shared.box(), thickness, Optional.empty());
  }

  private static Blank plate(
      String name, Bounds box, OptionalDouble thickness, Optional<String> material) {
    double longer = Math.max(box.width(), box.height());
    double shorter = Math.min(box.width(), box.height());
    return new Blank(name, Purpose.TEMPLATE, longer, shorter, thickness, material, 1, true);
  }
}
