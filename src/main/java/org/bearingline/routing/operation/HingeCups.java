package org.bearingline.routing.operation;

import java.util.List;

/**
 * The 35 mm holes that take the cups of concealed hinges, with their screw holes.
 *
 * @param head name and face
 * @param holes where to drill
 */
public record HingeCups(Head head, List<Hole> holes) implements Drilled {

  public HingeCups {
    holes = List.copyOf(holes);
  }

  @Override
  public String word() {
    return "hinge cups";
  }
}
