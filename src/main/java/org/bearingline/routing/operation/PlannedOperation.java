package org.bearingline.routing.operation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.bearingline.routing.RoutingResult;

/**
 * One operation worked out.
 *
 * @param operation what is done
 * @param template number of the template it uses; empty where it needs none
 * @param routing reach, the cutter's paths, feed and proof of this operation alone, as seen from
 *     face A; empty for what is drilled and for a groove along the work's own edge
 * @param sentences for the maker
 */
public record PlannedOperation(
    Operation operation,
    OptionalInt template,
    Optional<RoutingResult> routing,
    List<String> sentences) {

  public PlannedOperation {
    sentences = List.copyOf(sentences);
  }
}
