package org.bearingline.job;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.bearingline.export.StagingFolder;
import org.bearingline.export.png.PngWriter;
import org.bearingline.export.svg.SvgWriter;
import org.bearingline.length.Units;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.scan.PictureFile;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.Measure;
import org.bearingline.shape.ShapeReader;
import org.bearingline.shape.kept.KeptShape;

/** Keeps a drawing as a shape file that can be laid out, also longer or shorter. */
public final class KeepJob {

  /** Pixels across the preview. */
  private static final int PREVIEW_WIDTH = 1600;

  private KeepJob() {}

  /**
   * Writes {@code NAME.yaml} with {@code NAME-preview.svg} and {@code NAME-preview.png}; of a
   * drawing with faults or several outlines the preview alone, and then a Problem that names the
   * first of them.
   *
   * @param source the drawing as the user named it
   * @param picture what is said of a photo or scan
   * @param units of the figures in the preview and the lines returned
   * @param progress told what takes long
   * @return lines for a person
   */
  public static List<String> run(
      String source,
      DrawnWishes wishes,
      PictureWishes picture,
      Units units,
      Path into,
      Consumer<String> progress) {
    boolean isPicture = PictureFile.isOne(source);
    if (!isPicture && !Drawings.isOne(source)) {
      throw new Problem(
          Place.nowhere(),
          "“"
              + source
              + "” is no drawing or picture; name a file that ends in .svg, .dxf, .png, .jpg or"
              + " .tif");
    }
    KeptWishes said = new KeptWishes(wishes, picture);
    if (isPicture) {
      said.refuseDrawn();
    } else {
      said.refusePicture();
    }
    WrittenFile file = WrittenFile.onDisk(source);
    String name = Drawings.partName(file.name());
    List<String> told = new ArrayList<>();
    CleanedOutline cleaned;
    if (isPicture) {
      Pictures.Kept kept = Pictures.cleaned(source, picture, wishes, progress);
      cleaned = kept.cleaned();
      told.addAll(kept.lines());
    } else {
      cleaned = Drawings.cleaned(file, wishes, progress);
    }
    List<String> lines = new ArrayList<>();
    try (StagingFolder folder = StagingFolder.into(into)) {
      folder.spare(Path.of(source));
      var preview = KeptPreview.of(name, cleaned);
      folder.write(name + "-preview.svg", SvgWriter.write(preview, units));
      folder.write(name + "-preview.png", PngWriter.write(preview, units, PREVIEW_WIDTH));
      if (cleaned.report().faults().isEmpty() && !cleaned.isSeveral()) {
        DrawnDesign design = DrawnPart.of(file.name(), name, cleaned, wishes);
        String text = KeptShape.yaml(design.part(), remarks(design));
        folder.write(name + ".yaml", text.getBytes(StandardCharsets.UTF_8));
        lines.add(name);
        lines.addAll(told);
        lines.addAll(DrawnWords.lines(design, units));
        lines.addAll(measures(name, text, units));
      }
      folder.commit();
    }
    if (lines.isEmpty()) {
      throw faulty(file.name(), cleaned, into.resolve(name + "-preview.png"));
    }
    lines.add("written to " + into + ": " + name + ".yaml, with a preview as SVG and PNG");
    return lines;
  }

  private static Problem faulty(String file, CleanedOutline cleaned, Path preview) {
    Problem refusal = SeparateOutlines.refusal(file, cleaned);
    return new Problem(
        refusal.place(),
        refusal.getMessage()
            + " (the numbers in "
            + preview
            + (cleaned.isSeveral() ? " show which)" : " show where)"),
        refusal);
  }

  static List<String> remarks(DrawnDesign design) {
    return List.of(
        String.format(
            Locale.ROOT,
            "Lines and arcs of %s, no more than %.4f mm from what is drawn there.",
            design.fileName().replaceAll("\\p{Cntrl}", " "),
            Math.ceil(design.cleaned().report().largestMove() * 1e4) / 1e4));
  }

  // Read back as a maker's own file would be: what is told is what the file says.
  static List<String> measures(String name, String text, Units units) {
    List<String> lines = new ArrayList<>();
    for (Measure measure :
        ShapeReader.read(name + ".yaml", text)
            .measured(Map.of(), Optional.of(Units.MM))
            .measures()) {
      lines.add("  measure " + measure.name() + ": " + measure.about());
    }
    if (lines.isEmpty()) {
      lines.add("  no straight runs right across it, so it has one size");
    }
    return lines;
  }
}
