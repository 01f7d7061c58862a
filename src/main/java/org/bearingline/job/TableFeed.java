package org.bearingline.job;

import java.util.List;
import org.bearingline.part.Cavity;
import org.bearingline.routing.RoutingResult;

/**
 * The way of the bit along the edges of a part that is moved over a router table, face A up. The
 * router comes from below, so what goes through is passed the other way round than by a router in
 * the hands. A cut that stops inside the wood is made with face A down, and seen from face A that
 * is the way of the hands again.
 */
final class TableFeed {

  private TableFeed() {}

  static RoutingResult of(RoutingResult result) {
    List<String> blind =
        result.part().cavities().stream()
            .filter(cavity -> cavity.kind() != Cavity.Kind.THROUGH)
            .map(Cavity::name)
            .toList();
    return result.withFeed(
        result.feed().stream()
            .map(arrow -> blind.contains(arrow.edge()) ? arrow : arrow.reversed())
            .toList());
  }
}
