package org.bearingline.outside.clean;

import java.util.Arrays;
import java.util.List;

/**
 * The samples that a tangent chain is solved for, each with a weight and shared out among the
 * pieces: a joint's samples belong to the side they lie on.
 */
final class PieceSamples {

  /** How much more a line or an arc counts that was drawn as such than a sample of a curve. */
  private static final double DRAWN = 1e5;

  /** As many samples of a stretch as tell all: noise averages out to a fortieth. */
  private static final int MOST_SAMPLES = 800;

  private final double[] x;
  private final double[] y;
  private final double[] weight;

  /** Their numbers in the course. */
  private final int[] number;

  /** The first one of each piece, and one past the last. */
  private final int[] bound;

  /** Of a ring, how many samples there are all round; 0 of an open chain. */
  private final int round;

  private PieceSamples(
      double[] x, double[] y, double[] weight, int[] number, int[] bound, int round) {
    this.x = x;
    this.y = y;
    this.weight = weight;
    this.number = number;
    this.bound = bound;
    this.round = round;
  }

  /** Of stretches in a row; the sample at which two of them meet goes to the later one. */
  static PieceSamples of(
      Course course, CarrierFit carriers, List<Stretch> stretches, double tolerance) {
    int most = 0;
    for (Stretch s : stretches) {
      most += (s.to() - s.from()) / stride(s) + 2;
    }
    double[] x = new double[most];
    double[] y = new double[most];
    double[] weight = new double[most];
    int[] number = new int[most];
    int[] bound = new int[stretches.size() + 1];
    int n = 0;
    for (int i = 0; i < stretches.size(); i++) {
      Stretch s = stretches.get(i);
      boolean chord = s.to() == s.from() + 1 && course.isMeantLine(s.from(), tolerance);
      boolean meant = s.drawn() && !course.isAnchored(s) || chord;
      int stride = stride(s);
      bound[i] = i == 0 ? 0 : n - 1;
      for (int k = i == 0 ? s.from() : s.from() + stride; k < s.to() + stride; k += stride) {
        int at = Math.min(k, s.to());
        x[n] = course.x[at];
        y[n] = course.y[at];
        weight[n] = carriers.weight(at) * stride * (meant ? DRAWN : 1);
        number[n++] = at;
      }
    }
    bound[stretches.size()] = n;
    return new PieceSamples(x, y, weight, number, bound, 0);
  }

  /**
   * The same of a closed course from its first sample round to it again. There the first piece and
   * the last one meet, and share samples as any two: they stand here three times over, so that the
   * pieces may start earlier or later.
   */
  static PieceSamples round(
      Course course, CarrierFit carriers, List<Stretch> stretches, double tolerance) {
    PieceSamples once = of(course, carriers, stretches, tolerance);
    int n = once.count() - 1; // The last one stands where the first one does.
    once.weight[0] += once.weight[n];
    int[] number = new int[3 * n];
    for (int k = 0; k < 3 * n; k++) {
      number[k] = once.number[k % n] + (k / n - 1) * (course.size - 1);
    }
    int[] bound = Arrays.stream(once.bound).map(b -> b + n).toArray();
    bound[stretches.size()] = 2 * n;
    return new PieceSamples(
        thrice(once.x, n), thrice(once.y, n), thrice(once.weight, n), number, bound, n);
  }

  private static double[] thrice(double[] of, int n) {
    double[] all = new double[3 * n];
    for (int k = 0; k < 3; k++) {
      System.arraycopy(of, 0, all, k * n, n);
    }
    return all;
  }

  private static int stride(Stretch s) {
    return s.drawn() ? 1 : Math.max(1, (s.to() - s.from()) / MOST_SAMPLES);
  }

  /** The same, with weights and joints of its own. */
  PieceSamples copy() {
    return new PieceSamples(x, y, weight.clone(), number, bound.clone(), round);
  }

  /** Shared out as these, weighed as others. */
  PieceSamples weighedAs(PieceSamples others) {
    return new PieceSamples(x, y, others.weight, number, bound, round);
  }

  /** How many there are; where a ring closes there are two, as in its course. */
  int count() {
    return end() - bound[0] + (isRound() ? 1 : 0);
  }

  private int end() {
    return bound[bound.length - 1];
  }

  /**
   * The sample of the course at which piece i starts; of a ring less than nothing where the first
   * one starts before the course does.
   */
  int first(int i) {
    return number[bound[i]];
  }

  /** Whether the last piece goes on into the first one. */
  boolean isRound() {
    return round > 0;
  }

  /** The same of the last piece's end, which in an open chain is {@code to}. */
  int last(int to) {
    return isRound() ? number[end()] : to;
  }

