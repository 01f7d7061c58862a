package org.bearingline.outline.offset;

import org.bearingline.outline.topology.Cuts;
import org.bearingline.outline.topology.Pieces;

/** Keeps the cut pieces whose own middle is no nearer to the outline than the distance. */
final class Keeping {

  private Keeping() {}

  /**
   * The parts of the raw pieces that can be edge. Half the tolerance is granted, so that parts of
   * two pieces that lie on each other within it are both kept or both dropped.
   */
  static Pieces of(Pieces raw, Cuts cuts, Nearness outline, double distance, double tolerance) {
    Pieces parts = new Pieces(16);
    Pieces kept = new Pieces(raw.size());
    double limit = distance - tolerance / 2;
    double[] middle = new double[2];
    for (int k = 0; k < raw.size(); k++) {
      parts.truncate(0);
      cuts.parts(k, tolerance, parts, raw.source[k]);
      for (int i = 0; i < parts.size(); i++) {
        parts.middle(i, middle);
        if (outline.isClear(middle[0], middle[1], limit, raw.source[k])) {
          kept.add(parts, i, raw.source[k]);
        }
      }
    }
    return kept;
  }
}
