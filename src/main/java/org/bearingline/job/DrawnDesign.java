package org.bearingline.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.part.Part;
import org.bearingline.shape.Design;
import org.bearingline.shape.formula.Dimension;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;

/**
 * A part drawn elsewhere. Expressions beside it may name its {@code width} and {@code height};
 * positions count from the lower left corner of the box round it.
 *
 * @param file as the user named it
 * @param part cleaned and moved to the origin
 * @param cleaned what cleaning did
 * @param holes how many round openings are drilled
 */
record DrawnDesign(String file, Part part, CleanedOutline cleaned, int holes) implements Design {

  private static final String WIDTH = "width";

  private static final String HEIGHT = "height";

  DrawnDesign {
    Objects.requireNonNull(file);
    Objects.requireNonNull(part);
    Objects.requireNonNull(cleaned);
  }

  /** Its name without folders: what is written does not tell where the maker keeps it. */
  String fileName() {
    return plain(file);
  }

  /** A file's name without its folders. */
  static String plain(String file) {
    return file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
  }

  Bounds bounds() {
    return part.contour().loop().bounds();
  }

  @Override
  public Scope scope(Optional<Units> bareUnits) {
    return new Scope(
        Map.of(WIDTH, Dimension.LENGTH, HEIGHT, Dimension.LENGTH), List.of(), bareUnits);
  }

  @Override
  public Values named() {
    return Values.of(lengths());
  }

  @Override
  public Map<String, Double> lengths() {
    Map<String, Double> lengths = new LinkedHashMap<>();
    lengths.put(WIDTH, bounds().width());
    lengths.put(HEIGHT, bounds().height());
    return lengths;
  }

  @Override
  public Map<String, String> settings() {
    Map<String, String> settings = new LinkedHashMap<>();
    settings.put(WIDTH, "");
    settings.put(HEIGHT, "");
    return settings;
  }
}
