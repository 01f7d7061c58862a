package org.bearingline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.bearingline.export.svg.ScreenDrawing;
import org.bearingline.length.Units;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.kept.KeptShape;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;
import org.bearingline.yaml.YamlText;

/**
 * A drawing that was handed over, kept as the text of a shape file, as {@code keep} does.
 *
 * @param name of the shape file; null where the drawing has faults
 * @param text of the shape file; null where the drawing has faults
 * @param words what was found and done
 * @param drawing the drawn line, the clean one on it, and numbered rings round faults
 * @param problem the first fault; null where there is none
 */
public record KeptDrawing(
    String name, String text, List<String> words, ScreenDrawing drawing, ProblemView problem) {

  private static final Consumer<String> SILENT = line -> {};

  /**
   * Reads and cleans a drawing.
   *
   * @param fileName as the user named it; its ending tells what it is
   * @param said fields of a drawing in a job file, as written
   * @throws Problem where it is no drawing or says nothing that can be kept
   * @throws Refused where what is said of it is wrong
   */
  public static KeptDrawing of(
      String fileName, byte[] content, Map<String, String> said, Units units) {
    return of(fileName, content, wishes(said), units);
  }

  private static DrawnWishes wishes(Map<String, String> said) {
    Map<String, Object> fields = new LinkedHashMap<>(said);
    fields.computeIfPresent(
        "sawn-edges", (name, sides) -> List.of(((String) sides).split("\\s*,\\s*")));
    if (fields.isEmpty()) {
      return DrawnWishes.NONE;
    }
    YamlNode top = YamlFile.read(JobInHand.FILE, YamlText.write(fields));
    try {
      top.allowOnly(Set.copyOf(DrawnFields.OF_A_DRAWING));
      return DrawnFields.of(top, Optional.empty());
    } catch (Problem wrong) {
      throw new Refused(JobFields.of(top).view(wrong, null), wrong);
    }
  }

  private static KeptDrawing of(String fileName, byte[] content, DrawnWishes wishes, Units units) {
    WrittenFile file = new WrittenFile.HandedOver(fileName, content);
    if (!Drawings.isOne(fileName)) {
      throw new Problem(
          Place.file(fileName), "this is no drawing; choose a file that ends in .svg or .dxf");
    }
    String name = Drawings.partName(fileName);
    CleanedOutline cleaned = Drawings.cleaned(file, wishes, SILENT);
    ScreenDrawing seen = ScreenDrawing.of(KeptPreview.of(name, cleaned), units);
    if (!cleaned.report().faults().isEmpty()) {
      return new KeptDrawing(null, null, List.of(), seen, fault(cleaned));
    }
    DrawnDesign design = DrawnPart.of(fileName, name, cleaned, wishes);
    String text = KeptShape.yaml(design.part(), KeepJob.remarks(design));
    List<String> words = new ArrayList<>(DrawnWords.lines(design, units));
    words.addAll(KeepJob.measures(name, text, units));
    return new KeptDrawing(
        name + ".yaml", text, words.stream().map(String::strip).toList(), seen, null);
  }

  private static ProblemView fault(CleanedOutline cleaned) {
    try {
      cleaned.sound();
      throw new IllegalStateException("an outline with faults is not sound");
    } catch (Problem fault) {
      return new ProblemView(fault.getMessage(), fault.spoken(), null, null, fault.place().words());
    }
  }
}
