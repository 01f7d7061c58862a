package org.bearingline.outside.clean;

import java.util.List;

/**
 * A few stretches in a row that run on smoothly into each other, made a tangent chain. Long chains
 * are solved in windows, each starting in the state where the one before was cut.
 */
final class Window {

  /** How much more a line or an arc counts that was drawn as such than a sample of a curve. */
  private static final double DRAWN = 1e5;

  /** Tolerances of length from which a single chord is a line that was meant. */
  static final double LONG = 200;

  /** Tolerances of length from which the middle of a chord is looked at. */
  private static final double LEAST_CHORD = 4;

  /** As many samples of a stretch as tell all: noise averages out to a fortieth. */
  private static final int MOST_SAMPLES = 800;

  private final Course course;
  private final CarrierFit fit;
  private final double tolerance;
  final List<Stretch> stretches;
  final int from;
  final int to;
  private final int[] bound;
  private int[] samples = new int[0];
  private double spread;

  /** The solution; null where there is none within the tolerance. */
  private TangentChain chain;

  Window(Course course, CarrierFit fit, double tolerance, List<Stretch> stretches) {
    this.course = course;
    this.fit = fit;
    this.tolerance = tolerance;
    this.stretches = stretches;
    from = stretches.get(0).from();
    to = stretches.get(stretches.size() - 1).to();
    bound = new int[stretches.size() + 1];
  }

  TangentChain chain() {
    return chain;
  }

  double spread() {
    return spread;
  }

  /** The sample of the course at which piece i starts. */
  int sample(int i) {
    return samples[bound[i]];
  }

  /** Where a chain has to start or end. */
  record State(double x, double y, double heading) {}

  /**
   * Solves for the tangent chain.
   *
   * @param start where it must start, or null
   * @param target where it must end, or null
   * @param ring whether it must end where it starts
   */
  boolean solve(State start, State target, boolean ring) {
    TangentChain guess = guess(start, ring);
    if (guess == null) {
      return false;
    }
    if (isChord() && start == null && target == null) {
      chain = guess;
      samples = new int[] {from, to};
      bound[1] = 1;
      return true;
    }
    TangentChain freer = guess.copy();
    return solve(guess, start, target, ring)
        || free(freer, ring) && solve(freer, start, target, ring);
  }

  /** The same from a given chain, whose held curvatures stay. */
  boolean solve(TangentChain guess, State start, State target, boolean ring) {
    int most = 0;
    for (Stretch s : stretches) {
      most += picked(s);
    }
    double[] px = new double[most];
    double[] py = new double[most];
    double[] pw = new double[most];
    int[] sample = new int[most];
    int n = 0;
    for (int i = 0; i < stretches.size(); i++) {
      Stretch s = stretches.get(i);
      boolean chord = s.to() == s.from() + 1 && course.step[s.from()] == Course.Step.CHORD;
      boolean meant =
          s.drawn() && !isAnchor(s) || chord && course.length(s.from()) > LONG * tolerance;
      int stride = stride(s);
      bound[i] = i == 0 ? 0 : n - 1;
      for (int k = i == 0 ? s.from() : s.from() + stride; k < s.to() + stride; k += stride) {
        int at = Math.min(k, s.to());
        px[n] = course.x[at];
        py[n] = course.y[at];
        pw[n] = fit.weight(at) * stride * (meant ? DRAWN : 1);
        sample[n++] = at;
      }
    }
    bound[stretches.size()] = n;
    samples = sample;
    boolean closed = ring || target != null;
    ChainSolver solver =
        new ChainSolver(guess, px, py, pw, bound, start != null, closed, wholeTurn(guess));
    if (target != null) {
      solver.ownTarget = false;
      solver.targetX = target.x();
      solver.targetY = target.y();
      double turns = (guess.heading[guess.pieces] - target.heading()) / (2 * Math.PI);
      solver.targetHeading = target.heading() + 2 * Math.PI * Math.round(turns);
    }
    double worst = solver.solve(tolerance);
    chain = solver.chain();
    spread = solver.spread();
    if (worst <= tolerance && n <= to - from) {
      worst = worstOfAll();
    }
    boolean good =
        worst <= tolerance
            && chain.isSound()
            && (!closed || endsAt(solver, target))
            && keepsChords();
    if (!good) {
      chain = null;
    }
    return good;
  }

  private boolean isAnchor(Stretch s) {
    return s.from() == 0 && course.isAnchor(0)
        || s.to() == course.size - 1 && course.isAnchor(course.size - 2);
  }

  /**
   * Lets the chain start and end where its samples do, for nothing tells how long the first and the
   * last piece of an open chain are; a piece that starts past them is left out.
   *
   * @param atStart whether its start is free
   * @param atEnd whether its end is free
   */
  void trim(boolean atStart, boolean atEnd) {
    if (atEnd) {
      chain = chain.endingAt(course.at(to), way(true));
    }
    if (atStart) {
      chain = chain.reversed().endingAt(course.at(from), way(false)).reversed();
    }
  }

  // mm along the last piece from its joint on, or along the first one up to its joint.
  private double way(boolean last) {
    int joint = last ? sample(stretches.size() - 1) : stretches.size() > 1 ? sample(1) : to;
    Carrier carrier = chain.carrier(last ? chain.pieces - 1 : 0);
    return along(carrier, last ? joint : from, last ? to : joint);
  }

  // One chord: as it is.
  private boolean isChord() {
    return to == from + 1 && course.step[from] == Course.Step.CHORD && !course.bent[from];
  }

  private int stride(Stretch s) {
    return s.drawn() ? 1 : Math.max(1, (s.to() - s.from()) / MOST_SAMPLES);
  }

  private int picked(Stretch s) {
    return (s.to() - s.from()) / stride(s) + 2;
  }

