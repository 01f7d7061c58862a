package org.bearingline.routing.operation;

import java.util.List;
import java.util.Optional;

/** An operation whose bit follows an edge. */
public sealed interface Routed extends Operation permits EdgeOperation, EdgeGroove, Hollow {

  /** The bit and its follower. */
  Tooling tool();

  /** The edge that is shaped or followed. */
  Target edge();

  @Override
  default Optional<Tooling> tooling() {
    return Optional.of(tool());
  }

  @Override
  default Optional<Target> target() {
    return Optional.of(edge());
  }

  @Override
  default List<Hole> holes() {
    return List.of();
  }
}
