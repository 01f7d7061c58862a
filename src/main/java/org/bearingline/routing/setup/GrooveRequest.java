package org.bearingline.routing.setup;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.routing.operation.Face;

/**
 * What a groove along an edge asks of the router; lengths in mm.
 *
 * @param operation its name, for sentences
 * @param cutter the slot cutter on its bearing
 * @param face the face the router works on
 * @param fromFace from that face to the near side of the groove, 0 or more
 * @param width of the groove, square to the face
 * @param into how deep it goes in from the edge
 * @param deepestPass the maker's own limit for a bite into the edge; empty for that of practice
 * @param bearings the maker owns that fit the cutter, for going in by steps
 * @param straight whether all of the edge is one straight, along which a fence serves
 */
public record GrooveRequest(
    String operation,
    SlotCutter cutter,
    Face face,
    double fromFace,
    double width,
    double into,
    OptionalDouble deepestPass,
    List<Follower.Bearing> bearings,
    boolean straight) {

  /** Along an edge that may be curved. */
  public GrooveRequest(
      String operation,
      SlotCutter cutter,
      Face face,
      double fromFace,
      double width,
      double into,
      OptionalDouble deepestPass,
      List<Follower.Bearing> bearings) {
    this(operation, cutter, face, fromFace, width, into, deepestPass, bearings, false);
  }

  /** Fails with a {@link org.bearingline.problem.Problem} on lengths that cannot be. */
  public GrooveRequest {
    Objects.requireNonNull(operation);
    Objects.requireNonNull(cutter);
    Objects.requireNonNull(face);
    Checks.from0("from-face", fromFace);
    Checks.above0("width", width);
    Checks.above0("into", into);
    Checks.above0("deepest-pass", deepestPass);
    bearings = List.copyOf(bearings);
  }
}
