package org.bearingline.routing.operation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.bearingline.outline.Region;
import org.bearingline.routing.Groove;
import org.bearingline.routing.RoutingResult;

/**
 * One operation worked out, as seen from face A.
 *
 * @param operation what is done
 * @param template number of the template it uses; empty where it needs none
 * @param routing reach, the cutter's paths, feed, saw line and proof of this operation alone; empty
 *     for what is drilled, for grooves and for plugs
 * @param made what the tool makes from the finished template: the region cut out, or what remains
 *     of an outer edge or a plug; empty for what is drilled and for grooves
 * @param groove of a groove
 * @param sentences for the maker
 */
public record PlannedOperation(
    Operation operation,
    OptionalInt template,
    Optional<RoutingResult> routing,
    Region made,
    Optional<Groove> groove,
    List<String> sentences) {

  public PlannedOperation {
    sentences = List.copyOf(sentences);
  }
}
