package org.bearingline.shape.figure;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.step.Pen;

/** Refuses an edge that crosses itself, and cavities that leave the part or cross each other. */
public final class PartCheck {

  private final Loop edge;
  private final List<Cavity> cavities = new ArrayList<>();

  private PartCheck(Loop edge) {
    this.edge = edge;
  }

  /**
   * Checks the outer edge.
   *
   * @param places of the steps, one for each primitive
   */
  public static PartCheck ofOutline(Contour edge, List<Place> places) {
    Meetings.within(edge.loop())
        .ifPresent(
            meeting -> {
              Place later = places.get(meeting.second());
              Place earlier = places.get(meeting.first());
              throw new Problem(
                  later,
                  "the outline crosses or touches itself at "
                      + Pen.words(meeting.at())
                      + (later.equals(earlier) ? "" : ", where it meets " + stepAt(earlier)));
            });
    return new PartCheck(edge.loop());
  }

  private static String stepAt(Place place) {
    return place instanceof Place.Spot spot ? "the step of line " + spot.line() : "an earlier step";
  }

  /** Checks one more cavity against itself, the edge and the cavities before. */
  void add(Cavity cavity, Place place) {
    Loop loop = cavity.contour().loop();
    Meetings.within(loop)
        .ifPresent(
            meeting -> {
              throw new Problem(
                  place, named(cavity) + " crosses or touches itself at " + words(meeting));
            });
    Meetings.between(edge, loop)
        .ifPresent(
            meeting -> {
              throw new Problem(
                  place, named(cavity) + " runs out over the edge at " + words(meeting));
            });
    Point inside = loop.primitives().get(0).middle();
    if (!edge.contains(inside)) {
      throw new Problem(place, named(cavity) + " lies outside the part, at " + Pen.words(inside));
    }
    for (Cavity other : cavities) {
      Meetings.between(other.contour().loop(), loop)
          .ifPresent(
              meeting -> {
                throw new Problem(
                    place, named(cavity) + " runs into " + named(other) + " at " + words(meeting));
              });
    }
    cavities.add(cavity);
  }

  private static String named(Cavity cavity) {
    return "“" + cavity.name() + "”";
  }

  private static String words(Meetings.Meeting meeting) {
    return Pen.words(meeting.at());
  }
}
