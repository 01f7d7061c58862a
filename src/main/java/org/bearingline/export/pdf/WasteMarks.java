package org.bearingline.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.Role;
import org.bearingline.export.Figure;
import org.bearingline.export.Ink;
import org.bearingline.export.Plot;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/**
 * Crosses on the waste side of the line to work to, as a joiner chalks them. The waste is what lies
 * inside an even number of that line's closed loops: round the template and in its openings. Only
 * loops can tell; an open line gets no crosses.
 */
final class WasteMarks {

  private static final Ink INK = new Ink(0x33, 0x33, 0x33);

  /** Distance of crosses along the line, their distance from it and half their size, mm. */
  private static final double SPACING = 45;

  private static final double ASIDE = 3.5;
  private static final double HALF = 1.1;

  private final List<Point> crosses = new ArrayList<>();

  /**
   * The crosses for the whole drawing, full size in its own coordinates.
   *
   * @param plot what is printed: crosses keep clear of its lines and words
   */
  WasteMarks(Drawing drawing, Plot plot) {
    List<Loop> loops =
        drawing.layers().stream()
            .filter(layer -> layer.role() == Role.CUT)
            .flatMap(WasteMarks::loops)
            .toList();
    if (loops.isEmpty()) {
      return;
    }
    List<Primitive> lines = new ArrayList<>();
    List<Bounds> words = new ArrayList<>();
    for (Plot.PlotLayer layer : plot.layers()) {
      for (Figure figure : layer.figures()) {
        if (figure instanceof Figure.Trace trace) {
          lines.addAll(trace.path().primitives());
        } else if (figure instanceof Figure.Words said) {
          words.add(said.box().grown(HALF));
        }
      }
    }
    for (Loop loop : loops) {
      for (List<Place> places : along(loop)) {
        places.stream()
            .flatMap(place -> cross(place, loops, lines, words).stream())
            .findFirst()
            .ifPresent(crosses::add);
      }
    }
  }

  private static Stream<Loop> loops(Layer layer) {
    return layer.items().stream()
        .filter(Item.Stroke.class::isInstance)
        .map(item -> ((Item.Stroke) item).path())
        .filter(path -> path.isClosed())
        .map(path -> new Loop(path.primitives()));
  }

  /** A place on the line with its direction. */
  private record Place(Point at, Point tangent) {}

  /** For each cross the places it may take, the one wished for first. */
  private static List<List<Place>> along(Loop loop) {
    int count = Math.max(2, (int) Math.round(loop.length() / SPACING));
    double apart = loop.length() / count;
    List<List<Place>> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Place> about = new ArrayList<>();
      for (double aside : new double[] {0.5, 0.7, 0.3}) {
        about.add(at(loop, (i + aside) * apart));
      }
      places.add(about);
    }
    return places;
  }

  private static Place at(Loop loop, double length) {
    double before = 0;
    Primitive last = null;
    for (Primitive piece : loop.primitives()) {
      last = piece;
      if (length <= before + piece.length()) {
        break;
      }
      before += piece.length();
    }
    double share = Math.max(0, Math.min(1, (length - before) / last.length()));
    return new Place(last.pointAt(share), last.tangentAt(share));
  }

  private static Optional<Point> cross(
      Place place, List<Loop> loops, List<Primitive> lines, List<Bounds> words) {
    Point aside = place.tangent.left().times(ASIDE);
    boolean leftIsWaste = isWaste(place.at.plus(aside), loops);
    boolean rightIsWaste = isWaste(place.at.minus(aside), loops);
    if (leftIsWaste == rightIsWaste) {
      return Optional.empty();
    }
    Point cross = leftIsWaste ? place.at.plus(aside) : place.at.minus(aside);
    Bounds near = Bounds.of(cross).grown(2 * HALF);
    boolean clear =
        lines.stream()
            .filter(line -> near.intersects(line.bounds()))
            .allMatch(line -> line.distanceTo(cross) > 1.7 * HALF);
    clear = clear && words.stream().noneMatch(box -> box.contains(cross));
    return clear ? Optional.of(cross) : Optional.empty();
  }

  private static boolean isWaste(Point p, List<Loop> loops) {
    return loops.stream().filter(loop -> loop.contains(p)).count() % 2 == 0;
  }

  /** Where they stand, in the drawing's own coordinates. */
  List<Point> crosses() {
    return List.copyOf(crosses);
  }

  /** Draws the crosses that {@code window} shows any of. */
  void draw(Canvas canvas, Similarity toPage, Bounds window) {
    canvas.pen(INK, 0.25);
    Bounds near = window.grown(HALF);
    for (Point cross : crosses) {
      Point at = toPage.apply(cross);
      if (near.contains(at)) {
        canvas.rule(at.plus(new Point(-HALF, -HALF)), at.plus(new Point(HALF, HALF)));
        canvas.rule(at.plus(new Point(-HALF, HALF)), at.plus(new Point(HALF, -HALF)));
      }
    }
  }
}
