package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bearingline.part.Cavity;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.routing.Station;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Target;

/** Which way to feed, in a sentence. */
final class FeedWords {

  private FeedWords() {}

  /**
   * The way of the bit round a part's edges, seen from above the work. At a table the work is moved
   * and the bit comes from below, so all is mirrored.
   */
  static String of(Part part, Station station) {
    boolean table = station == Station.TABLE;
    List<String> said = new ArrayList<>();
    if (part.contour().kinds().contains(EdgeKind.ROUTED)) {
      said.add((table ? "clockwise" : "counter-clockwise") + " round the outside edge");
    }
    List<Cavity> cavities = part.cavities();
    if (!cavities.isEmpty()) {
      said.add((table ? "counter-clockwise" : "clockwise") + " round each opening");
    }
    return String.join(", ", said);
  }

  /** Which way the bit passes round an edge, seen from above. */
  static String round(Target edge, Station station) {
    return edge.outside() == (station == Station.TABLE) ? "clockwise" : "counter-clockwise";
  }

  /**
   * What the arrows of a picture mean, in few words.
   *
   * @param up the faces that lie up for them
   */
  static String legend(Set<Station> stations, Set<Face> up) {
    String face =
        !up.contains(Face.B)
            ? ""
            : up.contains(Face.A) ? ", of face B seen through the wood" : ", face B up";
    if (stations.equals(Set.of(Station.TABLE))) {
      return "way of the bit at the table" + face + ": push the work against it";
    }
    return (stations.contains(Station.TABLE)
            ? "way of the bit past the work"
            : "feed, router in the hands")
        + face;
  }

  /** What the layer of the arrows shows. */
  static String title(Set<Station> stations) {
    if (stations.equals(Set.of(Station.TABLE))) {
      return "way of the bit past the work at a router table, the work pushed against it, and how the"
          + " grain takes it, seen from face A";
    }
    return stations.contains(Station.TABLE)
        ? "way of the bit past the work and how the grain takes it, seen from face A"
        : "feed of a hand-held router and how the grain takes it, seen from face A";
  }
}
