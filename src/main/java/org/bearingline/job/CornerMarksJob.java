package org.bearingline.job;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.drawing.sheet.PrintCorrection;
import org.bearingline.export.StagingFolder;
import org.bearingline.export.pdf.MarksPage;
import org.bearingline.export.pdf.MarksPdf;
import org.bearingline.outside.scan.MarkLetter;
import org.bearingline.outside.scan.MarkSet;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Writes the page of corner marks that goes into the picture with a template. */
public final class CornerMarksJob {

  private static final String FILE = "corner-marks.pdf";

  private CornerMarksJob() {}

  /** Writes the page into a folder; returns lines for a person. */
  public static List<String> run(String paperName, Optional<String> printed, Path into) {
    Paper paper = Paper.parse(paperName);
    PrintCorrection correction = printed.map(PrintCorrection::parse).orElse(PrintCorrection.NONE);
    MarkSet set = largest(paper, correction);
    byte[] page = MarksPdf.write(page(set, paper, correction));
    try (StagingFolder folder = StagingFolder.into(into)) {
      folder.write(FILE, page);
      folder.commit();
    }
    return List.of(
        FILE + ": four marks, " + distances(set) + " from cross to cross", "written to " + into);
  }

  private static MarkSet largest(Paper paper, PrintCorrection correction) {
    return MarkSet.all().stream()
        .filter(set -> set.widthOnPaper() <= MarksPage.roomAcross(paper, correction))
        .filter(set -> set.heightOnPaper() <= MarksPage.roomAlong(paper, correction))
        .reduce((smaller, larger) -> larger)
        .orElseThrow(
            () ->
                new Problem(
                    Place.option("--paper"),
                    "the paper is too small for four corner marks; take A4, Letter or larger"));
  }

  private static String distances(MarkSet set) {
    return millimetres(set.across()) + " across and " + millimetres(set.along()) + " along";
  }

  private static String millimetres(double mm) {
    return Math.round(mm) + " mm";
  }

  private static MarksPage page(MarkSet set, Paper paper, PrintCorrection correction) {
    List<MarksPage.Mark> marks =
        Arrays.stream(MarkLetter.values())
            .map(letter -> new MarksPage.Mark(letter.name(), set.cells(letter)))
            .toList();
    return new MarksPage(
        paper,
        correction,
        set.across(),
        set.along(),
        set.side(),
        marks,
        "Corner marks: a picture of a template with its true size",
        words(set));
  }

  private static List<String> words(MarkSet set) {
    return List.of(
        "Print at 100 %. Both bars must measure 100 mm; if not, print again with --printed 99.4,99.8"
            + " (X,Y as measured). The crosses are then "
            + distances(set)
            + ".",
        "Whole sheet: lay the template between the four crosses, touching no mark. Photograph it"
            + " from straight above, a metre away or more, in even light; or scan it. Then:"
            + " bearingline keep photo.jpg --into DIR.",
        "Larger or pale template: cut the sheet in four at the ticks and lay the pieces round it,"
            + " A B C D as a clock's hand goes, turned as you like, on a plain ground of another"
            + " lightness. Measure from cross to cross: --marks-apart 600mm,300mm for A–B and B–C,"
            + " or A-B=600mm,B-C=300mm,A-C=671mm.",
        "A thick template looks too large in a photo: raise the marks level with its upper face on"
            + " offcuts of the same board, or give --face-above 6mm --camera-above 1000mm. On a"
            + " scanner's glass nothing is raised.");
  }
}
