package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outside.StrokePiece;

/**
 * A stroke with two ends, or strokes already joined to one.
 *
 * @param pieces in order
 * @param source what its figure is called
 * @param figure number of its figure
 */
record LooseStroke(List<StrokePiece> pieces, String source, int figure) {

  Point start() {
    return pieces.get(0).start();
  }

  Point end() {
    return pieces.get(pieces.size() - 1).end();
  }

  boolean isRound() {
    return start().equals(end());
  }

  LooseStroke reversed() {
    List<StrokePiece> back = new ArrayList<>();
    for (int i = pieces.size() - 1; i >= 0; i--) {
      back.add(Welding.reversed(pieces.get(i)));
    }
    return new LooseStroke(back, source, figure);
  }
}
