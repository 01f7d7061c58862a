package org.bearingline.routing.operation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Similarity;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.Station;

/** One thing done to a part with one tool from one face. */
public sealed interface Operation permits Routed, Drilled {

  Head head();

  default String name() {
    return head().name();
  }

  default Face face() {
    return head().face();
  }

  default Station station() {
    return head().handling().station();
  }

  /**
   * The face that lies up while it is worked: at the table a cut that stops inside the wood needs
   * its own face down, on the table.
   */
  default Face faceUp() {
    return station() == Station.TABLE && depth().isPresent() ? face().other() : face();
  }

  /** The face that looks at the router. */
  default Face towardsRouter() {
    return station() == Station.TABLE ? faceUp().other() : face();
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
  List<Hole> holes();

  /** A problem at the place where this operation is written. */
  default Problem problem(String sentence) {
    return new Problem(place(), sentence);
  }

  /**
   * The same of the part's mirror image: from the same face with the same tool. Which way the
   * router then goes follows from the mirrored edge, it is not mirrored.
   *
   * @param mirror a mirroring that keeps lengths
   */
  Operation mirrored(Similarity mirror);
}
