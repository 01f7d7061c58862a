package org.bearingline.outside.clean;

import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outside.Figure;

/**
 * A clean loop and where it comes from.
 *
 * @param loop as drawn, in its own sense
 * @param source what its figure is called
 * @param figure number of its figure; of a loop of several figures united a number that none has
 * @param kind what it bounds
 */
record DrawnLoop(Loop loop, String source, int figure, Kind kind) {

  /** What a loop may bound. */
  enum Kind {
    /** An area. */
    FILLED,
    /** Nothing: it was drawn as a line without a fill. */
    LINE,
    /** Several areas as one. */
    UNITED
  }

  static DrawnLoop of(CleanChain clean, List<Figure> figures) {
    Chain chain = clean.chain();
    return new DrawnLoop(
        new Loop(clean.pieces()), chain.source(), chain.figure(), kind(chain.figure(), figures));
  }

  private static Kind kind(int figure, List<Figure> figures) {
    if (figure >= figures.size()) {
      return Kind.UNITED;
    }
    return figures.get(figure).filled() ? Kind.FILLED : Kind.LINE;
  }

  /** Whether another loop was drawn over this one, either way round. */
  boolean isDoubled(DrawnLoop other, double tolerance) {
    double size = loop.length();
    if (Math.abs(size - other.loop.length()) > 4 * tolerance + 1e-4 * size
        || loop.bounds().center().distanceTo(other.loop.bounds().center()) > tolerance
        || Math.abs(loop.bounds().width() - other.loop.bounds().width()) > 2 * tolerance) {
      return false;
    }
    int n = loop.size();
    int step = Math.max(1, n / 64);
    for (int i = 0; i < n; i += step) {
      for (Point p :
          List.of(
              loop.primitives().get(i).start(),
              loop.primitives().get(i).pointAt(0.37),
              loop.primitives().get(i).middle())) {
        if (other.loop.distanceTo(p) > tolerance) {
          return false;
        }
      }
    }
    return true;
  }
}
