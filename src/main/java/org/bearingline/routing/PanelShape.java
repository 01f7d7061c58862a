package org.bearingline.routing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The opening of a frame grown into its grooves, each side by its own amount: what lies between the
 * four members' regions {@link FrameSide#beyond}.
 *
 * @param loop counter-clockwise
 * @param sides what side each primitive of the loop lies on
 */
record PanelShape(Loop loop, List<BoardSide> sides) {

  /** An edge this near to the line of a stile's groove, in mm, lies on it. */
  private static final double ON = 1e-6;

  PanelShape {
    sides = List.copyOf(sides);
  }

  /**
   * Between the members.
   *
   * @param gaps mm that each side stays before its groove's floor, less than the groove's depth
   */
  static PanelShape between(Map<BoardSide, FrameSide> members, Map<BoardSide, Double> gaps) {
    Map<BoardSide, Region> beyond = new EnumMap<>(BoardSide.class);
    members.forEach((side, member) -> beyond.put(side, member.beyond(gaps.get(side))));
    double left = beyond.get(BoardSide.LEFT).bounds().maxX();
    double right = beyond.get(BoardSide.RIGHT).bounds().minX();
    Region top = beyond.get(BoardSide.TOP);
    Region bottom = beyond.get(BoardSide.BOTTOM);
    // Reaching well into the wood of both rails, so that only their inner edges cut it.
    double low = middleOf(bottom.bounds().minY(), lowest(members.get(BoardSide.BOTTOM).inner()));
    double high = middleOf(top.bounds().maxY(), highest(members.get(BoardSide.TOP).inner()));
    Region between = Region.of(Outline.of(Loop.rectangle(new Bounds(left, low, right, high))));
    between = Overlay.difference(Overlay.difference(between, top), bottom);
    if (between.pieces().size() != 1 || !between.pieces().get(0).openings().isEmpty()) {
      throw new Problem(
          Place.field("panel"),
          "the rails' curves part the panel in two; make the opening higher or the curves flatter");
    }
    Loop loop = between.pieces().get(0).outer();
    List<BoardSide> sides = new ArrayList<>();
    for (Primitive piece : loop.primitives()) {
      sides.add(sideOf(piece, left, right, top, bottom));
    }
    return new PanelShape(loop, sides);
  }

  private static double middleOf(double a, double b) {
    return (a + b) / 2;
  }

  private static double lowest(Path path) {
    return path.bounds().minY();
  }

  private static double highest(Path path) {
    return path.bounds().maxY();
  }

  private static BoardSide sideOf(
      Primitive piece, double left, double right, Region top, Region bottom) {
    Bounds box = piece.bounds();
    if (box.maxX() - left < ON) {
      return BoardSide.LEFT;
    }
    if (right - box.minX() < ON) {
      return BoardSide.RIGHT;
    }
    return top.distanceTo(piece.middle()) < bottom.distanceTo(piece.middle())
        ? BoardSide.TOP
        : BoardSide.BOTTOM;
  }

  /** The pieces of one side. */
  List<Primitive> on(BoardSide side) {
    List<Primitive> pieces = new ArrayList<>();
    int n = sides.size();
    int first = 0;
    while (sides.get((first + n - 1) % n) == side) {
      first++;
    }
    for (int i = 0; i < n; i++) {
      int here = (first + i) % n;
      if (sides.get(here) == side) {
        pieces.add(loop.primitives().get(here));
      }
    }
    return pieces;
  }
}
