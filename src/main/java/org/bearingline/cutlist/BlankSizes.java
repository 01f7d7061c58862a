package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Template;

/**
 * The blank of a part: its box with wood for the bit to take on routed sides, up to the next 1/16
 * in or millimetre.
 */
final class BlankSizes {

  /** Room, in marks of a rule, for the rounding of a size that stands on one. */
  private static final double ROUNDING = 1e-6;

  private BlankSizes() {}

  static Blank ofPart(Ordered ordered, Units units) {
    RoutingResult result = ordered.result();
    Part part = result.part();
    Bounds box = BlankBox.of(part.contour().transformed(alongGrain(ordered)), allowance(ordered));
    return new Blank(
        part.name(),
        Purpose.PART,
        marked(box.width(), units),
        marked(box.height(), units),
        result.settings().thickness(),
        ordered.material(),
        ordered.quantity(),
        !ordered.grainMatters());
  }

  /** The next mark of a rule that is not less: nobody saws a blank to a 64th. */
  private static double marked(double mm, Units units) {
    double mark = units == Units.MM ? 1 : 25.4 / 16;
    return Math.ceil(mm / mark - ROUNDING) * mark;
  }

  private static double allowance(Ordered ordered) {
    return ordered.result().settings().allowance();
  }

  /** Turns the part so that its fibres run along x. */
  private static Similarity alongGrain(Ordered ordered) {
    return Similarity.rotation(-ordered.grainDegrees(), Point.ORIGIN);
  }

  /** One blank for each plate: its own box, for plates are made to their line. */
  static List<Blank> ofTemplates(Ordered ordered, Units units) {
    List<Blank> blanks = new ArrayList<>();
    for (Template template : ordered.result().templates()) {
      blanks.add(
          plate(
              ordered.result().part().name() + ", " + template.title(),
              template.plate().bounds(),
              units,
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
  static Blank ofPlate(SharedPlate shared, Units units, OptionalDouble thickness) {
    return plate(shared.name(), shared.box(), units, thickness, Optional.empty());
  }

  private static Blank plate(
      String name, Bounds box, Units units, OptionalDouble thickness, Optional<String> material) {
    double longer = marked(Math.max(box.width(), box.height()), units);
    double shorter = marked(Math.min(box.width(), box.height()), units);
    return new Blank(name, Purpose.TEMPLATE, longer, shorter, thickness, material, 1, true);
  }
}
