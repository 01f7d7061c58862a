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

  /** Points of one run that a picture can show. */
  private static final int MOST_POINTS = 4000;

  private DrawnPaths() {}

  public static List<Path> of(Sketch sketch) {
    List<Path> paths = new ArrayList<>();
    for (Figure figure : sketch.figures()) {
      for (Stroke stroke : figure.strokes()) {
        List<Primitive> pieces = new ArrayList<>();
        stroke.pieces().forEach(piece -> add(piece, pieces, paths));
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

  private static void add(StrokePiece piece, List<Primitive> pieces, List<Path> paths) {
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
      int n = CHORDS * Math.min(64, curve.stretches());
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
