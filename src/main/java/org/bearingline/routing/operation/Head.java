package org.bearingline.routing.operation;

import java.util.Objects;
import org.bearingline.problem.Place;

/**
 * What every operation has.
 *
 * @param name unique among the part's operations
 * @param face that lies up while it is worked
 * @param place where it is written, for mistakes; nowhere for one made by the program
 */
public record Head(String name, Face face, Place place) {

  public Head {
    Objects.requireNonNull(name);
    Objects.requireNonNull(face);
    Objects.requireNonNull(place);
  }

  public static Head of(String name, Face face) {
    return new Head(name, face, Place.nowhere());
  }
}
