package org.bearingline.routing.operation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.problem.Place;

/** One thing done to a part with one tool from one face. */
public sealed interface Operation
    permits EdgeOperation,
        EdgeGroove,
        Recess,
        ThroughOpening,
        Ledge,
        StoppedSlot,
        Mortise,
        HingeLeaf,
        InlayPocket,
        InlayPlug,
        HingeCups,
        Drilling {

  Head head();

  default String name() {
    return head().name();
  }

  default Face face() {
    return head().face();
  }

  default Place place() {
    return head().place();
  }

  /** The trade's word, such as "recess". */
  String word();

  /** The bit and its follower; empty for what is drilled. */
  Optional<Tooling> tooling();

  /** How deep the bit goes below the face, in mm; empty right through the stock. */
  OptionalDouble depth();

  /** The edge that is shaped or followed; empty for what is drilled. */
  Optional<Target> target();

  /** What is drilled; empty for what is routed. */
  default List<Hole> holes() {
    return List.of();
  }
}