  private double worstOfAll() {
    double worst = 0;
    for (int i = 0; i < chain.pieces; i++) {
      Carrier carrier = chain.carrier(i);
      int end = i + 1 < chain.pieces ? sample(i + 1) : to;
      for (int k = sample(i); k <= end; k++) {
        worst = Math.max(worst, Math.abs(carrier.off(course.x[k], course.y[k])));
      }
    }
    return worst;
  }

  // The ends of a drawn straight may lie near two pieces, and its middle near none.
  private boolean keepsChords() {
    for (int i = 0; i < chain.pieces; i++) {
      int end = i + 1 < chain.pieces ? sample(i + 1) : to;
      for (int k = sample(i); k < end; k++) {
        boolean flat = course.step[k] == Course.Step.CHORD && !course.bent[k];
        if (flat && course.length(k) > LEAST_CHORD * tolerance) {
          double x = (course.x[k] + course.x[k + 1]) / 2;
          double y = (course.y[k] + course.y[k + 1]) / 2;
          boolean last = k + 1 == end && i + 1 < chain.pieces;
          double off = Math.abs(chain.carrier(i).off(x, y));
          double next = last ? Math.abs(chain.carrier(i + 1).off(x, y)) : off;
          if (!(Math.min(off, next) <= tolerance)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private boolean endsAt(ChainSolver solver, State target) {
    TangentChain c = solver.chain();
    double x = target == null ? c.x[0] : target.x();
    double y = target == null ? c.y[0] : target.y();
    return Math.hypot(c.x[c.pieces] - x, c.y[c.pieces] - y) < 1e-8;
  }

  private static double wholeTurn(TangentChain guess) {
    double turn = guess.heading[guess.pieces] - guess.heading[0];
    return 2 * Math.PI * Math.round(turn / (2 * Math.PI));
  }

  // Directions at the joints between those of the two carriers, lengths and curvatures after them.
  private TangentChain guess(State start, boolean ring) {
    int m = stretches.size();
    TangentChain chain = new TangentChain(m);
    double[] heading = new double[m + 1];
    for (int j = 0; j <= m; j++) {
      heading[j] = heading(j, m, start, ring);
    }
    for (int i = 0; i < m; i++) {
      Stretch s = stretches.get(i);
      double k = s.carrier().curvature();
      double turn = Math.IEEEremainder(heading[i + 1] - heading[i], 2 * Math.PI);
      double chord =
          Math.hypot(course.x[s.to()] - course.x[s.from()], course.y[s.to()] - course.y[s.from()]);
      if (k == 0) {
        chain.held[i] = true;
        chain.length[i] = chord;
        continue;
      }
      chain.held[i] = isAnchor(s);
      // An arc of more than half a turn goes round its own way.
      double way = length(s) * k;
      turn += 2 * Math.PI * Math.round((way - turn) / (2 * Math.PI));
      double half = TangentChain.sinc(turn / 2);
      chain.length[i] = half > 0.2 ? chord / half : length(s);
      chain.curvature[i] = isAnchor(s) ? k : turn / chain.length[i];
      if (!(chain.length[i] > 0)) {
        return null;
      }
    }
    chain.x[0] = start != null ? start.x() : course.x[from];
    chain.y[0] = start != null ? start.y() : course.y[from];
    if (start == null) {
      Carrier first = stretches.get(0).carrier();
      chain.x[0] = first.foot(course.x[from], course.y[from]).x();
      chain.y[0] = first.foot(course.x[from], course.y[from]).y();
    }
    chain.heading[0] = heading[0];
    chain.run();
    return chain;
  }

  private double heading(int j, int m, State start, boolean ring) {
    if (j == 0 && start != null) {
      return start.heading();
    }
    Stretch before = j > 0 ? stretches.get(j - 1) : ring ? stretches.get(m - 1) : null;
    Stretch after = j < m ? stretches.get(j) : ring ? stretches.get(0) : null;
    int at = j < m ? stretches.get(j).from() : to;
    double x = course.x[at];
    double y = course.y[at];
    if (before == null || after != null && after.isStraight()) {
      return after.carrier().heading(x, y);
    }
    double in = before.carrier().heading(x, y);
    if (after == null || before.isStraight()) {
      return in;
    }
    return in + Joints.turn(before.carrier(), after.carrier(), x, y) / 2;
  }

  private double length(Stretch s) {
    return along(s.carrier(), s.from(), s.to());
  }

  // Along the carrier: the steps of a noisy drawing zigzag and are longer than their way.
  private double along(Carrier carrier, int first, int last) {
    double sum = 0;
    for (int i = first; i < last; i++) {
      double dx = course.x[i + 1] - course.x[i];
      double dy = course.y[i + 1] - course.y[i];
      double mx = (course.x[i] + course.x[i + 1]) / 2;
      double my = (course.y[i] + course.y[i + 1]) / 2;
      sum += carrier.along(mx, my, dx, dy);
    }
    return sum;
  }

  // Straights so short that the neighbour's bend would not show in them: they may bend.
  private boolean free(TangentChain guess, boolean ring) {
    int m = stretches.size();
    boolean any = false;
    for (int i = 0; i < m; i++) {
      if (!guess.held[i] || stretches.get(i).drawn()) {
        continue;
      }
      double before = i > 0 || ring ? stretches.get((i + m - 1) % m).carrier().curvature() : 0;
      double after = i + 1 < m || ring ? stretches.get((i + 1) % m).carrier().curvature() : 0;
      double bend = Math.max(Math.abs(before), Math.abs(after));
      if (bend * guess.length[i] * guess.length[i] < 8 * tolerance && bend > 0) {
        guess.held[i] = false;
        any = true;
      }
    }
    return any;
  }
}
