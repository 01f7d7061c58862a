package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.bearingline.export.svg.ScreenDrawing;
import org.bearingline.length.Units;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.scan.PictureFile;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.kept.KeptShape;

/**
 * A drawing, photo or scan that was handed over, kept as the text of a shape file, as {@code keep}
 * does.
 *
 * @param name of the shape file; null where no part can be made of the drawing
 * @param text of the shape file; null where no part can be made of the drawing
 * @param words what was found and done
 * @param drawing the drawn line, the clean one on it, and numbered rings round faults, or numbers
 *     of separate outlines
 * @param problem the first fault, or that there are several outlines; null where there is none
 */
public record KeptDrawing(
    String name, String text, List<String> words, ScreenDrawing drawing, ProblemView problem) {

  private static final Consumer<String> SILENT = line -> {};

  /**
   * Reads and cleans a drawing, a photo or a scan.
   *
   * @param fileName as the user named it; its ending tells what it is
   * @param said fields of a drawing in a job file, or options of {@code keep} for a picture, as
   *     written
   * @throws Problem where it is no drawing or says nothing that can be kept
   * @throws Refused where what is said of it is wrong
   */
  public static KeptDrawing of(
      String fileName, byte[] content, Map<String, String> said, Units units) {
    KeptWishes wishes = KeptWishes.of(said);
    List<String> told = new ArrayList<>();
    CleanedOutline cleaned;
    if (PictureFile.isOne(fileName)) {
      wishes.refuseDrawn();
      Pictures.Kept kept =
          Pictures.cleaned(fileName, content, wishes.picture(), wishes.drawn(), SILENT);
      cleaned = kept.cleaned();
      told.addAll(kept.lines());
    } else if (Drawings.isOne(fileName)) {
      wishes.refusePicture();
      WrittenFile file = new WrittenFile.HandedOver(fileName, content);
      cleaned = Drawings.cleaned(file, wishes.drawn(), SILENT);
    } else {
      throw new Problem(
          Place.file(fileName),
          "this is no drawing or picture; choose a file that ends in .svg, .dxf, .png, .jpg or"
              + " .tif");
    }
    return of(fileName, cleaned, wishes.drawn(), told, units);
  }

  private static KeptDrawing of(
      String fileName, CleanedOutline cleaned, DrawnWishes wishes, List<String> told, Units units) {
    String name = Drawings.partName(fileName);
    ScreenDrawing seen = ScreenDrawing.of(KeptPreview.of(name, cleaned), units);
    if (!cleaned.report().faults().isEmpty() || cleaned.isSeveral()) {
      return new KeptDrawing(null, null, told, seen, refusal(fileName, cleaned));
    }
    DrawnDesign design = DrawnPart.of(fileName, name, cleaned, wishes);
    String text = KeptShape.yaml(design.part(), KeepJob.remarks(design));
    List<String> words = new ArrayList<>(told);
    words.addAll(DrawnWords.lines(design, units));
    words.addAll(KeepJob.measures(name, text, units));
    return new KeptDrawing(
        name + ".yaml", text, words.stream().map(String::strip).toList(), seen, null);
  }

  private static ProblemView refusal(String fileName, CleanedOutline cleaned) {
    Problem refusal = SeparateOutlines.refusal(fileName, cleaned);
    return new ProblemView(
        refusal.getMessage(), refusal.spoken(), null, null, refusal.place().words());
  }
}