  double totalWeight() {
    return Arrays.stream(weight, bound[0], end()).sum();
  }

  /** Hands each joint's neighbouring samples to the piece on their side of it; whether any went. */
  boolean share(TangentChain chain) {
    boolean moved = false;
    for (int j = 1; j < chain.pieces; j++) {
      double cos = Math.cos(chain.heading[j]);
      double sin = Math.sin(chain.heading[j]);
      int before = bound[j];
      while (bound[j] < bound[j + 1] - 1 && ahead(bound[j], chain, j, cos, sin) < 0) {
        bound[j]++;
      }
      while (bound[j] > bound[j - 1] + 1 && ahead(bound[j] - 1, chain, j, cos, sin) > 0) {
        bound[j]--;
      }
      moved |= before != bound[j];
    }
    return moved | (isRound() && shareSeam(chain));
  }

  // The last piece ends where the first one starts.
  private boolean shareSeam(TangentChain chain) {
    double cos = Math.cos(chain.heading[0]);
    double sin = Math.sin(chain.heading[0]);
    int before = bound[0];
    int last = bound[chain.pieces - 1] - round;
    while (bound[0] < Math.min(bound[1], 2 * round) - 1
        && ahead(bound[0], chain, 0, cos, sin) < 0) {
      bound[0]++;
    }
    while (bound[0] > Math.max(last + 1, 0) && ahead(bound[0] - 1, chain, 0, cos, sin) > 0) {
      bound[0]--;
    }
    bound[chain.pieces] = bound[0] + round;
    return before != bound[0];
  }

  private double ahead(int k, TangentChain chain, int j, double cos, double sin) {
    return (x[k] - chain.x[j]) * cos + (y[k] - chain.y[j]) * sin;
  }

  /** The largest distance in mm of a sample from its piece's carrier. */
  double worst(TangentChain chain) {
    double most = 0;
    for (int i = 0; i < chain.pieces; i++) {
      Carrier carrier = chain.carrier(i);
      for (int k = bound[i]; k < bound[i + 1]; k++) {
        most = Math.max(most, Math.abs(carrier.off(x[k], y[k])));
      }
    }
    return most;
  }

  /** The sum of the weighed squares of the distances; not a number where a piece runs backwards. */
  double squares(TangentChain chain) {
    double sum = 0;
    for (int i = 0; i < chain.pieces; i++) {
      if (!(chain.length[i] > 0)) {
        return Double.NaN;
      }
      Carrier carrier = chain.carrier(i);
      for (int k = bound[i]; k < bound[i + 1]; k++) {
        double off = carrier.off(x[k], y[k]);
        sum += weight[k] * off * off;
      }
    }
    return sum;
  }

  /** Root of the mean squared distance in mm. */
  double spread(TangentChain chain) {
    double sum = 0;
    double all = 0;
    for (int i = 0; i < chain.pieces; i++) {
      Carrier carrier = chain.carrier(i);
      for (int k = bound[i]; k < bound[i + 1]; k++) {
        double off = carrier.off(x[k], y[k]);
        sum += weight[k] * off * off;
        all += weight[k];
      }
    }
    return Math.sqrt(sum / all);
  }

  /** Lets what stands out, by up to {@code worst} mm, weigh more and the rest less. */
  void weighBy(TangentChain chain, double worst) {
    for (int i = 0; i < chain.pieces; i++) {
      Carrier carrier = chain.carrier(i);
      for (int k = bound[i]; k < bound[i + 1]; k++) {
        double share = Math.abs(carrier.off(x[k], y[k])) / worst;
        weight[k] *= 0.4 + share * share;
      }
    }
    for (int k = bound[0]; k < bound[0] + round; k++) {
      for (int other = k % round; other < weight.length; other += round) {
        weight[other] = weight[k];
      }
    }
  }

  /**
   * For piece i, with f the distance and g how it changes with x, y, heading and curvature: the
   * upper half of Σ w g gᵀ, row by row, then Σ w g f.
   */
  double[] sums(TangentChain chain, int i) {
    double[] s = new double[14];
    Carrier carrier = chain.carrier(i);
    DistanceSlopes slopes = new DistanceSlopes(carrier);
    double tx = carrier.tx();
    double ty = carrier.ty();
    for (int p = bound[i]; p < bound[i + 1]; p++) {
      slopes.at(x[p], y[p]);
      double f = slopes.off();
      double gx = -(slopes.ahead() * tx - slopes.left() * ty);
      double gy = -(slopes.ahead() * ty + slopes.left() * tx);
      double gt = slopes.turned();
      double gk = slopes.bent();
      double w = weight[p];
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
}
