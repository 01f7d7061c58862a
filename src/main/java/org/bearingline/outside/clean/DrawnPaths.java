package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/** The strokes of a sketch as paths for a picture: free curves by chords too fine to see. */
public final class DrawnPaths {

  private static final int CHORDS = 48;
  private static final int FINE_CHORDS = 768;

  /** Chords of all curves together that a page carries. */
  private static final long FINE_IN_ALL = 30_000;

  /** Points of one run that a picture can show. */
  private static final int MOST_POINTS = 4000;

  private DrawnPaths() {}

  public static List<Path> of(Sketch sketch) {
    return of(sketch, CHORDS);
  }

  /**
   * The same for a picture that is looked at through a glass: as many chords as a page can carry,
   * of a quarter circle of 100 mm off by no more than 0.0002 mm where the curves are few.
   */
  public static List<Path> fine(Sketch sketch) {
    long curves =
        sketch.figures().stream()
            .flatMap(figure -> figure.strokes().stream())
            .flatMap(stroke -> stroke.pieces().stream())
            .filter(StrokePiece.Free.class::isInstance)
            .count();
    return of(sketch, (int) Math.max(CHORDS, Math.min(FINE_CHORDS, FINE_IN_ALL / (1 + curves))));
  }

  private static List<Path> of(Sketch sketch, int perStretch) {
    List<Path> paths = new ArrayList<>();
    for (Figure figure : sketch.figures()) {
      for (Stroke stroke : figure.strokes()) {
        List<Primitive> pieces = new ArrayList<>();
        stroke.pieces().forEach(piece -> add(piece, perStretch, pieces, paths));
        if (stroke.closed()) {
          // Of the stroke, not of the run at hand: where ends miss each other there are several.
          Point start = stroke.pieces().get(0).start();
          to(pieces, start, start);
        }
        flush(pieces, paths);
      }
    }
    return paths;
  }

  private static void add(
      StrokePiece piece, int perStretch, List<Primitive> pieces, List<Path> paths) {
    if (!pieces.isEmpty() && !pieces.get(pieces.size() - 1).end().equals(piece.start())) {
      flush(pieces, paths);
    }
    if (piece instanceof StrokePiece.Plain plain) {
      pieces.add(plain.primitive());
    } else if (piece instanceof StrokePiece.Chords chords) {
      int n = chords.points().size();
      int stride = Math.max(1, n / MOST_POINTS);
      for (int i = stride; i < n - 1 + stride; i += stride) {
        to(pieces, chords.points().get(Math.min(i, n - 1)), piece.start());
      }
    } else {
      var curve = ((StrokePiece.Free) piece).curve();
      int n = perStretch * Math.min(64, curve.stretches());
      for (int i = 1; i <= n; i++) {
        to(pieces, curve.pointAt((double) i / n), piece.start());
      }
    }
  }

  private static void to(List<Primitive> pieces, Point to, Point first) {
    Point from = pieces.isEmpty() ? first : pieces.get(pieces.size() - 1).end();
    if (!from.equals(to)) {
      pieces.add(new Line(from, to));
    }
  }

  private static void flush(List<Primitive> pieces, List<Path> paths) {
    if (!pieces.isEmpty()) {
      paths.add(new Path(pieces));
      pieces.clear();
    }
  }
}
