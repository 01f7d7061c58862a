package org.bearingline.routing.operation;

import java.util.Objects;
import org.bearingline.problem.Place;

/**
 * What every operation has.
 *
 * @param name unique among the part's operations
 * @param face that the cut is seen from: a cut to a depth goes into it, and at what goes through it
 *     lies up
 * @param place where it is written, for mistakes; nowhere for one made by the program
 * @param handling how the maker works it
 */
public record Head(String name, Face face, Place place, Handling handling) {

  public Head {
    Objects.requireNonNull(name);
    Objects.requireNonNull(face);
    Objects.requireNonNull(place);
    Objects.requireNonNull(handling);
  }

  /** Worked in the usual way. */
  public Head(String name, Face face, Place place) {
    this(name, face, place, Handling.USUAL);
  }

  public static Head of(String name, Face face) {
    return new Head(name, face, Place.nowhere());
  }

  /** The same, worked in another way. */
  public Head with(Handling other) {
    return new Head(name, face, place, other);
  }
}
