package org.bearingline.outside.scan;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Parts the blocks of a picture in two kinds that are lit alike but throw back different shares of
 * the light. With L the logarithm of the lamp's light, a quadratic in x and y, and c what the
 * second kind throws back less, a block's light is exp(L) or exp(L − c). The kinds and the light
 * are found in turn, each from the other.
 */
final class Lighting {

  private static final int TERMS = 6;
  private static final int ROUNDS = 12;

  private final Blocks blocks;
  private final double[] log;
  private boolean[] second;
  private final double[] model = new double[TERMS + 1];
  private double scatter;

  private Lighting(Blocks blocks, double[] log, boolean[] second) {
    this.blocks = blocks;
    this.log = log;
    this.second = second;
  }

  /** The better of two beginnings: kinds by one threshold, or by what differs from the rim. */
  static Lighting of(Blocks blocks) {
    double[] log = Arrays.stream(blocks.light()).map(Math::log).toArray();
    Lighting plain = new Lighting(blocks, log, aboveOtsu(log, blocks.seen()));
    plain.settle();
    Lighting byRim = new Lighting(blocks, log, new boolean[log.length]);
    byRim.beginAtRim();
    byRim.settle();
    return byRim.parts() > plain.parts() ? byRim : plain;
  }

  /** How clearly the kinds part: their difference in units of what each scatters. */
  double parts() {
    return Math.abs(model[TERMS]) / (scatter + 0.005);
  }

  /** What the kinds throw back differs by this factor, 1 or more. */
  double contrast() {
    return Math.exp(Math.abs(model[TERMS]));
  }

  boolean isSecond(int block) {
    return second[block];
  }

  /** Logarithm of the light expected of a block of the kind. */
  double expected(int block, boolean ofSecond) {
    double[] terms = terms(block);
    double sum = ofSecond ? model[TERMS] : 0;
    for (int i = 0; i < TERMS; i++) {
      sum += model[i] * terms[i];
    }
    return sum;
  }

  private double[] terms(int block) {
    double x = 2.0 * (block % blocks.columns()) / blocks.columns() - 1;
    double y = 2.0 * (block / blocks.columns()) / blocks.rows() - 1;
    return new double[] {1, x, y, x * x, x * y, y * y};
  }

  private void beginAtRim() {
    int depth = Math.max(1, Math.min(blocks.columns(), blocks.rows()) / 24);
    double[] weights = new double[log.length];
    for (int i = 0; i < log.length; i++) {
      boolean rim = blocks.isRim(i % blocks.columns(), i / blocks.columns(), depth);
      weights[i] = blocks.seen()[i] && rim ? 1 : 0;
    }
    solve(weights);
    double[] rest = new double[log.length];
    for (int i = 0; i < rest.length; i++) {
      rest[i] = log[i] - expected(i, false);
    }
    second = aboveOtsu(rest, blocks.seen());
  }

  private void settle() {
    double[] weights = new double[log.length];
    double reach = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < log.length; i++) {
        double miss = reach == Double.POSITIVE_INFINITY ? 0 : log[i] - expected(i, second[i]);
        double share = miss / reach;
        weights[i] = blocks.seen()[i] ? 1 / (1 + share * share) : 0;
      }
      solve(weights);
      double[] misses = new double[log.length];
      int count = 0;
      for (int i = 0; i < log.length; i++) {
        double one = Math.abs(log[i] - expected(i, false));
        double other = Math.abs(log[i] - expected(i, true));
        second[i] = other < one;
        if (blocks.seen()[i]) {
          misses[count++] = Math.min(one, other);
        }
      }
      Arrays.sort(misses, 0, count);
      scatter = count == 0 ? 0 : misses[count / 2];
      reach = 3 * scatter + 0.01;
    }
  }

  /** Least squares for the light and the difference of the kinds. */
  private void solve(double[] weights) {
    DMatrixRMaj normal = new DMatrixRMaj(TERMS + 1, TERMS + 1);
    DMatrixRMaj right = new DMatrixRMaj(TERMS + 1, 1);
    for (int block = 0; block < log.length; block++) {
      if (weights[block] == 0) {
        continue;
      }
      double[] row = Arrays.copyOf(terms(block), TERMS + 1);
      row[TERMS] = second[block] ? 1 : 0;
      for (int i = 0; i <= TERMS; i++) {
        right.data[i] += weights[block] * row[i] * log[block];
        for (int j = 0; j <= TERMS; j++) {
          normal.data[i * (TERMS + 1) + j] += weights[block] * row[i] * row[j];
        }
      }
    }
    // A little stiffness keeps terms that nothing tells of at zero.
    for (int i = 1; i <= TERMS; i++) {
      normal.data[i * (TERMS + 1) + i] += 1e-6 * (1 + normal.data[0]);
    }
    normal.data[0] += 1e-9;
    DMatrixRMaj solution = new DMatrixRMaj(TERMS + 1, 1);
    if (CommonOps_DDRM.solve(normal, right, solution)) {
      System.arraycopy(solution.data, 0, model, 0, TERMS + 1);
    }
  }

  /** Otsu's threshold over the seen values: true above it. */
  private static boolean[] aboveOtsu(double[] values, boolean[] seen) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < values.length; i++) {
      if (seen[i]) {
        least = Math.min(least, values[i]);
        most = Math.max(most, values[i]);
      }
    }
    int bins = 256;
    int[] histogram = new int[bins];
    int total = 0;
    double scale = most > least ? (bins - 1) / (most - least) : 0;
    for (int i = 0; i < values.length; i++) {
      if (seen[i]) {
        histogram[(int) ((values[i] - least) * scale)]++;
        total++;
      }
    }
    boolean[] above = new boolean[values.length];
    if (total == 0) {
      return above;
    }
    int threshold = boofcv.alg.filter.binary.GThresholdImageOps.computeOtsu(histogram, bins, total);
    for (int i = 0; i < values.length; i++) {
      above[i] = (int) ((values[i] - least) * scale) > threshold;
    }
    return above;
  }
}
