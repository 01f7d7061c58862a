package org.bearingline.outline.offset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.topology.Pieces;

/** Closed loops in flat form: the pieces of each loop stand together, in the order of travel. */
final class LoopSet {

  /** Share of the promise below which an arc's height over its chord is nothing. */
  private static final double UNSEEN = 1e-2;

  /** Radians below which an arc is flat; a short arc of a small circle is none. */
  private static final double FLAT = 1e-6;

  final Pieces pieces;
  private int[] starts = new int[8];
  private int count;

  LoopSet(int capacity) {
    pieces = new Pieces(capacity);
  }

  /**
   * The loops of a region, moved by (−ox, −oy). Pieces shorter than the tolerance are left out,
   * arcs that no result could tell from their chord become lines, and arcs whose ends lie off their
   * circle by rounding of a file get the centre that fits both ends.
   *
   * @param reversed whether to travel each loop the other way, which makes wood of the waste
   */
  static LoopSet of(Region region, boolean reversed, Frame frame) {
    LoopSet set = new LoopSet(region.size());
    for (Loop loop : region.loops()) {
      set.add(loop, reversed, frame);
    }
    return set;
  }

  private void add(Loop loop, boolean reversed, Frame frame) {
    List<Primitive> values = loop.primitives();
    int first = pieces.size();
    int n = values.size();
    for (int i = 0; i < n; i++) {
      Primitive value = values.get(reversed ? n - 1 - i : i);
      int k = pieces.add(value, frame.originX(), frame.originY(), pieces.size());
      if (reversed) {
        turnRound(k);
      }
    }
    keepLongerThan(first, frame.tolerance());
    for (int k = first; k < pieces.size(); k++) {
      straighten(k, frame.promise() * UNSEEN);
      centre(k, frame.tolerance() / 16);
    }
    close(first);
  }

  private void straighten(int k, double height) {
    double dx = pieces.x1[k] - pieces.x0[k];
    double dy = pieces.y1[k] - pieces.y0[k];
    double chord = dx * dx + dy * dy;
    boolean flat = chord < FLAT * FLAT * pieces.r[k] * pieces.r[k] && !pieces.full[k];
    if (pieces.turn[k] != 0
        && flat
        && chord <= 8 * pieces.r[k] * height
        && Math.abs(pieces.sweep(k)) < 1) {
      pieces.turn[k] = 0;
    }
  }

  private void turnRound(int k) {
    double x = pieces.x0[k];
    double y = pieces.y0[k];
    pieces.x0[k] = pieces.x1[k];
    pieces.y0[k] = pieces.y1[k];
    pieces.x1[k] = x;
    pieces.y1[k] = y;
    pieces.turn[k] = (byte) -pieces.turn[k];
  }

  private void keepLongerThan(int first, double tolerance) {
    int kept = first;
    for (int k = first; k < pieces.size(); k++) {
      boolean closedArc = pieces.turn[k] != 0 && (pieces.full[k] || pieces.length(k) > tolerance);
      double chord = Math.hypot(pieces.x1[k] - pieces.x0[k], pieces.y1[k] - pieces.y0[k]);
      if (chord > tolerance || closedArc) {
        pieces.move(k, kept);
        if (kept > first) {
          pieces.x0[kept] = pieces.x1[kept - 1];
          pieces.y0[kept] = pieces.y1[kept - 1];
        }
        kept++;
      }
    }
    pieces.truncate(kept);
    if (kept > first) {
      pieces.x1[kept - 1] = pieces.x0[first];
      pieces.y1[kept - 1] = pieces.y0[first];
    }
  }

