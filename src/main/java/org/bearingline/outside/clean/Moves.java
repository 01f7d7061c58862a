package org.bearingline.outside.clean;

import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * Measures how far a clean chain lies from the drawn one, both ways: every sample of the drawing
 * and the middle of every chord against the clean pieces, and the joints of the clean pieces and
 * what lies between them against the drawn steps. Both run the same way round, so a look at the
 * neighbours finds the nearest; a miss could only make the figure larger.
 */
final class Moves {

  /** How many pieces or steps to either side are looked at. */
  private static final int LOOK = 6;

  /** How many steps round a sample are looked at. */
  private static final int ROUND = 64;

  /** How many parts of a piece are looked at that arcs or a few samples tell the course of. */
  private static final int ALONG = 32;

  /** How many parts of a line along more samples. */
  private static final int LEAST_ALONG = 6;

  private static final int FEW = 64;

  /** Enough to find a place on a step to a thousandth of it. */
  private static final int HALVINGS = 10;

  private final Course course;
  private final List<Primitive> pieces;

  /** The first sample along each piece. */
  private final int[] first;

  private final int[] last;

  /** What lies off by less is not looked into. */
  private double heeded;

  private double largest;
  private Point at;

  /** The largest move along each piece, where it is heeded. */
  private final double[] most;

  private Moves(Course course, List<Primitive> pieces) {
    this.course = course;
    this.pieces = pieces;
    at = pieces.isEmpty() ? Point.ORIGIN : pieces.get(0).start();
    first = new int[pieces.size()];
    Arrays.fill(first, -1);
    last = first.clone();
    most = new double[pieces.size()];
  }

  /** The largest move in mm, and where on the clean line. */
  record Move(double largest, Point at) {}

  static final Move NONE = new Move(0, Point.ORIGIN);

  static Move of(Course course, List<Primitive> pieces) {
    if (pieces.isEmpty()) {
      return NONE; // Ends that met each other: nothing is left to lie off.
    }
    Moves work = new Moves(course, pieces);
    work.fromDrawing();
    work.fromPieces();
    return new Move(work.largest, work.at);
  }

  /** The largest move in mm along each piece; one below {@code heeded} may be told too small. */
  static double[] ofEach(Course course, List<Primitive> pieces, double heeded) {
    Moves work = new Moves(course, pieces);
    work.heeded = heeded;
    work.fromDrawing();
    work.fromPieces();
    return work.most;
  }

  private double enough() {
    return heeded > 0 ? heeded : largest;
  }

  private void note(double off, int piece, Point clean) {
    most[piece] = Math.max(most[piece], off);
    if (off > largest) {
      largest = off;
      at = clean;
    }
  }

  private void fromDrawing() {
    if (pieces.isEmpty()) {
      return;
    }
    int piece = nearestPiece(course.at(0));
    Point before = course.at(0);
    for (int i = 0; i < course.size; i++) {
      piece = onwards(Math.max(0, i - 1), before, course.at(i), piece);
      before = course.at(i);
      // Round the seam of a closed course its first piece and its last one are near.
      boolean seam = i == 0 || i == course.size - 1 || i - last[piece] > course.size / 2;
      if (!course.closed || !seam || first[piece] < 0 && i > 0) {
        first[piece] = first[piece] < 0 ? i : first[piece];
        last[piece] = i;
      }
      if (i + 1 < course.size && course.step[i] != Course.Step.CURVE) {
        Point half = course.at(i).towards(course.at(i + 1), 0.5);
        half = onStep(i, half);
        piece = onwards(i, before, half, piece);
        before = half;
      }
    }
  }

  private Point onStep(int step, Point p) {
    return course.step[step] == Course.Step.ARC ? course.drawn[step].nearestTo(p) : p;
  }

