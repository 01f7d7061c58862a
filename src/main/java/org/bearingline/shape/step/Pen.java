package org.bearingline.shape.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Plain;

/** Draws the pieces of one closed outline, each with its edge kind and the step it comes from. */
public final class Pen {

  /** Pieces shorter than this, in mm, have no length: far below what a machine can place. */
  static final double SHORTEST = 1e-6;

  /** Far more than any furniture part has; stops a repeat that runs away. */
  private static final int MOST_PIECES = 5_000;

  private record Rounding(double radius, Place place) {}

  private final List<Drawn> pieces = new ArrayList<>();
  private Point first;
  private Point at;
  private Rounding pending;

  void start(Point point, Place place) {
    if (first != null) {
      throw new Problem(place, "an outline has one start; remove this second one");
    }
    first = point;
    at = point;
  }

  /** Where the pen stands. */
  Point at(Place place) {
    if (at == null) {
      throw new Problem(place, "an outline begins with “start: [x, y]”; write it as first step");
    }
    return at;
  }

  /** The piece before, for what goes on tangent to it. */
  Primitive last(Place place) {
    at(place);
    if (pieces.isEmpty()) {
      throw new Problem(
          place, "there is no step before to go on from; give a direction with “along:”");
    }
    return pieces.get(pieces.size() - 1).primitive();
  }

  Optional<Primitive> last() {
    return pieces.isEmpty()
        ? Optional.empty()
        : Optional.of(pieces.get(pieces.size() - 1).primitive());
  }

  void line(Point to, EdgeKind kind, Place place) {
    Point from = at(place);
    if (from.distanceTo(to) < SHORTEST) {
      throw new Problem(
          place,
          "this line has no length: it begins and ends at " + words(from) + "; leave it out");
    }
    add(new Line(from, to), kind, place);
  }

  void add(Primitive piece, EdgeKind kind, Place place) {
    if (pieces.size() >= MOST_PIECES) {
      throw new Problem(place, "the outline has more than " + MOST_PIECES + " pieces");
    }
    if (!(piece.length() >= SHORTEST)) {
      throw new Problem(place, "this step has no length at " + words(piece.start()));
    }
    Rounding rounding = pending;
    pending = null;
    pieces.add(new Drawn(piece, kind, place));
    at = piece.end();
    if (rounding != null) {
      if (pieces.size() < 2) {
        throw new Problem(rounding.place(), "there is no corner before the first step");
      }
      Corners.round(pieces, pieces.size() - 2, rounding.radius(), rounding.place());
      at = pieces.get(pieces.size() - 1).primitive().end();
    }
  }

  void addAll(List<? extends Primitive> run, EdgeKind kind, Place place) {
    run.forEach(piece -> add(piece, kind, place));
  }

  /** Rounds the corner between the piece before and the next. */
  void round(double radius, Place place) {
    at(place);
    if (pending != null) {
      throw new Problem(place, "this corner is rounded twice; remove one “round:”");
    }
    if (radius > 0) {
      pending = new Rounding(radius, place);
    }
  }

  /** Goes on with the mirror image of all that is drawn, backwards, across the line p q. */
  void mirror(Point p, Point q, Place place) {
    last(place);
    double away = Math.abs(q.minus(p).unit().cross(at.minus(p)));
    if (away > SHORTEST) {
      throw new Problem(
          place,
          "the half must end on the mirror line, and it ends at "
              + words(at)
              + ", "
              + Plain.mm(away)
              + " from it");
    }
    int half = pieces.size();
    Mirroring.complete(pieces, p, q, place);
    if (pending != null) {
      Rounding rounding = pending;
      pending = null;
      Corners.round(pieces, half - 1, rounding.radius(), rounding.place());
    }
    at = pieces.get(pieces.size() - 1).primitive().end();
  }

  /** Goes straight back to the start, if it is not there yet. */
  void close(EdgeKind kind, Place place) {
    Point from = at(place);
    if (from.distanceTo(first) >= SHORTEST) {
      line(first, kind, place);
    }
  }

  /** The closed outline; one that stays open is refused at {@code place}. */
  public Contour contour(Place place) {
    at(place);
    if (pieces.isEmpty()) {
      throw new Problem(place, "the outline has a start and no further step");
    }
    Point end = pieces.get(pieces.size() - 1).primitive().end();
    if (end.distanceTo(first) > SHORTEST) {
      throw new Problem(
          pieces.get(pieces.size() - 1).place(),
          "the outline does not close: it starts at "
              + words(first)
              + " and ends at "
              + words(end)
              + "; add “close: routed” or “close: sawn” as last step");
    }
    Closing.weld(pieces);
    if (pending != null) {
      Corners.roundClosing(pieces, pending.radius(), pending.place());
      pending = null;
    } else {
      Closing.joinSeam(pieces);
    }
    return new Contour(
        new Loop(pieces.stream().map(Drawn::primitive).toList()),
        pieces.stream().map(Drawn::kind).toList());
  }

  /** The places of the steps, one for each piece of the contour. */
  public List<Place> places() {
    return pieces.stream().map(Drawn::place).toList();
  }

  /** A point in words, in mm. */
  public static String words(Point point) {
    return "(" + Plain.mm(point.x()) + ", " + Plain.mm(point.y()) + ")";
  }

  /** Runs a construction whose problems know no place, and gives them one. */
  public static <T> T at(Place place, Supplier<T> construction) {
    try {
      return construction.get();
    } catch (Problem problem) {
      if (problem.place() instanceof Place.Nowhere) {
        throw new Problem(place, problem.getMessage(), problem);
      }
      throw problem;
    }
  }
}
