package org.bearingline.outside.clean;

import java.util.Arrays;

/**
 * Finds the tangent chain of least squared distances to the samples of its pieces, by Levenberg and
 * Marquardt's method. A change of one piece carries all later ones along as rigid bodies, so each
 * piece's samples are summed up once in four terms (its state and its curvature) whatever the
 * number of pieces.
 */
final class ChainSolver {

  private static final int MOST_STEPS = 40;
  private static final int EVENINGS = 6;
  private static final int EVENING_STEPS = 4;

  /**
   * How much a gap at the end counts against the squares while steps are judged; were it much,
   * every step along the bent way of closed chains would be refused.
   */
  private static final double GAP_WEIGHT = 1;

  private static final int CLOSINGS = 12;

  /** Share of the squares below which a gain is none. */
  private static final double GAIN = 1e-4;

  private final double[] px;
  private final double[] py;
  private final double[] pw;

  /** The first sample of each piece, and one past the last. */
  private final int[] bound;

  private final boolean startHeld;
  private final boolean closed;
  private final double wholeTurn;
  private TangentChain chain;

  /**
   * @param bound the first sample of each piece, and one past the last; overwritten
   * @param startHeld whether the first state is given
   * @param closed whether the chain ends in {@code target}: its place and direction
   */
  ChainSolver(
      TangentChain chain,
      double[] px,
      double[] py,
      double[] pw,
      int[] bound,
      boolean startHeld,
      boolean closed,
      double wholeTurn) {
    this.chain = chain;
    this.px = px;
    this.py = py;
    this.pw = pw;
    this.bound = bound;
    this.startHeld = startHeld;
    this.closed = closed;
    this.wholeTurn = wholeTurn;
  }

  /** Where a closed chain must end; set for windows of a longer ring. */
  double targetX;

  double targetY;
  double targetHeading;
  boolean ownTarget = true;

  TangentChain chain() {
    return chain;
  }

  /** The largest distance of a sample from its piece after solving, as small as may be. */
  double solve(double tolerance) {
    squares(MOST_STEPS);
    double worst = worst();
    if (closed && worst > tolerance) {
      // Along the bent way of closed chains steps may have been refused that are good now.
      squares(MOST_STEPS);
      worst = worst();
    }
    TangentChain best = chain;
    int[] bestBound = bound.clone();
    double[] kept = pw.clone();
    // Lawson's way to the least largest distance: what stands out weighs more the next time.
    for (int i = 0; i < EVENINGS && worst > tolerance && worst < 4 * tolerance; i++) {
      weigh(worst);
      squares(EVENING_STEPS);
      double now = worst();
      if (now < worst) {
        worst = now;
        best = chain.copy();
        bestBound = bound.clone();
      } else if (now > 1.5 * worst) {
        break;
      }
    }
    System.arraycopy(kept, 0, pw, 0, pw.length);
    System.arraycopy(bestBound, 0, bound, 0, bound.length);
    chain = best;
    return worst;
  }

  private void weigh(double worst) {
    for (int i = 0; i < chain.pieces; i++) {
      Carrier carrier = chain.carrier(i);
      for (int k = bound[i]; k < bound[i + 1]; k++) {
        double share = Math.abs(carrier.off(px[k], py[k])) / worst;
        pw[k] *= 0.4 + share * share;
      }
    }
  }

  /** Root of the mean squared distance in mm. */
  double spread() {
    double sum = 0;
    double weight = 0;
    for (int i = 0; i < chain.pieces; i++) {
      Carrier carrier = chain.carrier(i);
      for (int k = bound[i]; k < bound[i + 1]; k++) {
        double off = carrier.off(px[k], py[k]);
        sum += pw[k] * off * off;
        weight += pw[k];
      }
    }
    return Math.sqrt(sum / weight);
  }

  private double worst() {
    double most = 0;
    for (int i = 0; i < chain.pieces; i++) {
      Carrier carrier = chain.carrier(i);
      for (int k = bound[i]; k < bound[i + 1]; k++) {
        most = Math.max(most, Math.abs(carrier.off(px[k], py[k])));
      }
    }
    return most;
  }

