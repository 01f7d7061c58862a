package org.bearingline.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.outside.DrawnLayer;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.bearingline.outside.clean.CenterLine;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.clean.Cleaning;
import org.bearingline.outside.clean.CleaningSettings;
import org.bearingline.outside.clean.OneOutline;
import org.bearingline.outside.dxf.DxfReader;
import org.bearingline.outside.svg.SvgReader;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads and cleans a drawing, and makes a part of it. */
final class Drawings {

  /** From so many points on the maker is told that it takes a while. */
  private static final int MANY_POINTS = 50_000;

  private Drawings() {}

  /** Whether a file is a drawing, by the end of its name. */
  static boolean isOne(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    return small.endsWith(".svg")
        || small.endsWith(".svgz")
        || small.endsWith(".dxf")
        || small.endsWith(".dwg");
  }

  /** What a drawing asks for by itself. */
  static PartOrder order(WrittenFile file, Wishes wishes, Consumer<String> progress) {
    if (!wishes.measures().isEmpty()) {
      throw new Problem(
          Place.option("--set"),
          "a drawing has no measures to set; size it with --width or --height");
    }
    DrawnDesign design = design(file, partName(file.name()), wishes.drawn(), progress);
    return new PartOrder(
        design.part().name(),
        1,
        design,
        wishes,
        OperationFile.NONE,
        StockWishes.USUAL,
        WrittenPlaces.NONE);
  }

  /**
   * The part drawn in a file.
   *
   * @param name of the part
   * @param progress told what takes long
   */
  static DrawnDesign design(
      WrittenFile file, String name, DrawnWishes wishes, Consumer<String> progress) {
    CleanedOutline cleaned = cleaned(file, wishes, progress).sound();
    return DrawnPart.of(file.name(), name, cleaned, wishes);
  }

  /** The drawing in a file made clean, with its faults if it has any. */
  static CleanedOutline cleaned(WrittenFile file, DrawnWishes wishes, Consumer<String> progress) {
    Sketch sketch = sketch(file, new ReadingSettings(wishes.layer(), wishes.unit()));
    return cleaned(sketch, wishes, progress);
  }

  /** A sketch made clean, with its faults if it has any. */
  static CleanedOutline cleaned(Sketch sketch, DrawnWishes wishes, Consumer<String> progress) {
    CleaningSettings settings = settings(wishes);
    int points = points(sketch);
    if (points >= MANY_POINTS) {
      progress.accept(
          String.format(
              Locale.ROOT, "%s: cleaning %,d points, which takes a while", sketch.file(), points));
    }
    Sketch sized = sized(sketch, wishes);
    return wishes.outline().isPresent()
        ? OneOutline.clean(sized, settings, wishes.outline().getAsInt())
        : Cleaning.clean(sized, settings);
  }

  /** The name of the part in a drawing: the file's, in what names of files may be made of. */
  static String partName(String file) {
    String bare = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    String name =
        bare.substring(0, bare.lastIndexOf('.'))
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return name.isEmpty() || name.equals("job") ? "drawn-part" : name;
  }

  /** The layers of a drawing on which there is a line. */
  static List<DrawnLayer> layers(WrittenFile file) {
    byte[] bytes = file.drawing();
    return isDxf(file)
        ? DxfReader.layers(file.name(), bytes)
        : SvgReader.layers(file.name(), bytes);
  }

  private static boolean isDxf(WrittenFile file) {
    String small = file.name().toLowerCase(Locale.ROOT);
    return small.endsWith(".dxf") || small.endsWith(".dwg");
  }

  /** What a drawing shows, as its file has it. */
  static Sketch sketch(WrittenFile file, ReadingSettings settings) {
    byte[] bytes = file.drawing();
    return isDxf(file)
        ? DxfReader.read(file.name(), bytes, settings)
        : SvgReader.read(file.name(), bytes, settings);
  }

  private static int points(Sketch sketch) {
    int points = 0;
    for (var figure : sketch.figures()) {
      for (Stroke stroke : figure.strokes()) {
        for (StrokePiece piece : stroke.pieces()) {
          points += piece instanceof StrokePiece.Chords chords ? chords.points().size() : 1;
        }
      }
    }
    return points;
  }

  private static Sketch sized(Sketch sketch, DrawnWishes wishes) {
    if (!sketch.sized() && wishes.width().isEmpty() && wishes.height().isEmpty()) {
      throw DrawnPart.healedByWidth(
          sketch.file(),
          "the drawing does not say what its units are; give the width or height of the whole"
              + " (--width, --height) or the unit it is drawn in (--drawn-in mm; px where 96 of them are an inch, pt where"
              + " 72 are)");
    }
    return sketch;
  }

  private static CleaningSettings settings(DrawnWishes wishes) {
    return new CleaningSettings(
        wishes.tolerance().orElse(CurveFit.DEFAULT_TOLERANCE),
        wishes.gap().orElse(CleaningSettings.DEFAULT_GAP),
        wishes.width(),
        wishes.height(),
        centerLine(wishes.symmetric()),
        wishes.unite(),
        CleaningSettings.DEFAULT_SHARP_CORNER);
  }

  private static CenterLine centerLine(Optional<String> symmetric) {
    if (symmetric.isEmpty()) {
      return CenterLine.NONE;
    }
    return switch (symmetric.get()) {
      case "left-right" -> CenterLine.VERTICAL;
      case "top-bottom" -> CenterLine.HORIZONTAL;
      default ->
          throw new Problem(
              Place.option("--symmetric"),
              "“" + symmetric.get() + "” is no symmetry; write left-right or top-bottom");
    };
  }
}
