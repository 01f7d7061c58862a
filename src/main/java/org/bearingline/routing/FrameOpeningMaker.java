package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Puts a frame's opening together from its parts. */
final class FrameOpeningMaker {

  /** A rail may be this much longer or shorter than the stiles stand apart, mm. */
  private static final double SAME_LENGTH = 0.05;

  /** Wood of both rails in one place beyond this, in mm², is no rounding. */
  private static final double CRUMB_AREA = 1e-6;

  private FrameOpeningMaker() {}

  static FrameOpening make(
      double width, double height, Optional<Part> topRail, Optional<Part> bottomRail, Units units) {
    check("width", width);
    check("height", height);
    FrameEdge top =
        topRail
            .map(part -> placed(part, BoardSide.TOP, new Point(0, height), width, units))
            .orElseGet(() -> straight(new Point(0, height), new Point(width, height)));
    FrameEdge bottom =
        bottomRail
            .map(part -> placed(part, BoardSide.BOTTOM, Point.ORIGIN, width, units))
            .orElseGet(() -> straight(new Point(width, 0), Point.ORIGIN));
    FrameOpening opening = new FrameOpening(width, height, top, bottom);
    checkApart(opening, units);
    return opening;
  }

  private static void check(String name, double mm) {
    if (!(mm > 0 && mm <= Length.LARGEST)) {
      throw new Problem(
          Place.field(name),
          "a frame's opening needs a "
              + name
              + " above 0 and up to "
              + Length.LARGEST / 1000
              + " m between its inner edges");
    }
  }

  private static FrameEdge straight(Point from, Point to) {
    Path line = Path.of(new Line(from, to));
    return new FrameEdge(line, line, false);
  }

  /** Turned so that its wood lies on its side of the opening, its left end at the given corner. */
  private static FrameEdge placed(
      Part part, BoardSide side, Point leftEnd, double width, Units units) {
    RailEdge rail = RailEdge.of(part);
    boolean top = side == BoardSide.TOP;
    double turn = side.outward().degrees() - rail.intoWood().degrees();
    Similarity rotation = Similarity.rotation(turn, Point.ORIGIN);
    Path inner = rail.inner().transformed(rotation);
    Point left = top ? inner.start() : inner.end();
    Point right = top ? inner.end() : inner.start();
    double length = right.x() - left.x();
    if (Math.abs(length - width) > SAME_LENGTH) {
      throw new Problem(
          Place.field(part.name()),
          "the "
              + side.word()
              + " rail is "
              + Length.print(length, units)
              + " long between its shoulders and the stiles stand "
              + Length.print(width, units)
              + " apart; give both the same measure");
    }
    Similarity place =
        rotation.then(Similarity.translation(leftEnd.x() - left.x(), leftEnd.y() - left.y()));
    Path whole = rail.whole().transformed(place);
    boolean level = Math.abs(right.y() - left.y()) < SAME_LENGTH;
    boolean shaped = !(level && rail.isStraight());
    return new FrameEdge(rail.inner().transformed(place), whole, shaped);
  }

  private static void checkApart(FrameOpening opening, Units units) {
    Point rightTop = opening.top().inner().end();
    Point rightFoot = opening.bottom().inner().start();
    Region top = FrameWood.rail(opening, BoardSide.TOP, 1);
    Region bottom = FrameWood.rail(opening, BoardSide.BOTTOM, 1);
    if (rightTop.y() <= rightFoot.y() || Overlay.intersection(top, bottom).area() > CRUMB_AREA) {
      throw new Problem(
          Place.field("height"),
          "the top and bottom rails' edges meet in the opening, "
              + Length.print(opening.height(), units)
              + " high at the left stile; make it higher or the curves flatter");
    }
  }

  static Loop loop(FrameOpening opening) {
    List<Primitive> pieces = new ArrayList<>(reversed(opening.bottom().inner()));
    List<Primitive> top = reversed(opening.top().inner());
    pieces.add(new Line(pieces.get(pieces.size() - 1).end(), top.get(0).start()));
    pieces.addAll(top);
    pieces.add(new Line(top.get(top.size() - 1).end(), pieces.get(0).start()));
    return new Loop(pieces);
  }

  private static List<Primitive> reversed(Path path) {
    List<Primitive> back = new ArrayList<>();
    for (int i = path.primitives().size() - 1; i >= 0; i--) {
      back.add(path.primitives().get(i).reversed());
    }
    return back;
  }
}
