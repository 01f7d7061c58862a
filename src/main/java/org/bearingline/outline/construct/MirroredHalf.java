package org.bearingline.outline.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/** A drawn half completed by its mirror image in a straight axis. */
public final class MirroredHalf {

  /** Share of the half's size within which a point counts as on the axis. */
  private static final double ON_AXIS = 1e-7;

  /** Sine of the angle within which a straight counts as square to the axis or along it. */
  private static final double SQUARE = 1e-9;

  private MirroredHalf() {}

  /**
   * The half followed by its mirror image: one chain. The half must end on the axis through p and
   * q; where a straight or an arc crosses the axis at right angles it and its image become one.
   */
  public static Path complete(Path half, Point p, Point q) {
    Similarity mirror = mirror(p, q);
    Point end = onAxis(half.end(), "ends", half, mirror);
    List<Primitive> drawn = half.primitives();
    List<Primitive> pieces = new ArrayList<>(drawn.subList(0, drawn.size() - 1));
    Primitive last = drawn.get(drawn.size() - 1);
    requireNotAlong(last, p, q, "ends", "end it before that");
    Primitive crossing = last.withEnds(last.start(), end);
    joined(crossing, mirror, p, q)
        .ifPresentOrElse(
            pieces::add,
            () -> {
              pieces.add(crossing);
              pieces.add(image(crossing, mirror, end));
            });
    for (int i = drawn.size() - 2; i >= 0; i--) {
      pieces.add(image(drawn.get(i), mirror, pieces.get(pieces.size() - 1).end()));
    }
    return new Path(pieces);
  }

  /**
   * The closed loop of a half that starts and ends on the axis through p and q; pieces that cross
   * it at right angles are joined at both ends.
   */
  public static Loop close(Path half, Point p, Point q) {
    Similarity mirror = mirror(p, q);
    Point start = onAxis(half.start(), "starts", half, mirror);
    List<Primitive> pieces = new ArrayList<>(complete(half, p, q).primitives());
    Primitive first = pieces.get(0);
    if (pieces.size() == 1) {
      return new Loop(pieces);
    }
    requireNotAlong(first, p, q, "starts", "start it after that");
    int last = pieces.size() - 1;
    pieces.set(0, first.withEnds(start, first.end()));
    pieces.set(last, pieces.get(last).withEnds(pieces.get(last).start(), start));
    Optional<Primitive> joined = joined(pieces.get(last), mirror, p, q);
    if (joined.isPresent() && pieces.size() > 2) {
      pieces.set(0, joined.get().withEnds(pieces.get(last).start(), first.end()));
      pieces.remove(last);
    }
    return new Loop(pieces);
  }

  private static void requireNotAlong(
      Primitive piece, Point p, Point q, String verb, String remedy) {
    if (piece instanceof Line line && Math.abs(axis(p, q).cross(line.tangentAt(0))) < SQUARE) {
      throw Sizes.refusal(
          "the half %s with a straight along the mirror axis; %s".formatted(verb, remedy));
    }
  }

  private static Similarity mirror(Point p, Point q) {
    if (!(p.distanceTo(q) > 0)) {
      throw Sizes.refusal("a mirror axis needs two different points");
    }
    return Similarity.mirror(p, q);
  }

  private static Point onAxis(Point point, String verb, Path half, Similarity mirror) {
    Point across = mirror.apply(point);
    double off = point.distanceTo(across) / 2;
    double size = Math.max(1, Math.max(half.bounds().width(), half.bounds().height()));
    if (off > ON_AXIS * size) {
      throw Sizes.refusal(
          "the half %s %s away from the mirror axis; bring that point onto the axis"
              .formatted(verb, Sizes.about(off)));
    }
    return point.towards(across, 0.5);
  }

  private static Primitive image(Primitive piece, Similarity mirror, Point start) {
    Primitive back = piece.transformed(mirror).reversed();
    return back.withEnds(start, back.end());
  }

  /** The piece and its image as one, where the piece ends on the axis and square to it. */
  private static Optional<Primitive> joined(Primitive piece, Similarity mirror, Point p, Point q) {
    Point far = mirror.apply(piece.start());
    return piece.match(
        line ->
            Math.abs(axis(p, q).dot(line.tangentAt(1))) < SQUARE
                ? Optional.of(new Line(line.start(), far))
                : Optional.empty(),
        arc -> joined(arc, far, mirror));
  }

  private static Optional<Primitive> joined(Arc arc, Point far, Similarity mirror) {
    Point across = mirror.apply(arc.center());
    boolean centered = arc.center().distanceTo(across) / 2 <= ON_AXIS * arc.radius();
    double sweep = 2 * arc.sweep();
    if (!centered || Math.abs(sweep) > 360 + SQUARE) {
      return Optional.empty();
    }
    Point center = arc.center().towards(across, 0.5);
    boolean whole = Math.abs(sweep) > 360 - SQUARE;
    return Optional.of(
        new Arc(
            center,
            arc.radius(),
            arc.start(),
            whole ? arc.start() : far,
            whole ? Math.copySign(360, sweep) : sweep));
  }

  private static Point axis(Point p, Point q) {
    return q.minus(p).unit();
  }
}
