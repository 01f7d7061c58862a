package org.bearingline.outside.clean;

import java.util.Arrays;

/**
 * The linear equations of one step towards the tangent chain of least squares, for use once. A
 * change of one piece carries all later ones along as rigid bodies, so each piece's samples are
 * summed up once in four terms (its state and its curvature) whatever the number of pieces.
 *
 * <p>Unknowns 0, 1 and 2 are x, y and heading of the start, 3 + 2i is the length of piece i and 4 +
 * 2i its curvature; three more rows hold the end where it must be.
 */
final class NormalEquations {

  /** Share of a piece's length that one step may take off it. */
  private static final double MOST_SHORTENED = 0.8;

  private final TangentChain chain;
  private final boolean startHeld;
  private final Closing closing;
  private final int unknowns;
  private final int rows;
  private final double[] matrix;
  private final double[] right;

  /** How the last state moves with each unknown: rows x, y, heading. */
  private final double[] state;

  NormalEquations(TangentChain chain, PieceSamples samples, boolean startHeld, Closing closing) {
    this.chain = chain;
    this.startHeld = startHeld;
    this.closing = closing;
    unknowns = 3 + 2 * chain.pieces;
    rows = unknowns + (closing.isAsked() ? 3 : 0);
    matrix = new double[rows * rows];
    right = new double[rows];
    state = new double[3 * unknowns];
    state[0] = 1;
    state[unknowns + 1] = 1;
    state[2 * unknowns + 2] = 1;
    for (int i = 0; i < chain.pieces; i++) {
      addPiece(i, samples.sums(chain, i));
      carry(i);
    }
  }

  /** The chain after a step towards the least squares; null where the equations tell none. */
  TangentChain stepped(double damping) {
    for (int u = 0; u < unknowns; u++) {
      double diagonal = matrix[u * rows + u];
      matrix[u * rows + u] += damping * (diagonal + floor(u));
      if (isGiven(u)) {
        for (int v = 0; v < rows; v++) {
          matrix[u * rows + v] = 0;
          matrix[v * rows + u] = 0;
        }
        matrix[u * rows + u] = 1;
        right[u] = 0;
      }
    }
    if (!closing.isAsked()) {
      double[] d = Dense.solve(matrix, right);
      return d == null ? null : moved(chain, d);
    }
    constrain();
    double[] held = matrix.clone();
    double[] d = Dense.solve(matrix, right);
    return d == null ? null : gapClosed(moved(chain, d), held);
  }

  // A step along the tangent of the bent way of closed chains leaves it by the step's square; with
  // the same equations, for the gap alone, it is led back. Else a step that lowers the squares
  // would be refused for the gap it leaves.
  private TangentChain gapClosed(TangentChain stepped, double[] held) {
    double[] gap = closing.gap(stepped);
    double[] back = new double[rows];
    for (int g = 0; g < 3; g++) {
      back[unknowns + g] = -gap[g];
    }
    double[] d = Dense.solve(held, back);
    return d == null ? stepped : moved(stepped, d);
  }

  /** The chain after the least change that closes its gap, whatever the squares say; or null. */
  TangentChain closed() {
    Arrays.fill(right, 0);
    return stepped(1);
  }

  private static double floor(int unknown) {
    return unknown < 3 || unknown % 2 == 1 ? 1e-9 : 1e-3;
  }

  private boolean isGiven(int unknown) {
    return unknown < 3 ? startHeld : unknown % 2 == 0 && chain.held[(unknown - 3) / 2];
  }

  private void constrain() {
    double[] gap = closing.gap(chain);
    for (int g = 0; g < 3; g++) {
      int row = unknowns + g;
      for (int u = 0; u < unknowns; u++) {
        double moves = state[g * unknowns + u] - (closing.isOwnStart() && u == g ? 1 : 0);
        double value = isGiven(u) ? 0 : moves;
        matrix[row * rows + u] = value;
        matrix[u * rows + row] = value;
      }
      right[row] = -gap[g];
    }
  }

