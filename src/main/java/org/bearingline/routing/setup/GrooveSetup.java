package org.bearingline.routing.setup;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import org.bearingline.kit.Follower;
import org.bearingline.length.Units;

/**
 * How a groove along an edge is set up: at each height the cutter goes in by bites.
 *
 * @param request what was asked
 * @param heights settings of the cutter's height, in order; one where the groove is as wide as the
 *     cutter is thick
 * @param bites into the edge, in order
 * @param steps bearings of the maker's that go in no faster than the bites, the widest first, the
 *     cutter's own last; empty where one bite does it
 * @param speedCeiling revolutions a minute not to be passed; empty where only the cutter's own
 *     marking tells
 * @param sentences for the card, in the reader's units
 */
public record GrooveSetup(
    GrooveRequest request,
    List<Height> heights,
    List<Bite> bites,
    List<Follower.Bearing> steps,
    OptionalInt speedCeiling,
    List<String> sentences) {

  public GrooveSetup {
    Objects.requireNonNull(request);
    heights = List.copyOf(heights);
    bites = List.copyOf(bites);
    steps = List.copyOf(steps);
    Objects.requireNonNull(speedCeiling);
    sentences = List.copyOf(sentences);
  }

  /**
   * A setting of the cutter's height.
   *
   * @param number from 1
   * @param nearSide mm from the face to the cutter's near side
   * @param spacer mm of spacer on the turret stop; 0 for the last
   */
  public record Height(int number, double nearSide, double spacer) {}

  /**
   * A bite into the edge.
   *
   * @param number from 1
   * @param into mm from the edge
   * @param spacer mm of strip in front of the fence, which stands for the last bite; 0 for the last
   */
  public record Bite(int number, double into, double spacer) {}

  /**
   * Works out the setup.
   *
   * @throws org.bearingline.problem.Problem where the cutter is thicker than the groove is wide,
   *     where its bearing stops it short, or where a bite would be deeper than it can go
   */
  public static GrooveSetup of(GrooveRequest request, Units units) {
    return new GrooveWay(request, units).work();
  }
}
