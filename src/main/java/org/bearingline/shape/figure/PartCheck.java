package org.bearingline.shape.figure;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.step.Pen;

/** Refuses an edge that crosses itself, and cavities that leave the part or cross each other. */
public final class PartCheck {

  private record Placed(Cavity cavity, Place place) {}

  private final Loop edge;
  private final List<Placed> cavities = new ArrayList<>();

  private PartCheck(Loop edge) {
    this.edge = edge;
  }

  /**
   * Checks the outer edge.
   *
   * @param places of the steps, one for each primitive
   */
  public static PartCheck ofOutline(Contour edge, List<Place> places) {
    return new PartCheck(edge.loop());
  }

  /** Checks one more cavity against the edge and the cavities before. */
  public void add(Cavity cavity, Place place) {
    Loop loop = cavity.contour().loop();
    for (Primitive piece : loop.primitives()) {
      Point probe = piece.middle();
      if (!edge.contains(probe)) {
        throw new Problem(place, "“" + cavity.name() + "” leaves the part at " + Pen.words(probe));
      }
    }
    cavities.add(new Placed(cavity, place));
  }
}
