package org.bearingline.routing.operation;

import java.util.List;
import org.bearingline.outline.Similarity;

/**
 * Holes whose centres are marked through the template.
 *
 * @param head name and face
 * @param holes where to drill
 */
public record Drilling(Head head, List<Hole> holes) implements Drilled {

  public Drilling {
    holes = List.copyOf(holes);
  }

  @Override
  public String word() {
    return "drilling";
  }

  @Override
  public Drilling mirrored(Similarity mirror) {
    return new Drilling(head, Hole.mirrored(holes, mirror));
  }
}
