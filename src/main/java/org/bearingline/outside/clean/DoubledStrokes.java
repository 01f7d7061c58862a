package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;
import org.bearingline.outside.StrokePiece;

/**
 * Drops loose lines and arcs that were drawn over others, and the part of a line that runs on
 * another.
 *
 * @param kept what is left, in the order given
 * @param dropped how many strokes were dropped or shortened
 */
record DoubledStrokes(List<LooseStroke> kept, int dropped) {

  static DoubledStrokes without(List<LooseStroke> loose, double tolerance) {
    // Two lines a tolerance apart may be meant; a tenth of it is the same line twice.
    double same = tolerance / 10;
    Primitive[] single = new Primitive[loose.size()];
    Pieces pieces = new Pieces(loose.size());
    List<Integer> number = new ArrayList<>();
    for (int i = 0; i < loose.size(); i++) {
      List<StrokePiece> of = loose.get(i).pieces();
      if (of.size() == 1 && of.get(0) instanceof StrokePiece.Plain plain) {
        single[i] = plain.primitive();
        pieces.add(plain.primitive(), 0, 0, i);
        number.add(i);
      }
    }
    PieceIndex index = new PieceIndex(pieces);
    int dropped = 0;
    for (int k = 0; k < pieces.size(); k++) {
      int count = index.queryAround(k, same);
      int[] hits = index.hits();
      int i = number.get(k);
      for (int h = 0; h < count && single[i] != null; h++) {
        int j = number.get(hits[h]);
        if (j == i || single[j] == null) {
          continue;
        }
        Primitive left = without(single[i], single[j], i > j, same);
        dropped += left != single[i] ? 1 : 0;
        single[i] = left;
      }
    }
    List<LooseStroke> kept = new ArrayList<>();
    for (int i = 0, k = 0; i < loose.size(); i++) {
      boolean isSingle = k < number.size() && number.get(k) == i;
      k += isSingle ? 1 : 0;
      if (!isSingle) {
        kept.add(loose.get(i));
      } else if (single[i] != null) {
        LooseStroke one = loose.get(i);
        kept.add(
            new LooseStroke(List.of(new StrokePiece.Plain(single[i])), one.source(), one.figure()));
      }
    }
    return new DoubledStrokes(kept, dropped);
  }

  /** What of {@code a} does not run on {@code b}; null where nothing does. */
  private static Primitive without(Primitive a, Primitive b, boolean later, double same) {
    boolean startOn = b.distanceTo(a.start()) <= same;
    boolean endOn = b.distanceTo(a.end()) <= same;
    boolean middleOn = b.distanceTo(a.middle()) <= same;
    if (startOn && endOn && middleOn && sameCourse(a, b, same)) {
      boolean alike = a.distanceTo(b.start()) <= same && a.distanceTo(b.end()) <= same;
      return !alike || later ? null : a;
    }
    if (a instanceof Line line && b instanceof Line && startOn != endOn) {
      Point inner = a.distanceTo(b.start()) <= same ? b.start() : b.end();
      boolean overlaps =
          a.distanceTo(inner) <= same
              && inner.distanceTo(startOn ? a.start() : a.end()) > 10 * same
              && later;
      Point kept = startOn ? line.end() : line.start();
      if (overlaps && inner.distanceTo(kept) > same) {
        return startOn ? new Line(inner, line.end()) : new Line(line.start(), inner);
      }
    }
    return a;
  }

  private static boolean sameCourse(Primitive a, Primitive b, double same) {
    if (a instanceof Arc one && b instanceof Arc other) {
      return one.center().distanceTo(other.center()) <= 10 * same
          && b.distanceTo(a.pointAt(0.25)) <= same
          && b.distanceTo(a.pointAt(0.75)) <= same;
    }
    return b.distanceTo(a.pointAt(0.25)) <= same && b.distanceTo(a.pointAt(0.75)) <= same;
  }
}
