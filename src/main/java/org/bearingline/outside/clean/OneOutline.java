package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.CutOff;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Takes one of the separate outlines of a drawing, as if the others had not been drawn: all of it
 * is made clean to tell the outlines apart, then the strokes of the one alone, so that nothing of
 * the others is counted or mirrored with it.
 */
public final class OneOutline {

  private static final String OPTION = "--outline";

  /** Tolerances by which a drawn point may lie off the clean line. */
  private static final double STRAYS = 5;

  private final List<Outline> outlines;
  private final double reach;
  private final Pieces pieces;
  private final PieceIndex index;

  private OneOutline(List<Outline> outlines, double reach) {
    this.outlines = outlines;
    this.reach = reach;
    pieces = new Pieces(outlines.stream().mapToInt(Outline::size).sum());
    for (int i = 0; i < outlines.size(); i++) {
      for (Loop loop : outlines.get(i).loops()) {
        for (Primitive piece : loop.primitives()) {
          pieces.add(piece, 0, 0, i);
        }
      }
    }
    index = new PieceIndex(pieces);
  }

  /**
   * One outline of a drawing made clean. A width or height asked for is that of the whole drawing;
   * mirrored is the chosen one in its own middle. Where the drawing has faults, in whichever
   * outline, it is given back whole with them.
   *
   * @param number from 1 in the order of {@link CleanedOutline#outlines()}
   * @throws Problem where there are not as many outlines, or none can be taken by itself
   */
  public static CleanedOutline clean(Sketch sketch, CleaningSettings settings, int number) {
    CleanedOutline whole = Cleaning.clean(sketch, settings.withSymmetry(CenterLine.NONE));
    List<Outline> outlines = whole.outlines();
    if (!whole.report().faults().isEmpty() || outlines.isEmpty()) {
      return whole;
    }
    if (number > outlines.size()) {
      throw missing(number, outlines.size());
    }
    if (outlines.size() == 1) {
      return settings.symmetric() == CenterLine.NONE ? whole : Cleaning.clean(sketch, settings);
    }
    double reach = settings.gap() + STRAYS * whole.report().tolerance();
    List<Figure> own = new OneOutline(outlines, reach).figures(whole.drawn(), number - 1);
    if (own.isEmpty()) {
      throw inseparable(number);
    }
    CleaningSettings asDrawn = settings.withSize(OptionalDouble.empty(), OptionalDouble.empty());
    CleanedOutline alone = Cleaning.clean(alone(whole, own), asDrawn);
    int openings = outlines.get(number - 1).openings().size();
    if (alone.report().faults().isEmpty()
        && (alone.outlines().size() != 1
            || alone.outlines().get(0).openings().size() != openings)) {
      throw inseparable(number);
    }
    return alone;
  }

  private static Sketch alone(CleanedOutline whole, List<Figure> own) {
    Sketch drawn = whole.drawn();
    List<String> ignored = new ArrayList<>(drawn.ignored());
    int others = whole.outlines().size() - 1;
    ignored.add(others == 1 ? "1 other outline" : others + " other outlines");
    return new Sketch(drawn.file(), own, true, drawn.noise(), ignored, drawn.toFile());
  }

  private static Problem missing(int number, int count) {
    return new Problem(
        Place.option(OPTION),
        count == 1
            ? "the drawing holds a single outline and none of number " + number + "; leave it out"
            : "the drawing holds "
                + count
                + " separate outlines and none of number "
                + number
                + "; choose from 1, the largest, to "
                + count);
  }

  private static Problem inseparable(int number) {
    return new Problem(
        Place.option(OPTION),
        "outline "
            + number
            + " is drawn in one stroke with another; draw each of them as a line of its own");
  }

  private List<Figure> figures(Sketch drawn, int chosen) {
    List<Figure> own = new ArrayList<>();
    for (Figure figure : drawn.figures()) {
      List<Stroke> strokes = new ArrayList<>();
      for (Stroke stroke : figure.strokes()) {
        CutOff.check();
        if (of(stroke) == chosen) {
          strokes.add(stroke);
        }
      }
      if (!strokes.isEmpty()) {
        own.add(new Figure(strokes, figure.rule(), figure.filled(), figure.source()));
      }
    }
    return own;
  }

  // Which outline a stroke lies on, or in whose wood: from there every other is further away.
  private int of(Stroke stroke) {
    List<Point> points = points(stroke);
    int[] near = near(points.get(1));
    int[] candidates = near.length > 0 ? near : IntStream.range(0, outlines.size()).toArray();
    int best = candidates[0];
    double least = Double.POSITIVE_INFINITY;
    for (int i : candidates.length == 1 ? new int[0] : candidates) {
      Outline outline = outlines.get(i);
      double far = points.stream().mapToDouble(outline::distanceTo).max().orElseThrow();
      if (far < least) {
        least = far;
        best = i;
      }
    }
    return best;
  }

  // Outlines whose edge a point of the drawing may be meant to lie on.
  private int[] near(Point p) {
    int count = index.query(p.x() - reach, p.y() - reach, p.x() + reach, p.y() + reach);
    return Arrays.stream(index.hits(), 0, count)
        .filter(k -> pieces.distance(k, p.x(), p.y()) <= reach)
        .map(k -> pieces.source[k])
        .distinct()
        .sorted()
        .toArray();
  }

  private static List<Point> points(Stroke stroke) {
    List<StrokePiece> pieces = stroke.pieces();
    StrokePiece middle = pieces.get(pieces.size() / 2);
    return List.of(
        pieces.get(0).start(), middle.start(), middle.end(), pieces.get(pieces.size() - 1).end());
  }
}
