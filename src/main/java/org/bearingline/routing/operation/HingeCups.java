package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Part;
import org.bearingline.routing.BoardSide;
import org.bearingline.routing.Practice;

/**
 * The holes that take the cups of concealed hinges, 35 mm wide, with the pilot holes of their
 * screws.
 *
 * @param head name and face: the back of the door
 * @param cups centres and size of the cups
 * @param screws pilot holes, two for each cup
 */
public record HingeCups(Head head, List<Hole> cups, List<Hole> screws) implements Drilled {

  public HingeCups {
    cups = List.copyOf(cups);
    screws = List.copyOf(screws);
  }

  /**
   * Size and place of a cup.
   *
   * @param diameter mm
   * @param depth mm
   * @param fromEdge mm of wood between the cup and the edge of the door
   */
  public record Cup(double diameter, double depth, double fromEdge) {
    /** Figures of common practice. */
    public static Cup usual() {
      Practice facts = Facts.shipped();
      return new Cup(facts.mm("cup-diameter"), facts.mm("cup-depth"), facts.mm("cup-from-edge"));
    }

    /** mm from the edge of the door to the centre of the cup. */
    public double centreFromEdge() {
      return fromEdge + diameter / 2;
    }
  }

  /**
   * Cups along a straight side.
   *
   * @param along mm along the side: x of a top or bottom side, y of a left or right one
   */
  public static HingeCups along(Head head, Part part, BoardSide side, List<Double> along, Cup cup) {
    Practice facts = Facts.shipped();
    List<Hole> cups = new ArrayList<>();
    List<Hole> screws = new ArrayList<>();
    Point in = side.outward().times(-1);
    Point beside = side.outward().left().times(facts.mm("cup-screw-spacing") / 2);
    for (double at : along) {
      double reach = Math.max(cup.diameter() / 2, facts.mm("cup-screw-spacing") / 2);
      Line rim = StraightSide.covering(part, side, at - reach, at + reach, head);
      Point centre = StraightSide.pointOn(rim, side, at).plus(in.times(cup.centreFromEdge()));
      cups.add(new Hole(centre, cup.diameter(), OptionalDouble.of(cup.depth()), head.name()));
      Point back = centre.plus(in.times(facts.mm("cup-screw-setback")));
      for (Point p : List.of(back.minus(beside), back.plus(beside))) {
        screws.add(
            new Hole(
                p,
                facts.mm("cup-screw-diameter"),
                OptionalDouble.of(facts.mm("cup-screw-depth")),
                head.name() + " screw"));
      }
    }
    return new HingeCups(head, cups, screws);
  }

  @Override
  public String word() {
    return "hinge cups";
  }

  @Override
  public List<Hole> holes() {
    List<Hole> all = new ArrayList<>(cups);
    all.addAll(screws);
    return all;
  }

  @Override
  public HingeCups mirrored(Similarity mirror) {
    return new HingeCups(head, Hole.mirrored(cups, mirror), Hole.mirrored(screws, mirror));
  }
}
