package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/** Turns a traced template: nobody lays one on the glass quite straight. */
public final class Upright {

  private Upright() {}

  /** The least turn, in degrees from -45 to 45, that lays a direction along x or y. */
  public static double turn(Point direction) {
    double degrees = Math.toDegrees(Math.atan2(direction.y(), direction.x()));
    return -(degrees - 90 * Math.rint(degrees / 90));
  }

  /** The sketch turned counter-clockwise about the origin; of chords alone. */
  public static Sketch turned(Sketch sketch, double degrees) {
    Similarity turn = Similarity.rotation(degrees, Point.ORIGIN);
    List<Figure> figures = new ArrayList<>();
    for (Figure figure : sketch.figures()) {
      List<Stroke> strokes = new ArrayList<>();
      for (Stroke stroke : figure.strokes()) {
        strokes.add(
            new Stroke(
                stroke.pieces().stream().map(piece -> turned(piece, turn)).toList(),
                stroke.closed()));
      }
      figures.add(new Figure(strokes, figure.rule(), figure.filled(), figure.source()));
    }
    return new Sketch(sketch.file(), figures, sketch.sized(), sketch.noise(), sketch.ignored());
  }

  private static StrokePiece turned(StrokePiece piece, Similarity turn) {
    StrokePiece.Chords chords = (StrokePiece.Chords) piece;
    return new StrokePiece.Chords(chords.points().stream().map(turn::apply).toList());
  }
}
