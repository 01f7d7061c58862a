package org.bearingline.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Makes a part of a clean drawing: its outer loop is the edge, what lies inside is taken out. */
final class DrawnPart {

  /** 1/2 in: up to this a round opening is a bore and no work for a template (practice). */
  private static final double DRILLED = 12.7;

  /** Nothing that is routed by a template is smaller or larger, in mm. */
  private static final double SMALLEST = 5;

  private static final double LARGEST = 10_000;

  private DrawnPart() {}

  static DrawnDesign of(String file, String name, CleanedOutline cleaned, DrawnWishes wishes) {
    Outline outline = only(file, cleaned);
    Bounds box = outline.bounds();
    requireBenchSize(file, box);
    Outline moved =
        LoopStart.normal(outline.transformed(Similarity.translation(-box.minX(), -box.minY())));
    double drilled = wishes.drillUpTo().orElse(DRILLED);
    List<Loop> openings = new ArrayList<>();
    List<Mark> holes = new ArrayList<>();
    for (Loop opening : ordered(moved.openings())) {
      Optional<Arc> bore = bore(opening).filter(circle -> 2 * circle.radius() <= drilled + 1e-6);
      if (bore.isPresent()) {
        holes.add(new Mark.DrillCentre(bore.get().center(), 2 * bore.get().radius(), "hole"));
      } else {
        openings.add(opening);
      }
    }
    List<Cavity> cavities = new ArrayList<>();
    for (int i = 0; i < openings.size(); i++) {
      cavities.add(
          new Cavity(
              openings.size() == 1 ? "opening" : "opening-" + (i + 1),
              Cavity.Kind.THROUGH,
              Contour.routed(openings.get(i)),
              OptionalDouble.empty()));
    }
    Contour edge = SawnSides.of(moved.outer(), wishes.sawnEdges());
    Part part =
        new Part(name, "Drawn in " + DrawnDesign.plain(file), edge, cavities, holes, List.of());
    return new DrawnDesign(file, part, cleaned, holes.size());
  }

  private static Optional<Arc> bore(Loop opening) {
    return opening.size() == 1 && opening.primitives().get(0) instanceof Arc circle
        ? Optional.of(circle)
        : Optional.empty();
  }

  /** From left to right, and from below where two begin alike. */
  private static List<Loop> ordered(List<Loop> openings) {
    return openings.stream()
        .sorted(
            Comparator.comparingDouble((Loop loop) -> Math.rint(loop.bounds().minX() * 100))
                .thenComparingDouble(loop -> loop.bounds().minY()))
        .toList();
  }

  private static Outline only(String file, CleanedOutline cleaned) {
    List<Outline> outlines = cleaned.outlines();
    if (outlines.isEmpty()) {
      throw new Problem(Place.file(file), "the drawing encloses nothing; draw a closed outline");
    }
    if (outlines.size() == 1) {
      return outlines.get(0);
    }
    throw SeparateOutlines.refusal(file, cleaned);
  }

  private static void requireBenchSize(String file, Bounds box) {
    double largest = Math.max(box.width(), box.height());
    if (largest < SMALLEST || largest > LARGEST) {
      throw healedByWidth(
          file,
          String.format(
              Locale.ROOT,
              "the part would be %.4g by %.4g mm; give its width (--width) or say the unit it is"
                  + " drawn in (--drawn-in mm)",
              box.width(),
              box.height()));
    }
  }

  /** A fault of the file that goes away where its width is given: its cause is that wish. */
  static Problem healedByWidth(String file, String sentence) {
    return new Problem(Place.file(file), sentence, new Problem(Place.option("--width"), sentence));
  }
}