  // From one place of a step to the next. Where the nearest piece changes between them, at a corner
  // most of all, the place as far from the one as from the other lies off farther than both.
  private int onwards(int step, Point from, Point to, int piece) {
    int next = compare(to, piece);
    if (next == piece) {
      return next;
    }
    double low = 0;
    double high = 1;
    for (int k = 0; k < HALVINGS; k++) {
      double middle = (low + high) / 2;
      Point p = from.towards(to, middle);
      if (pieces.get(piece).distanceTo(p) < pieces.get(next).distanceTo(p)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    compare(onStep(step, from.towards(to, low)), piece);
    return next;
  }

  private int nearestPiece(Point p) {
    int best = 0;
    for (int i = 1; i < pieces.size(); i++) {
      best = pieces.get(i).distanceTo(p) < pieces.get(best).distanceTo(p) ? i : best;
    }
    return best;
  }

  private int compare(Point p, int from) {
    int n = pieces.size();
    int best = from;
    double least = pieces.get(from).distanceTo(p);
    for (int k = 1; k <= Math.min(LOOK, n - 1); k++) {
      int next = (from + k) % n;
      double off = pieces.get(next).distanceTo(p);
      if (off < least) {
        least = off;
        best = next;
      }
      if (k == 1 && least <= enough()) {
        break;
      }
    }
    if (least > enough()) {
      note(least, best, pieces.get(best).nearestTo(p));
    }
    return best;
  }

  // Where pieces meet the clean line can stand out farther than any sample tells, and an arc could
  // run the long way round between its ends.
  private void fromPieces() {
    int m = pieces.size();
    fillSamples();
    for (int i = 0; i < m; i++) {
      Point p = pieces.get(i).start();
      int before = (i + m - 1) % m;
      double off = Math.min(around(first[i], p), around(last[before], p));
      note(off, i, p);
      note(off, before, p);
      along(i);
    }
  }

  // A piece that no sample is nearest to lies where the one before it ends.
  private void fillSamples() {
    int m = pieces.size();
    int before = 0;
    for (int i = 0; i < 2 * m; i++) {
      int k = i % m;
      if (first[k] < 0 && i >= m) {
        first[k] = before;
        last[k] = before;
      }
      before = last[k] < 0 ? before : last[k];
    }
  }

  private void along(int i) {
    Primitive piece = pieces.get(i);
    int from = first[i];
    int way = Math.floorMod(last[i] - first[i], Math.max(1, course.size - 1));
    // Over a few samples, as of a drawn arc, a piece can stand out anywhere between them.
    int inside = piece instanceof Arc || way <= FEW ? ALONG : LEAST_ALONG;
    for (int k = 1; k < inside; k++) {
      Point p = piece.pointAt((double) k / inside);
      note(around(from + (int) ((long) way * k / inside), p), i, p);
    }
  }

  // From a sample on to where the drawing comes no nearer.
  private double around(int sample, Point p) {
    int n = course.size - 1;
    int at = sample;
    double least = Double.POSITIVE_INFINITY;
    boolean nearer = true;
    while (nearer && least > enough()) {
      nearer = false;
      int here = at;
      for (int k = 0; k <= ROUND && least > enough(); k++) {
        for (int side = -1; side <= 1; side += 2) {
          double off = off(Math.floorMod(here + side * k, n), p);
          if (off < least) {
            nearer = k > 0;
            least = off;
            at = here + side * k;
          }
        }
      }
    }
    return least;
  }

  private double off(int step, Point p) {
    if (course.drawn[step] != null) {
      return course.drawn[step].distanceTo(p);
    }
    double dx = course.x[step + 1] - course.x[step];
    double dy = course.y[step + 1] - course.y[step];
    double ex = p.x() - course.x[step];
    double ey = p.y() - course.y[step];
    double square = dx * dx + dy * dy;
    double share = square > 0 ? (ex * dx + ey * dy) / square : 0;
    share = Math.max(0, Math.min(1, share));
    return Math.hypot(ex - share * dx, ey - share * dy);
  }
}
