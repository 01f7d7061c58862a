package org.bearingline.routing.grain;

import java.util.Objects;
import org.bearingline.routing.Station;
import org.bearingline.routing.operation.Face;

/**
 * From which side the router comes. A bit turns clockwise as seen from its router, so against its
 * turn the router has the wood on its left, seen from the router: counter-clockwise round an
 * outside edge, clockwise round an opening. Seen from the other face the same travel is mirrored.
 *
 * @param station where the router is
 * @param up the face that looks up
 */
public record Approach(Station station, Face up) {

  public Approach {
    Objects.requireNonNull(station);
    Objects.requireNonNull(up);
  }

  /** A router in the hands on face A. */
  public static Approach usual() {
    return new Approach(Station.HAND_HELD, Face.A);
  }

  /** The face that looks at the router. */
  public Face towardsRouter() {
    return station == Station.HAND_HELD ? up : up.other();
  }

  /** Whether the cutter passes with the wood on its left, in the drawing seen from face A. */
  public boolean isWoodOnLeft() {
    return towardsRouter() == Face.A;
  }

  /** The same router after the work is turned over. */
  public Approach turnedOver() {
    return new Approach(station, up.other());
  }
}
