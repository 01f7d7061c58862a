package org.bearingline.routing.operation;

import java.util.Objects;
import org.bearingline.problem.Place;
import org.bearingline.routing.Station;

/**
 * What every operation has.
 *
 * @param name unique among the part's operations
 * @param face that the cut is seen from: a cut to a depth goes into it, and at what goes through
 *     it lies up
 * @param place where it is written, for mistakes; nowhere for one made by the program
 * @param station where the router is
 */
public record Head(String name, Face face, Place place, Station station) {

  public Head {
    Objects.requireNonNull(name);
    Objects.requireNonNull(face);
    Objects.requireNonNull(place);
    Objects.requireNonNull(station);
  }

  /** With the router in the hands. */
  public Head(String name, Face face, Place place) {
    this(name, face, place, Station.HAND_HELD);
  }

  public static Head of(String name, Face face) {
    return new Head(name, face, Place.nowhere());
  }
}
