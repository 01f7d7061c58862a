package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

  private static final int HALVINGS = 60;

  private FrameOpeningMaker() {}

  static FrameOpening make(
      double width,
      double height,
      Optional<Part> topRail,
      Optional<Part> bottomRail,
      OptionalDouble from,
      Units units) {
    check("width", width);
    check("height", height);
    FrameEdge top =
        topRail
            .map(part -> placed(part, BoardSide.TOP, height, width, from, units))
            .orElseGet(() -> straight(new Point(0, height), new Point(width, height)));
    FrameEdge bottom =
        bottomRail
            .map(part -> placed(part, BoardSide.BOTTOM, 0, width, from, units))
            .orElseGet(() -> straight(new Point(width, 0), Point.ORIGIN));
    FrameOpening opening = new FrameOpening(width, height, top, bottom);
    if (from.isPresent()) {
      // The edges of an opening that does not begin at the stile may stand elsewhere.
      Similarity down = Similarity.translation(0, -bottom.inner().end().y());
      FrameEdge upper = top.transformed(down);
      opening = new FrameOpening(width, upper.inner().start().y(), upper, bottom.transformed(down));
    }
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

  /**
   * Turned so that its wood lies on its side of the opening, its left shoulder at a height.
   *
   * @param from mm from that shoulder to the opening; empty where the opening takes all of the rail
   */
  private static FrameEdge placed(
      Part part, BoardSide side, double height, double width, OptionalDouble from, Units units) {
    RailEdge rail = RailEdge.of(part);
    boolean top = side == BoardSide.TOP;
    double turn = side.outward().degrees() - rail.intoWood().degrees();
    Similarity rotation = Similarity.rotation(turn, Point.ORIGIN);
    Path inner = rail.inner().transformed(rotation);
    Point left = top ? inner.start() : inner.end();
    Point right = top ? inner.end() : inner.start();
    checkLength(part, side, right.x() - left.x(), width, from, units);
    double start = from.orElse(0);
    Similarity place = rotation.then(Similarity.translation(-start - left.x(), height - left.y()));
    Path whole = rail.whole().transformed(place);
    Path all = rail.inner().transformed(place);
    boolean level = Math.abs(right.y() - left.y()) < SAME_LENGTH;
    boolean shaped = !(level && rail.isStraight());
    return new FrameEdge(from.isPresent() ? between(all, top, width) : all, whole, shaped);
  }

  private static void checkLength(
      Part part, BoardSide side, double length, double width, OptionalDouble from, Units units) {
    if (from.isPresent()) {
      if (from.getAsDouble() < -SAME_LENGTH || from.getAsDouble() + width > length + SAME_LENGTH) {
        throw new Problem(
            Place.field(part.name()),
            "the "
                + side.word()
                + " rail is only "
                + Length.print(length, units)
                + " long between its shoulders, too short for an opening of "
                + Length.print(width, units)
                + " beside its muntin");
      }
    } else if (Math.abs(length - width) > SAME_LENGTH) {
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
  }

  /** The stretch of a rail's edge between two uprights, 0 and {@code width} to the right. */
  private static Path between(Path edge, boolean toRight, double width) {
    PathPlace first = at(edge, toRight ? 0 : width, toRight);
    PathPlace last = at(edge, toRight ? width : 0, toRight);
    return new Path(first.to(last, edge));
  }

  private static PathPlace at(Path edge, double x, boolean toRight) {
    double low = 0;
    double high = edge.length();
    for (int step = 0; step < HALVINGS; step++) {
      double middle = (low + high) / 2;
      boolean before = PathPlace.along(edge, middle).on(edge).x() < x;
      if (before == toRight) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return PathPlace.along(edge, (low + high) / 2);
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
