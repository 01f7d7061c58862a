package org.bearingline.routing.setup;

import java.util.Objects;
import java.util.OptionalDouble;
import org.bearingline.routing.Station;
import org.bearingline.routing.operation.Face;

/**
 * What one operation asks of the router; lengths in mm.
 *
 * @param operation its name, for sentences
 * @param tool bit and follower
 * @param face the face that looks at the router
 * @param depth from that face to the deepest cut, more than 0; the stock's thickness where it goes
 *     through
 * @param through whether the cut goes right through
 * @param templateThickness empty where not chosen yet
 * @param deepestPass the maker's own limit for a pass; empty for that of practice
 * @param station where the router is
 */
public record SetupRequest(
    String operation,
    SetupTool tool,
    Face face,
    double depth,
    boolean through,
    OptionalDouble templateThickness,
    OptionalDouble deepestPass,
    Station station) {

  /** Fails with a {@link org.bearingline.problem.Problem} on lengths of 0, below, or unbounded. */
  public SetupRequest {
    Objects.requireNonNull(operation);
    Objects.requireNonNull(tool);
    Objects.requireNonNull(face);
    Objects.requireNonNull(station);
    Checks.above0("depth", depth);
    Checks.above0("template-thickness", templateThickness);
    Checks.above0("deepest-pass", deepestPass);
  }

  /** With the router in the hands. */
  public SetupRequest(
      String operation,
      SetupTool tool,
      Face face,
      double depth,
      boolean through,
      OptionalDouble templateThickness,
      OptionalDouble deepestPass) {
    this(operation, tool, face, depth, through, templateThickness, deepestPass, Station.HAND_HELD);
  }

  boolean atTable() {
    return station == Station.TABLE;
  }
}
