package org.bearingline.outside.dxf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.outside.Affine;
import org.bearingline.outside.DrawnLayer;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Tally;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads the outlines of a DXF drawing in ASCII. */
public final class DxfReader {

  private DxfReader() {}

  /**
   * Everything in model space that can be seen and is a line; loose pieces stay loose. In mm where
   * {@code $INSUNITS} names a unit or the settings give another, else in the drawing's own units:
   * what {@code $MEASUREMENT} says is no proof of a size, as programs write it for hatches and
   * leave it at its default.
   *
   * @param file as the user named it, for messages
   * @param bytes the whole file
   * @throws Problem where the file is no ASCII DXF, damaged, cut short, too large, or shows no line
   */
  public static Sketch read(String file, byte[] bytes, ReadingSettings settings) {
    refuseOthers(file, bytes);
    DxfFile drawing = DxfFile.read(file, bytes);
    OptionalDouble unit = unit(drawing);
    double scale = settings.unit().orElse(unit.orElse(1));
    Tally ignored = new Tally();
    DxfWalk walk = new DxfWalk(drawing, settings.layer(), ignored);
    walk.all(Affine.scaling(scale, scale));
    if (walk.figures().isEmpty()) {
      throw empty(file, settings.layer(), walk, ignored);
    }
    return new Sketch(
        file,
        walk.figures(),
        unit.isPresent() || settings.unit().isPresent(),
        OptionalDouble.empty(),
        ignored.phrases(),
        Optional.of(Affine.scaling(1 / scale, 1 / scale)));
  }

  /**
   * The layers that show a line in model space; empty where nothing can be seen.
   *
   * @throws Problem where the file cannot be read
   */
  public static List<DrawnLayer> layers(String file, byte[] bytes) {
    refuseOthers(file, bytes);
    DxfWalk walk = new DxfWalk(DxfFile.read(file, bytes), Optional.empty(), new Tally());
    walk.all(Affine.IDENTITY);
    return walk.layers();
  }

  private static void refuseOthers(String file, byte[] bytes) {
    String head = new String(bytes, 0, Math.min(24, bytes.length), StandardCharsets.ISO_8859_1);
    if (head.contains("Binary DXF")) {
      throw new Problem(
          Place.file(file),
          "this is a binary DXF; save it as ASCII DXF, of any version up to 2018");
    }
    if (head.matches("(?s)AC1\\d{3}.*")) {
      throw new Problem(
          Place.file(file),
          "this is a DWG and no DXF; save it as ASCII DXF, of any version to 2018");
    }
    if (head.startsWith("\u00ff\u00fe") || head.startsWith("\u00fe\u00ff")) {
      throw new Problem(
          Place.file(file), "the file is in UTF-16, which no DXF is; save it as ASCII DXF");
    }
  }

  private static OptionalDouble unit(DxfFile drawing) {
    if (drawing.units().isEmpty()) {
      return OptionalDouble.empty();
    }
    String code = String.valueOf(drawing.units().getAsInt());
    for (FactRow row : FactTable.read(DxfReader.class, "units.tsv").rows()) {
      if (row.text("code").equals(code)) {
        return OptionalDouble.of(row.number("mm"));
      }
    }
    return OptionalDouble.empty();
  }

  private static Problem empty(String file, Optional<String> layer, DxfWalk walk, Tally ignored) {
    List<String> others = walk.layersSeen();
    if (layer.isPresent()) {
      String hint =
          NearestName.among(others, layer.get())
              .map(near -> "; did you mean " + near + "?")
              .orElse(
                  others.isEmpty() ? "" : "; there is something on " + String.join(", ", others));
      return new Problem(
          Place.option("--layer"), file + " has no line on a layer “" + layer.get() + "”" + hint);
    }
    List<String> left = ignored.phrases();
    return new Problem(
        Place.file(file),
        "the drawing shows no line that could be an edge"
            + (left.isEmpty() ? "" : ", only " + String.join(", ", left))
            + "; draw the part with lines, arcs and polylines");
  }
}
