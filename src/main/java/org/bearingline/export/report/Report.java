package org.bearingline.export.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/**
 * The figures of a job, part by part: lengths in mm, areas in mm², positions in mm from the part's
 * origin. What does not apply to a part is empty, and null in the file.
 *
 * @param parts in the order of the job
 * @param families parts of a job that share a curve; empty for a single shape
 * @param cuts what a job is sawn out of; empty for a single shape
 */
public record Report(List<Part> parts, Optional<FamilyReport> families, Optional<CutReport> cuts) {

  public Report {
    parts = List.copyOf(parts);
  }

  /** Of parts without a job. */
  public Report(List<Part> parts) {
    this(parts, Optional.empty(), Optional.empty());
  }

  /**
   * One part.
   *
   * @param name the name its files carry
   * @param quantity how many of it the job makes
   * @param bounds box round the part
   * @param area of the part, openings taken off
   * @param smallestInsideRadius the tightest concave arc; empty where there is none
   * @param narrowestNeck width of the narrowest place the cutter must pass; empty where there is
   *     none
   * @param largestCutterDiameter the fattest cutter that leaves nothing; empty where any will do or
   *     where none does because of a sharp inside corner
   * @param cutterDiameter of the bit asked for
   * @param follower what rides the template
   * @param templateOffset from the part's edge to the template's, positive to the waste side
   * @param leftovers what the cutter cannot reach, numbered from 1
   * @param overcuts what the cutter takes too much, at outside corners
   * @param bits which of the maker's own bits leave nothing
   * @param roughLine the saw line
   * @param feed direction and speed
   * @param passes depths of the passes in mm from the face, one growing list
   * @param proof how true the template is when played forward
   * @param notes sentences for the maker
   * @param files written for this part
   * @param work operations, templates, faces and grain; empty, and no fields at all, for a reach
   * @param drawing what became of the drawing; empty, and no field at all, for a shape
   */
  public record Part(
      String name,
      int quantity,
      Bounds bounds,
      double area,
      OptionalDouble smallestInsideRadius,
      OptionalDouble narrowestNeck,
      OptionalDouble largestCutterDiameter,
      OptionalDouble cutterDiameter,
      Optional<Follower> follower,
      OptionalDouble templateOffset,
      List<Leftover> leftovers,
      List<Overcut> overcuts,
      List<Bit> bits,
      Optional<RoughLine> roughLine,
      Optional<Feed> feed,
      List<Double> passes,
      Optional<Proof> proof,
      List<String> notes,
      List<String> files,
      Optional<Work> work,
      Optional<DrawingReport> drawing) {

    /** Without operations and grain, as of a reach alone. */
    public Part(
        String name,
        int quantity,
        Bounds bounds,
        double area,
        OptionalDouble smallestInsideRadius,
        OptionalDouble narrowestNeck,
        OptionalDouble largestCutterDiameter,
        OptionalDouble cutterDiameter,
        Optional<Follower> follower,
        OptionalDouble templateOffset,
        List<Leftover> leftovers,
        List<Overcut> overcuts,
        List<Bit> bits,
        Optional<RoughLine> roughLine,
        Optional<Feed> feed,
        List<Double> passes,
        Optional<Proof> proof,
        List<String> notes,
        List<String> files) {
      this(
          name,
          quantity,
          bounds,
          area,
          smallestInsideRadius,
          narrowestNeck,
          largestCutterDiameter,
          cutterDiameter,
          follower,
          templateOffset,
          leftovers,
          overcuts,
          bits,
          roughLine,
          feed,
          passes,
          proof,
          notes,
          files,
          Optional.empty(),
          Optional.empty());
    }

    /** The same with what is done to it. */
    public Part with(Work done) {
      return with(Optional.of(done), drawing);
    }

    /** The same with what became of its drawing. */
    public Part drawnBy(DrawingReport cleaned) {
      return with(work, Optional.of(cleaned));
    }

    private Part with(Optional<Work> newWork, Optional<DrawingReport> newDrawing) {
      return new Part(
          name,
          quantity,
          bounds,
          area,
          smallestInsideRadius,
          narrowestNeck,
          largestCutterDiameter,
          cutterDiameter,
          follower,
          templateOffset,
          leftovers,
          overcuts,
          bits,
          roughLine,
          feed,
          passes,
          proof,
          notes,
          files,
          newWork,
          newDrawing);
    }

    public Part {
      Objects.requireNonNull(name);
      Objects.requireNonNull(bounds);
      leftovers = List.copyOf(leftovers);
      overcuts = List.copyOf(overcuts);
      bits = List.copyOf(bits);
      passes = List.copyOf(passes);
      notes = List.copyOf(notes);
      files = List.copyOf(files);
    }
  }

  /**
   * What rides the template.
   *
   * @param kind bearing or collar
   * @param diameter mm
   */
  public record Follower(String kind, double diameter) {}

  /**
   * Wood the cutter cannot reach.
   *
   * @param number as it stands on the drawing
   * @param at a point in it
   * @param area mm²
   * @param depth mm, from the designed corner to the cut
   * @param insideRadius radius of the designed corner, 0 where sharp; empty for a neck
   * @param kind corner or neck
   */
  public record Leftover(
      int number, Point at, double area, double depth, OptionalDouble insideRadius, String kind) {}

  /**
   * Wood the cutter takes although it belongs to the part.
   *
   * @param at a point in it
   * @param area mm²
   * @param depth mm
   */
  public record Overcut(Point at, double area, double depth) {}

  /**
   * One of the maker's bits that leaves nothing.
   *
   * @param diameter mm
   */
  public record Bit(double diameter) {}

  /**
   * The saw line.
   *
   * @param allowance least distance from the part
   * @param bladeRadius the tightest turn of the blade; empty where no blade was named
   * @param length of the line
   * @param wasteArea wood left between line and part for the bit to take
   * @param bridged places the blade cannot follow and the line passes over
   */
  public record RoughLine(
      double allowance,
      OptionalDouble bladeRadius,
      double length,
      double wasteArea,
      List<Point> bridged) {

    public RoughLine {
      bridged = List.copyOf(bridged);
    }
  }

  /**
   * How to feed the router.
   *
   * @param router hand or table
   * @param direction of the bit past the work, seen from above, in words, such as
   *     "counter-clockwise round the outside"
   * @param spindleSpeed the fastest the bit may turn, revolutions a minute; empty where unknown
   */
  public record Feed(String router, String direction, OptionalInt spindleSpeed) {}

  /**
   * The template played forward.
   *
   * @param maxDeviation the largest distance from the designed edge outside the leftovers
   */
  public record Proof(double maxDeviation) {}
}
