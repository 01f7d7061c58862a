package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;

/** The panel as a piece to make: laid with its fibres along x, with kinds of edges and marks. */
final class PanelPart {

  /** Half the length of a mark where a member's edge falls, mm. */
  private static final double HALF_MARK = 10;

  private final FrameOpening opening;
  private final PanelSettings settings;
  private final PanelShape shape;
  private final Units units;

  private PanelPart(FrameOpening opening, PanelSettings settings, PanelShape shape) {
    this.opening = opening;
    this.settings = settings;
    this.shape = shape;
    this.units = settings.units();
  }

  static Part of(
      String name,
      FrameOpening opening,
      PanelSettings settings,
      PanelShape shape,
      Optional<Tongue> tongue) {
    PanelPart maker = new PanelPart(opening, settings, shape);
    Similarity laid = maker.laid();
    List<Mark> marks = new ArrayList<>();
    for (Mark mark : maker.marks()) {
      marks.add(mark.transformed(laid));
    }
    Contour contour = new Contour(shape.loop(), maker.kinds()).transformed(laid);
    return new Part(name, maker.about(), contour, List.of(), marks, maker.notes(tongue));
  }

  /**
   * Upright fibres are laid along x, the panel's top to the right; its low corner at the origin.
   */
  private Similarity laid() {
    Similarity turn =
        settings.fibres() == Fibres.UPRIGHT
            ? Similarity.rotation(-90, Point.ORIGIN)
            : Similarity.identity();
    Bounds box = shape.loop().transformed(turn).bounds();
    return turn.then(Similarity.translation(-box.minX(), -box.minY()));
  }

  private List<EdgeKind> kinds() {
    return shape.sides().stream()
        .map(
            side ->
                side == BoardSide.TOP && opening.top().shaped()
                        || side == BoardSide.BOTTOM && opening.bottom().shaped()
                    ? EdgeKind.ROUTED
                    : EdgeKind.SAWN)
        .toList();
  }

  private String about() {
    return "Panel of "
        + settings.species().name()
        + ", "
        + Length.print(settings.thickness(), units)
        + " thick, in a groove "
        + Length.print(settings.slot().depth(), units)
        + " deep";
  }

  /** In the frame's place. */
  private List<Mark> marks() {
    Point middle = PanelGaps.middle(opening);
    boolean upright = settings.fibres() == Fibres.UPRIGHT;
    Point along = upright ? new Point(0, 1) : new Point(1, 0);
    double[] panel = span(shape.loop(), middle, along);
    List<Mark> marks = new ArrayList<>();
    marks.add(
        new Mark.CentreLine(
            middle.plus(along.times(panel[0])), middle.plus(along.times(panel[1])), "centre"));
    double[] rails = span(opening.loop(), middle, new Point(0, 1));
    witness(marks, middle.plus(new Point(0, rails[1])), new Point(1, 0), "top rail's edge");
    witness(marks, middle.plus(new Point(0, rails[0])), new Point(1, 0), "bottom rail's edge");
    double[] stiles = span(opening.loop(), middle, new Point(1, 0));
    witness(marks, middle.plus(new Point(stiles[0], 0)), new Point(0, 1), "left stile's edge");
    witness(marks, middle.plus(new Point(stiles[1], 0)), new Point(0, 1), "right stile's edge");
    return marks;
  }

  /** Across the middle of a side, where the frame's edge falls when the panel is put in. */
  private static void witness(List<Mark> marks, Point at, Point along, String label) {
    marks.add(
        new Mark.ShoulderLine(
            at.minus(along.times(HALF_MARK)), at.plus(along.times(HALF_MARK)), label));
  }

  /** How far a loop reaches from a point inside it, straight back and straight on, in mm. */
  private static double[] span(Loop loop, Point from, Point direction) {
    Bounds box = loop.bounds();
    double far = box.width() + box.height();
    Region inside = Region.of(Outline.of(loop));
    return new double[] {
      -reach(inside, from, direction.times(-far)) * far,
      reach(inside, from, direction.times(far)) * far
    };
  }

  private static double reach(Region inside, Point from, Point step) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; i++) {
      double share = (low + high) / 2;
      if (inside.contains(from.plus(step.times(share)))) {
        low = share;
      } else {
        high = share;
      }
    }
    return low;
  }

  private List<String> notes(Optional<Tongue> tongue) {
    List<String> notes = new ArrayList<>();
    boolean upright = settings.fibres() == Fibres.UPRIGHT;
    String members = upright ? "rails" : "stiles";
    if (settings.species().solid()) {
      notes.add(
          "The fibres run along this drawing, "
              + (upright ? "up the frame." : "from stile to stile."));
      notes.add(
          "Set the centre line on the middle of both "
              + members
              + " and hold the panel there only, with a pin or a dot of glue, so that it moves alike"
              + " to both sides. Finish it before it is put in.");
    } else {
      notes.add("Set the centre line on the middle of both " + members + ".");
    }
    tongue.ifPresent(
        t ->
            notes.add(
                "Thin the edge all round to "
                    + Length.print(t.thickness(), units)
                    + " over a width of "
                    + Length.print(t.width(), units)
                    + ", and try it in the slot."));
    return notes;
  }
}
