package org.bearingline.job;

import java.util.OptionalDouble;
import org.bearingline.problem.NearestName;
import org.bearingline.yaml.YamlNode;

/**
 * How the fibres of a part's wood lie.
 *
 * @param degrees counter-clockwise from the part's x; empty for sheet stock, which has no grain to
 *     speak of
 */
record Grain(OptionalDouble degrees) {

  /** Fibres along the part's x, as every shape is drawn. */
  static final Grain ALONG = new Grain(OptionalDouble.of(0));

  private static final Grain ACROSS = new Grain(OptionalDouble.of(90));
  static final Grain NONE = new Grain(OptionalDouble.empty());

  /** Reads {@code along}, {@code across}, {@code none}, or a number of degrees. */
  static Grain read(YamlNode node) {
    String text = node.text().strip();
    switch (text) {
      case "along":
        return ALONG;
      case "across":
        return ACROSS;
      case "none":
        return NONE;
      default:
        return new Grain(OptionalDouble.of(degrees(node, text)));
    }
  }

  private static double degrees(YamlNode node, String text) {
    String number = text.replaceFirst("\\s*(deg|°)$", "");
    try {
      double degrees = Double.parseDouble(number);
      if (degrees >= -360 && degrees <= 360) {
        return degrees;
      }
    } catch (NumberFormatException notNumber) {
      // Refused below, like a turn out of range.
    }
    throw node.problem(
        "“"
            + text
            + "” is no direction of grain"
            + NearestName.hint(java.util.List.of("along", "across", "none"), text)
            + "; write along, across, none for sheet stock, or degrees as in 30deg");
  }
}