  private void squares(int steps) {
    double damping = 1e-4;
    chain.run();
    assign();
    double merit = merit(chain);
    for (int i = 0; i < steps; i++) {
      TangentChain next = stepped(damping, false);
      double now = next == null ? Double.NaN : merit(next);
      if (now <= merit * (1 + 1e-12) + 1e-30) {
        double gain = merit - now;
        chain = next;
        boolean moved = assign();
        merit = moved ? merit(chain) : now;
        damping = Math.max(1e-12, damping / 8);
        if (!moved && gain <= GAIN * merit + 1e-26) {
          break;
        }
      } else {
        damping *= 16;
        if (damping > 1e8) {
          break;
        }
      }
    }
    close();
  }

  // Hands each joint's neighbouring samples to the piece on their side of it.
  private boolean assign() {
    boolean moved = false;
    for (int j = 1; j < chain.pieces; j++) {
      double cos = Math.cos(chain.heading[j]);
      double sin = Math.sin(chain.heading[j]);
      int before = bound[j];
      while (bound[j] < bound[j + 1] - 1 && ahead(bound[j], j, cos, sin) < 0) {
        bound[j]++;
      }
      while (bound[j] > bound[j - 1] + 1 && ahead(bound[j] - 1, j, cos, sin) > 0) {
        bound[j]--;
      }
      moved |= before != bound[j];
    }
    return moved;
  }

  private double ahead(int k, int j, double cos, double sin) {
    return (px[k] - chain.x[j]) * cos + (py[k] - chain.y[j]) * sin;
  }

  private double merit(TangentChain c) {
    double sum = 0;
    for (int i = 0; i < c.pieces; i++) {
      if (!(c.length[i] > 0)) {
        return Double.NaN;
      }
      Carrier carrier = c.carrier(i);
      for (int k = bound[i]; k < bound[i + 1]; k++) {
        double off = carrier.off(px[k], py[k]);
        sum += pw[k] * off * off;
      }
    }
    if (closed) {
      double[] gap = gap(c);
      double weight = GAP_WEIGHT * (1 + Arrays.stream(pw, bound[0], bound[c.pieces]).sum());
      double reach = 1 + Math.abs(c.length[0]);
      sum += weight * (gap[0] * gap[0] + gap[1] * gap[1] + gap[2] * gap[2] * reach);
    }
    return sum;
  }

  // Closes what gap is left with the least change, whatever the squares say.
  private void close() {
    for (int i = 0; i < CLOSINGS && !gapIsClosed(); i++) {
      TangentChain next = stepped(1, true);
      if (next == null) {
        return;
      }
      chain = next;
    }
  }

  private boolean gapIsClosed() {
    if (!closed) {
      return true;
    }
    double[] gap = gap(chain);
    return Math.hypot(gap[0], gap[1]) < 1e-10 && Math.abs(gap[2]) < 1e-12;
  }

  private double[] gap(TangentChain c) {
    int m = c.pieces;
    double toX = ownTarget ? c.x[0] : targetX;
    double toY = ownTarget ? c.y[0] : targetY;
    double to = ownTarget ? c.heading[0] + wholeTurn : targetHeading;
    return new double[] {c.x[m] - toX, c.y[m] - toY, c.heading[m] - to};
  }

  private TangentChain stepped(double damping, boolean onlyGap) {
    int m = chain.pieces;
    int unknowns = 3 + 2 * m;
    int rows = unknowns + (closed ? 3 : 0);
    double[] matrix = new double[rows * rows];
    double[] right = new double[rows];
    // How the present state moves with each unknown: rows x, y, heading.
    double[] state = new double[3 * unknowns];
    state[0] = 1;
    state[unknowns + 1] = 1;
    state[2 * unknowns + 2] = 1;
    for (int i = 0; i < m; i++) {
      addPiece(i, state, unknowns, rows, matrix, right);
      carry(i, state, unknowns);
    }
    if (onlyGap) {
      Arrays.fill(right, 0);
    }
    for (int u = 0; u < unknowns; u++) {
      double diagonal = matrix[u * rows + u];
      matrix[u * rows + u] += damping * (diagonal + floor(u));
      boolean given = u < 3 ? startHeld : u % 2 == 0 && chain.held[(u - 3) / 2];
      if (given) {
        for (int v = 0; v < rows; v++) {
          matrix[u * rows + v] = 0;
          matrix[v * rows + u] = 0;
        }
        matrix[u * rows + u] = 1;
        right[u] = 0;
      }
    }
    if (closed) {
      constrain(state, unknowns, rows, matrix, right);
    }
    double[] d = Dense.solve(matrix, right);
    return d == null ? null : moved(d);
  }

