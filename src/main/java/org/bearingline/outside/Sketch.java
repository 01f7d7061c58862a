package org.bearingline.outside;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Point;

/**
 * A drawing as its file has it, before cleaning; y upwards.
 *
 * @param file as the user named it, for messages
 * @param figures what was drawn, at least one
 * @param sized whether lengths are mm; where not, they are the drawing's own units and the maker
 *     must say a width or a height
 * @param noise how far, in mm (or the drawing's units), its points may lie from the line that was
 *     meant; empty where the drawing is exact
 * @param ignored what was in the file and is not here, one short phrase each, such as {@code 3
 *     texts}
 * @param toFile from here to the coordinates that whoever drew the file sees in it; empty where
 *     there are none, as in a photo
 */
public record Sketch(
    String file,
    List<Figure> figures,
    boolean sized,
    OptionalDouble noise,
    List<String> ignored,
    Optional<Affine> toFile) {

  /** A sketch whose file has no coordinates of its own. */
  public Sketch(
      String file,
      List<Figure> figures,
      boolean sized,
      OptionalDouble noise,
      List<String> ignored) {
    this(file, figures, sized, noise, ignored, Optional.empty());
  }

  public Sketch {
    Objects.requireNonNull(file);
    figures = List.copyOf(figures);
    Objects.requireNonNull(noise);
    ignored = List.copyOf(ignored);
    Objects.requireNonNull(toFile);
    if (figures.isEmpty()) {
      throw new IllegalArgumentException("a sketch has at least one figure");
    }
  }

  /** A place in words: “x 40, y 12.5 of the file” as its author sees it, else in mm. */
  public String place(Point p) {
    if (toFile.isEmpty()) {
      return String.format(Locale.ROOT, "x %.3f, y %.3f mm", p.x(), p.y());
    }
    Point own = toFile.get().apply(p);
    return "x " + figure(own.x()) + ", y " + figure(own.y()) + " of the file";
  }

  private static String figure(double coordinate) {
    BigDecimal rounded = new BigDecimal(coordinate).setScale(3, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
