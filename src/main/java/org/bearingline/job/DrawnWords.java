package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.export.pdf.Card;
import org.bearingline.export.report.DrawingReport;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outside.clean.CenterLine;
import org.bearingline.outside.clean.CleaningReport;
import org.bearingline.outside.clean.NearlyMirrored;
import org.bearingline.outside.clean.UnitedShapes;

/** Says what became of a drawing. */
final class DrawnWords {

  /** Degrees below which nobody sees that a joint turns. */
  private static final double LEAST_TURN = 0.01;

  /** mm that only computing moves. */
  private static final double UNMOVED = 1e-6;

  /** Tolerances by which halves that are meant to be alike may differ. */
  private static final double NEARLY_ALIKE = 5;

  /** mm by which halves that are alike may differ: what a rounded file loses. */
  private static final double ALIKE = 1e-4;

  private DrawnWords() {}

  /** For the card. */
  static Card.Section section(DrawnDesign design, Units units) {
    List<String> said = new ArrayList<>();
    said.add(
        design.fileName()
            + ": "
            + size(design, units)
            + ", "
            + pieces(design)
            + ". "
            + move(design, units));
    gaps(design, units).ifPresent(said::add);
    joints(design).ifPresent(said::add);
    symmetry(design, units).ifPresent(said::add);
    said.addAll(united(design, units));
    left(design).ifPresent(said::add);
    said.addAll(design.cleaned().report().notes());
    return Card.Section.of("Drawing", said);
  }

  /** For the terminal. */
  static List<String> lines(DrawnDesign design, Units units) {
    List<String> lines = new ArrayList<>();
    for (String sentence : section(design, units).lines()) {
      lines.add("  " + sentence);
    }
    return lines;
  }

  static DrawingReport report(DrawnDesign design) {
    CleaningReport report = design.cleaned().report();
    return new DrawingReport(
        design.fileName(),
        report.tolerance(),
        report.largestMove(),
        report.gaps().count(),
        report.gaps().largest(),
        report.lines(),
        report.arcs(),
        report.circles(),
        design.holes(),
        report.jointsMadeTangent(),
        report.largestJointTurn(),
        report.symmetryMove(),
        report.united().map(DrawnWords::plain),
        design.cleaned().drawn().ignored(),
        report.notes());
  }

  private static String size(DrawnDesign design, Units units) {
    Bounds box = design.bounds();
    return Length.print(box.width(), units)
        + " wide and "
        + Length.print(box.height(), units)
        + " high";
  }

  private static String pieces(DrawnDesign design) {
    CleaningReport report = design.cleaned().report();
    List<String> said = new ArrayList<>();
    count(said, report.lines(), "line", "lines");
    count(said, report.arcs(), "arc", "arcs");
    count(said, report.circles(), "circle", "circles");
    String drilled =
        design.holes() == 0
            ? ""
            : design.holes() == 1
                ? ", of which 1 is drilled"
                : ", of which " + design.holes() + " are drilled";
    return Words.list(said) + drilled;
  }

  private static void count(List<String> said, int count, String one, String many) {
    if (count > 0) {
      said.add(count + " " + (count == 1 ? one : many));
    }
  }

  private static String move(DrawnDesign design, Units units) {
    CleaningReport report = design.cleaned().report();
    if (report.largestMove() < UNMOVED) {
      return "Its line is taken as drawn.";
    }
    return "The clean line lies no more than "
        + thousandths(report.largestMove(), units)
        + " from the drawn one (tolerance "
        + thousandths(report.tolerance(), units)
        + ").";
  }

  private static Optional<String> gaps(DrawnDesign design, Units units) {
    int count = design.cleaned().report().gaps().count();
    if (count == 0) {
      return Optional.empty();
    }
    return Optional.of(
        (count == 1 ? "1 gap was closed, of " : count + " gaps were closed, the largest of ")
            + thousandths(design.cleaned().report().gaps().largest(), units)
            + ".");
  }

  private static Optional<String> joints(DrawnDesign design) {
    CleaningReport report = design.cleaned().report();
    int count = report.jointsMadeTangent();
    // Of chords every joint turns; told is a line or an arc that nearly ran on smoothly.
    if (count == 0 || report.largestJointTurn() < LEAST_TURN) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%s that turned by up to %.2f° %s smooth.",
            count == 1 ? "1 joint" : count + " joints",
            report.largestJointTurn(),
            count == 1 ? "was made" : "were made"));
  }

  private static Optional<String> symmetry(DrawnDesign design, Units units) {
    CleaningReport report = design.cleaned().report();
    if (report.symmetryMove().isPresent()) {
      return Optional.of(
          "Made its own mirror image, which moved it by no more than "
              + thousandths(report.symmetryMove().getAsDouble(), units)
              + ".");
    }
    return almost(design, CenterLine.VERTICAL, "Left and right are", "left-right", units)
        .or(() -> almost(design, CenterLine.HORIZONTAL, "Top and bottom are", "top-bottom", units));
  }

  // A maker who drew both halves by eye need not know that they can be made alike.
  private static Optional<String> almost(
      DrawnDesign design, CenterLine line, String halves, String wish, Units units) {
    double tolerance = design.cleaned().report().tolerance();
    OptionalDouble by =
        NearlyMirrored.by(design.cleaned().outlines(), line, NEARLY_ALIKE * tolerance);
    if (by.isEmpty() || by.getAsDouble() < ALIKE) {
      return Optional.empty();
    }
    return Optional.of(
        halves
            + " mirror images to within "
            + thousandths(by.getAsDouble(), units)
            + "; symmetric "
            + wish
            + " would make them alike.");
  }

  private static List<String> united(DrawnDesign design, Units units) {
    Optional<UnitedShapes> asked = design.cleaned().report().united();
    List<String> said = new ArrayList<>();
    if (asked.isEmpty()) {
      return said;
    }
    UnitedShapes united = asked.get();
    if (!united.isAny()) {
      said.add("Nothing was united: no two filled shapes lie over or against each other.");
    }
    if (united.shapes() > 0) {
      said.add(
          united.shapes()
              + " shapes of "
              + area(united.drawnArea(), units)
              + " in all were united into "
              + united.outlines()
              + " of "
              + area(united.area(), units)
              + "; what lay double counts once.");
    }
    if (united.openings() > 0) {
      said.add(united.openings() + " openings were united into " + united.openingsLeft() + ".");
    }
    return said;
  }

  private static String area(double squareMm, Units units) {
    return units == Units.MM
        ? String.format(Locale.ROOT, "%.2f cm²", squareMm / 100)
        : String.format(Locale.ROOT, "%.2f in²", squareMm / (25.4 * 25.4));
  }

  private static DrawingReport.United plain(UnitedShapes united) {
    return new DrawingReport.United(
        united.shapes(),
        united.outlines(),
        united.openings(),
        united.openingsLeft(),
        united.drawnArea(),
        united.area());
  }

  private static Optional<String> left(DrawnDesign design) {
    List<String> ignored = design.cleaned().drawn().ignored();
    return ignored.isEmpty()
        ? Optional.empty()
        : Optional.of("Left out of the drawing: " + Words.list(ignored) + ".");
  }

  /** Rounded up, so that no more is promised than holds. */
  static String thousandths(double mm, Units units) {
    return units == Units.MM
        ? String.format(Locale.ROOT, "%.3f mm", Math.ceil(mm * 1000 - 1e-6) / 1000)
        : String.format(Locale.ROOT, "%.4f in", Math.ceil(mm / 25.4 * 10000 - 1e-6) / 10000);
  }
}