  private void centre(int k, double slack) {
    if (pieces.turn[k] == 0 || pieces.full[k]) {
      return;
    }
    double toStart = Math.hypot(pieces.x0[k] - pieces.cx[k], pieces.y0[k] - pieces.cy[k]);
    double toEnd = Math.hypot(pieces.x1[k] - pieces.cx[k], pieces.y1[k] - pieces.cy[k]);
    if (Math.abs(toStart - pieces.r[k]) <= slack && Math.abs(toEnd - pieces.r[k]) <= slack) {
      return;
    }
    double dx = pieces.x1[k] - pieces.x0[k];
    double dy = pieces.y1[k] - pieces.y0[k];
    double mx = (pieces.x0[k] + pieces.x1[k]) / 2 - pieces.cx[k];
    double my = (pieces.y0[k] + pieces.y1[k]) / 2 - pieces.cy[k];
    double off = (mx * dx + my * dy) / (dx * dx + dy * dy);
    double mismatch = Math.max(Math.abs(toStart - pieces.r[k]), Math.abs(toEnd - pieces.r[k]));
    // A short chord would turn the centre of a nearly whole circle far for nothing.
    if (Math.abs(off) * Math.hypot(dx, dy) <= 4 * mismatch) {
      pieces.cx[k] += off * dx;
      pieces.cy[k] += off * dy;
      pieces.r[k] = Math.hypot(pieces.x0[k] - pieces.cx[k], pieces.y0[k] - pieces.cy[k]);
      pieces.anchorX[k] = pieces.x0[k];
      pieces.anchorY[k] = pieces.y0[k];
    }
  }

  /** Ends the loop whose first piece is {@code first}; an empty one leaves no trace. */
  void close(int first) {
    if (pieces.size() == first) {
      return;
    }
    if (count + 2 > starts.length) {
      starts = Arrays.copyOf(starts, starts.length * 2);
    }
    starts[count++] = first;
    starts[count] = pieces.size();
  }

  int loops() {
    return count;
  }

  int start(int loop) {
    return starts[loop];
  }

  int end(int loop) {
    return starts[loop + 1];
  }

  /** Signed area of a loop in mm², taken about its own first point. */
  double signedArea(int loop) {
    double doubled = 0;
    double ox = pieces.x0[start(loop)];
    double oy = pieces.y0[start(loop)];
    for (int k = start(loop); k < end(loop); k++) {
      doubled += pieces.doubledSweptArea(k, ox, oy);
    }
    return doubled / 2;
  }

  double length(int loop) {
    double sum = 0;
    for (int k = start(loop); k < end(loop); k++) {
      sum += pieces.length(k);
    }
    return sum;
  }

  /** The loops travelled the other way. */
  LoopSet reversed() {
    LoopSet back = new LoopSet(pieces.size());
    for (int loop = 0; loop < count; loop++) {
      int first = back.pieces.size();
      for (int k = end(loop) - 1; k >= start(loop); k--) {
        back.pieces.addReversed(pieces, k, back.pieces.size());
      }
      back.close(first);
    }
    return back;
  }

  /** The loops without those thinner on average than the tolerance: crumbs of rounding. */
  LoopSet withoutCrumbs(double tolerance) {
    LoopSet large = new LoopSet(pieces.size());
    for (int loop = 0; loop < count; loop++) {
      if (Math.abs(signedArea(loop)) <= tolerance * length(loop)) {
        continue;
      }
      int first = large.pieces.size();
      for (int k = start(loop); k < end(loop); k++) {
        large.pieces.add(pieces, k, pieces.source[k]);
      }
      large.close(first);
    }
    return large.count == count ? this : large;
  }

  /** The loops as values, turned round where asked. */
  List<Loop> toLoops(boolean reversed, Frame frame) {
    List<Loop> all = new ArrayList<>(count);
    for (int loop = 0; loop < count; loop++) {
      Loop value = pieces.toLoop(start(loop), end(loop), frame.originX(), frame.originY());
      all.add(reversed ? value.reversed() : value);
    }
    return all;
  }

  /** A point of piece {@code k} as a value, for a message. */
  Point placeOf(int k, Frame frame) {
    return new Point(pieces.x0[k] + frame.originX(), pieces.y0[k] + frame.originY());
  }
}
