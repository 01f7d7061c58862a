package org.bearingline.outline;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a function of the share along a piece, 0 to 1, is highest.
 *
 * @param share 0 to 1
 * @param height the function there
 */
public record Crest(double share, double height) {

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** Share of the whole rise within which a sample may belong to the highest crest. */
  private static final double CONTENDER = 0.1;

  /** Share of a height that is rounding. */
  private static final double ROUNDING = 1e-12;

  /**
   * The highest crest: sampled, then each sample that stands above its neighbours and nearly as
   * high as any is narrowed by golden section.
   *
   * @param samples so many stretches that none holds more than one crest
   * @param steps of the golden section; each leaves 0.618 of a stretch
   */
  public static Crest highest(DoubleUnaryOperator height, int samples, int steps) {
    double[] heights = new double[samples + 1];
    int top = 0;
    int bottom = 0;
    for (int i = 0; i <= samples; i++) {
      heights[i] = height.applyAsDouble((double) i / samples);
      top = heights[i] > heights[top] ? i : top;
      bottom = heights[i] < heights[bottom] ? i : bottom;
    }
    double enough = heights[top] - CONTENDER * (heights[top] - heights[bottom]);
    Crest best = new Crest((double) top / samples, heights[top]);
    for (int i = 0; i <= samples; i++) {
      boolean above =
          (i == 0 || heights[i] >= heights[i - 1])
              && (i == samples || heights[i] >= heights[i + 1])
              && heights[i] >= enough;
      if (above) {
        double low = Math.max(0, (i - 1.0) / samples);
        double high = Math.min(1, (i + 1.0) / samples);
        Crest narrowed = narrowed(height, low, high, steps);
        best = narrowed.height > best.height + ROUNDING * Math.abs(best.height) ? narrowed : best;
      }
    }
    return best;
  }

  private static Crest narrowed(DoubleUnaryOperator height, double from, double to, int steps) {
    double low = from;
    double high = to;
    double a = high - GOLDEN * (high - low);
    double b = low + GOLDEN * (high - low);
    double atA = height.applyAsDouble(a);
    double atB = height.applyAsDouble(b);
    for (int i = 0; i < steps; i++) {
      if (atA < atB) {
        low = a;
        a = b;
        atA = atB;
        b = low + GOLDEN * (high - low);
        atB = height.applyAsDouble(b);
      } else {
        high = b;
        b = a;
        atB = atA;
        a = high - GOLDEN * (high - low);
        atA = height.applyAsDouble(a);
      }
    }
    return atA > atB ? new Crest(a, atA) : new Crest(b, atB);
  }
}
