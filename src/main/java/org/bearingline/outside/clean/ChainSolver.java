package org.bearingline.outside.clean;

import org.bearingline.problem.CutOff;

/**
 * Finds the tangent chain of least squared distances to the samples of its pieces, by Levenberg and
 * Marquardt's method.
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

  private final boolean startHeld;
  private final Closing closing;
  private TangentChain chain;
  private PieceSamples samples;

  /**
   * @param guess what to start from; its held curvatures stay
   * @param samples shared out among the pieces anew while it is solved
   */
  ChainSolver(TangentChain guess, PieceSamples samples, EndStates ends) {
    chain = guess;
    this.samples = samples;
    startHeld = ends.start() != null;
    closing = Closing.of(ends, guess);
  }

  TangentChain chain() {
    return chain;
  }

  /** The samples as they belong to the pieces after solving. */
  PieceSamples samples() {
    return samples;
  }

  /** The largest distance of a sample from its piece after solving, as small as may be. */
  double solve(double tolerance) {
    squares(MOST_STEPS);
    double worst = samples.worst(chain);
    if (closing.isAsked() && worst > tolerance) {
      // Along the bent way of closed chains steps may have been refused that are good now.
      squares(MOST_STEPS);
      worst = samples.worst(chain);
    }
    return worst > tolerance ? evened(worst, tolerance) : worst;
  }

  // Lawson's way to the least largest distance: what stands out weighs more the next time.
  private double evened(double given, double tolerance) {
    double worst = given;
    PieceSamples weighed = samples;
    PieceSamples bestShared = samples;
    TangentChain best = chain;
    samples = samples.copy();
    for (int i = 0; i < EVENINGS && worst > tolerance && worst < 4 * tolerance; i++) {
      samples.weighBy(chain, worst);
      squares(EVENING_STEPS);
      double now = samples.worst(chain);
      if (now < worst) {
        worst = now;
        best = chain.copy();
        bestShared = samples.copy();
      } else if (now > 1.5 * worst) {
        break;
      }
    }
    chain = best;
    samples = bestShared.weighedAs(weighed);
    return worst;
  }

  private void squares(int steps) {
    double damping = 1e-4;
    chain.run();
    samples.share(chain);
    double merit = merit(chain);
    for (int i = 0; i < steps; i++) {
      CutOff.check();
      TangentChain next = equations().stepped(damping);
      double now = next == null ? Double.NaN : merit(next);
      if (now <= merit * (1 + 1e-12) + 1e-30) {
        double gain = merit - now;
        chain = next;
        boolean moved = samples.share(chain);
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

  private NormalEquations equations() {
    return new NormalEquations(chain, samples, startHeld, closing);
  }

  private double merit(TangentChain c) {
    double sum = samples.squares(c);
    if (closing.isAsked()) {
      double[] gap = closing.gap(c);
      double weight = GAP_WEIGHT * (1 + samples.totalWeight());
      double reach = 1 + Math.abs(c.length[0]);
      sum += weight * (gap[0] * gap[0] + gap[1] * gap[1] + gap[2] * gap[2] * reach);
    }
    return sum;
  }

  private void close() {
    for (int i = 0; i < CLOSINGS && !gapIsClosed(); i++) {
      TangentChain next = equations().closed();
      if (next == null) {
        return;
      }
      chain = next;
    }
  }

  private boolean gapIsClosed() {
    double[] gap = closing.gap(chain);
    return Math.hypot(gap[0], gap[1]) < 1e-10 && Math.abs(gap[2]) < 1e-12;
  }
}