  private double floor(int unknown) {
    return unknown < 3 || unknown % 2 == 1 ? 1e-9 : 1e-3;
  }

  private void constrain(double[] state, int unknowns, int rows, double[] matrix, double[] right) {
    double[] gap = gap(chain);
    for (int g = 0; g < 3; g++) {
      int row = unknowns + g;
      for (int u = 0; u < unknowns; u++) {
        double moves = state[g * unknowns + u] - (ownTarget && u == g ? 1 : 0);
        boolean given = u < 3 ? startHeld : u % 2 == 0 && chain.held[(u - 3) / 2];
        double value = given ? 0 : moves;
        matrix[row * rows + u] = value;
        matrix[u * rows + row] = value;
      }
      right[row] = -gap[g];
    }
  }

  // Unknown 3 + 2i is the length of piece i, 4 + 2i its curvature.
  private void addPiece(
      int i, double[] state, int unknowns, int rows, double[] matrix, double[] right) {
    double[] sums = sums(i);
    int used = 3 + 2 * i;
    int own = 4 + 2 * i;
    double[] row = new double[4];
    // Columns of the four local terms for each unknown: the state's three rows, and its curvature.
    for (int u = 0; u <= own; u++) {
      if (u == used) {
        continue;
      }
      local(state, unknowns, u, own, row);
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

  private static void local(double[] state, int unknowns, int u, int own, double[] row) {
    row[0] = u == own ? 0 : state[u];
    row[1] = u == own ? 0 : state[unknowns + u];
    row[2] = u == own ? 0 : state[2 * unknowns + u];
    row[3] = u == own ? 1 : 0;
  }

  // The upper half of Σ w g gᵀ for g by x, y, heading, curvature, then Σ w g f.
  private double[] sums(int i) {
    double[] s = new double[14];
    double tx = Math.cos(chain.heading[i]);
    double ty = Math.sin(chain.heading[i]);
    double k = chain.curvature[i];
    for (int p = bound[i]; p < bound[i + 1]; p++) {
      double dx = px[p] - chain.x[i];
      double dy = py[p] - chain.y[i];
      double a = tx * dx + ty * dy;
      double b = tx * dy - ty * dx;
      double q = a * a + b * b;
      double root = Math.sqrt(Math.max(1e-12, 1 - 2 * k * b + k * k * q));
      double f = (2 * b - k * q) / (1 + root);
      double nt = -k * a / root;
      double nb = (1 - k * b) / root;
      double gx = -(nt * tx - nb * ty);
      double gy = -(nt * ty + nb * tx);
      double gt = nt * b - nb * a;
      double gk =
          (-q * (1 + root) - (2 * b - k * q) * (k * q - b) / root) / ((1 + root) * (1 + root));
      double w = pw[p];
      s[0] += w * gx * gx;
      s[1] += w * gx * gy;
      s[2] += w * gx * gt;
      s[3] += w * gx * gk;
      s[4] += w * gy * gy;
      s[5] += w * gy * gt;
      s[6] += w * gy * gk;
      s[7] += w * gt * gt;
      s[8] += w * gt * gk;
      s[9] += w * gk * gk;
      s[10] += w * gx * f;
      s[11] += w * gy * f;
      s[12] += w * gt * f;
      s[13] += w * gk * f;
    }
    return s;
  }

  // The state after piece i, as it moves with each unknown.
  private void carry(int i, double[] state, int unknowns) {
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

  private TangentChain moved(double[] d) {
    TangentChain next = chain.copy();
    double share = 1;
    for (int i = 0; i < next.pieces; i++) {
      double shorter = -d[3 + 2 * i];
      if (shorter > 0.8 * next.length[i]) {
        share = Math.min(share, 0.8 * next.length[i] / shorter);
      }
    }
    next.x[0] += share * d[0];
    next.y[0] += share * d[1];
    next.heading[0] += share * d[2];
    for (int i = 0; i < next.pieces; i++) {
      next.length[i] += share * d[3 + 2 * i];
      next.curvature[i] += share * d[4 + 2 * i];
    }
    next.run();
    return next;
  }
}