  private void addPiece(int i, double[] sums) {
    int used = 3 + 2 * i;
    int own = 4 + 2 * i;
    double[] row = new double[4];
    // Columns of the four local terms for each unknown: the state's three rows, and its curvature.
    for (int u = 0; u <= own; u++) {
      if (u == used) {
        continue;
      }
      local(u, own, row);
      double r0 = row[0] * sums[0] + row[1] * sums[1] + row[2] * sums[2] + row[3] * sums[3];
      double r1 = row[0] * sums[1] + row[1] * sums[4] + row[2] * sums[5] + row[3] * sums[6];
      double r2 = row[0] * sums[2] + row[1] * sums[5] + row[2] * sums[7] + row[3] * sums[8];
      double r3 = row[0] * sums[3] + row[1] * sums[6] + row[2] * sums[8] + row[3] * sums[9];
      right[u] -= row[0] * sums[10] + row[1] * sums[11] + row[2] * sums[12] + row[3] * sums[13];
      for (int v = 0; v < own; v++) {
        if (v != used) {
          matrix[u * rows + v] +=
              r0 * state[v] + r1 * state[unknowns + v] + r2 * state[2 * unknowns + v];
        }
      }
      matrix[u * rows + own] += r3;
    }
  }

  private void local(int u, int own, double[] row) {
    row[0] = u == own ? 0 : state[u];
    row[1] = u == own ? 0 : state[unknowns + u];
    row[2] = u == own ? 0 : state[2 * unknowns + u];
    row[3] = u == own ? 1 : 0;
  }

  // The state after piece i, as it moves with each unknown.
  private void carry(int i) {
    double turn = chain.curvature[i] * chain.length[i];
    double l = chain.length[i];
    double dx = chain.x[i + 1] - chain.x[i];
    double dy = chain.y[i + 1] - chain.y[i];
    for (int u = 0; u < unknowns; u++) {
      double h = state[2 * unknowns + u];
      state[u] -= h * dy;
      state[unknowns + u] += h * dx;
    }
    int own = 3 + 2 * i;
    state[own] = Math.cos(chain.heading[i + 1]);
    state[unknowns + own] = Math.sin(chain.heading[i + 1]);
    state[2 * unknowns + own] = chain.curvature[i];
    double middle = chain.heading[i] + turn / 2;
    double s = TangentChain.sinc(turn / 2);
    // The chord is l · sinc(κ l / 2); by κ it changes by l² / 2 · sinc'.
    double u = turn / 2;
    double slope = Math.abs(u) < 1e-3 ? -u / 3 : (Math.cos(u) - s) / u;
    double along = l * l / 2 * slope;
    double across = l * l / 2 * s;
    state[own + 1] = along * Math.cos(middle) - across * Math.sin(middle);
    state[unknowns + own + 1] = along * Math.sin(middle) + across * Math.cos(middle);
    state[2 * unknowns + own + 1] = l;
  }

  private static TangentChain moved(TangentChain from, double[] d) {
    TangentChain next = from.copy();
    double share = 1;
    for (int i = 0; i < next.pieces; i++) {
      double shorter = -d[3 + 2 * i];
      if (shorter > MOST_SHORTENED * next.length[i]) {
        share = Math.min(share, MOST_SHORTENED * next.length[i] / shorter);
      }
    }
    next.x[0] += share * d[0];
    next.y[0] += share * d[1];
    next.heading[0] += share * d[2];
    for (int i = 0; i < next.pieces; i++) {
      double longer = share * d[3 + 2 * i];
      double bent = share * d[4 + 2 * i];
      next.length[i] += longer;
      if (!next.held[i]) {
        // As the turn moves, to which the pieces after it are bound.
        double turn = from.length[i] * (from.curvature[i] + bent) + from.curvature[i] * longer;
        next.curvature[i] = turn / next.length[i];
      }
    }
    next.run();
    return next;
  }
}
