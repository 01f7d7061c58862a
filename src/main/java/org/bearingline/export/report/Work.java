package org.bearingline.export.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/**
 * What is done to a part and how its edges meet the grain, as the fields {@code operations}, {@code
 * templates}, {@code faces} and {@code grain} of a part; lengths in mm.
 *
 * @param operations in working order; empty where the job names none
 * @param templates the plates that make them
 * @param faces sentences on registration and hands
 * @param meetings sentences on operations that take the same wood
 * @param grain empty for sheet stock
 * @param panel how it sits in its frame; empty, and no field at all, for any other part
 * @param plate what its edge's template is, where it is no whole one of its own
 * @param otherPiece the piece of a pair that is not drawn
 */
public record Work(
    List<Operation> operations,
    List<Template> templates,
    List<String> faces,
    List<String> meetings,
    Optional<Grain> grain,
    Optional<PanelReport> panel,
    Optional<Plate> plate,
    Optional<OtherPiece> otherPiece) {

  public Work {
    operations = List.copyOf(operations);
    templates = List.copyOf(templates);
    faces = List.copyOf(faces);
    meetings = List.copyOf(meetings);
  }

  /**
   * One operation with its setup.
   *
   * @param number in working order, from 1
   * @param kind the trade's word, such as recess
   * @param face A or B
   * @param routedFrom the faces it is routed from in the order the grain asks for
   * @param router hand or table; empty for what is drilled
   * @param faceUp the face that lies up while it is worked
   * @param feed which way the bit passes round, seen from above; empty for what is drilled
   * @param template number of the plate that makes it; empty where it needs none
   * @param depth below the face; empty right through
   * @param cutterDiameter empty for what is drilled
   * @param follower likewise
   * @param passes depths below the face, or of a groove the bites into the edge
   * @param spacers on the stop, one for each pass
   * @param speedCeiling revolutions a minute; empty where not known
   * @param leastTemplate the thinnest template that serves; empty where not known
   */
  public record Operation(
      int number,
      String name,
      String kind,
      String face,
      List<String> routedFrom,
      Optional<String> router,
      String faceUp,
      Optional<String> feed,
      OptionalInt template,
      OptionalDouble depth,
      OptionalDouble cutterDiameter,
      Optional<Report.Follower> follower,
      List<Double> passes,
      List<Double> spacers,
      OptionalInt speedCeiling,
      OptionalDouble leastTemplate) {

    public Operation {
      routedFrom = List.copyOf(routedFrom);
      passes = List.copyOf(passes);
      spacers = List.copyOf(spacers);
    }
  }

  /**
   * One plate.
   *
   * @param makes names of the operations
   * @param eitherSideUp whether it is its own mirror image
   * @param mirroredPrint whether its paper is printed mirrored
   */
  public record Template(
      int number, List<String> makes, boolean eitherSideUp, boolean mirroredPrint) {

    public Template {
      makes = List.copyOf(makes);
    }
  }

  /**
   * The template of the edge.
   *
   * @param kind {@code half}, or {@code shared} with other parts
   * @param name of the files it is in
   * @param size box round half a template; empty for a shared one, which the families tell
   * @param centreLine of half a template, two points
   * @param pastCentre mm that half a template goes on past it
   */
  public record Plate(
      String kind,
      String name,
      Optional<Bounds> size,
      List<Point> centreLine,
      OptionalDouble pastCentre) {

    public Plate {
      centreLine = List.copyOf(centreLine);
    }
  }

  /**
   * The other piece of a pair.
   *
   * @param hand left or right
   * @param name of its files
   * @param mirror the line it is mirrored in, two points
   * @param templateSideUp on its face A
   * @param grain empty for sheet stock
   * @param files written for it
   */
  public record OtherPiece(
      String hand,
      String name,
      List<Point> mirror,
      String templateSideUp,
      Optional<Grain> grain,
      List<String> files) {

    public OtherPiece {
      mirror = List.copyOf(mirror);
      files = List.copyOf(files);
    }
  }

  /**
   * How the routed edges meet the fibres.
   *
   * @param degrees direction of the fibres, counter-clockwise from x
   * @param along share of routed edge along the grain, 0 to 1, and so the next three
   * @param turnsWork whether the plan turns the work over
   * @param backingBlocks where one is held, as numbered on the drawing
   * @param shortGrain middles of the places that split easily, likewise
   */
  public record Grain(
      double degrees,
      double along,
      double clean,
      double tears,
      double endGrain,
      boolean turnsWork,
      List<Point> backingBlocks,
      List<Point> shortGrain) {

    public Grain {
      backingBlocks = List.copyOf(backingBlocks);
      shortGrain = List.copyOf(shortGrain);
    }
  }
}
