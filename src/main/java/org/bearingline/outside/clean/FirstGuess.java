package org.bearingline.outside.clean;

import java.util.List;

/**
 * The tangent chain from which a row of stretches is solved: directions at the joints between those
 * of the two carriers, lengths and curvatures after them.
 */
final class FirstGuess {

  private final Course course;
  private final List<Stretch> stretches;
  private final EndStates ends;
  private final int pieces;

  FirstGuess(Course course, List<Stretch> stretches, EndStates ends) {
    this.course = course;
    this.stretches = stretches;
    this.ends = ends;
    pieces = stretches.size();
  }

  /** The chain, straights and anchored arcs held; null where a stretch has no length. */
  TangentChain chain() {
    TangentChain chain = new TangentChain(pieces);
    double[] heading = new double[pieces + 1];
    for (int j = 0; j <= pieces; j++) {
      heading[j] = heading(j);
    }
    for (int i = 0; i < pieces; i++) {
      Stretch s = stretches.get(i);
      double k = s.carrier().curvature();
      double turn = Math.IEEEremainder(heading[i + 1] - heading[i], 2 * Math.PI);
      double chord = course.chord(s);
      if (k == 0) {
        chain.held[i] = true;
        chain.length[i] = chord;
        continue;
      }
      chain.held[i] = course.isAnchored(s);
      // An arc of more than half a turn goes round its own way.
      double length = course.along(s.carrier(), s.from(), s.to());
      turn += 2 * Math.PI * Math.round((length * k - turn) / (2 * Math.PI));
      double half = TangentChain.sinc(turn / 2);
      chain.length[i] = half > 0.2 ? chord / half : length;
      chain.curvature[i] = chain.held[i] ? k : turn / chain.length[i];
      if (!(chain.length[i] > 0)) {
        return null;
      }
    }
    start(chain, heading[0]);
    chain.run();
    return chain;
  }

  private void start(TangentChain chain, double heading) {
    TangentChain.State start = ends.start();
    if (start == null) {
      Stretch first = stretches.get(0);
      double x = course.x[first.from()];
      double y = course.y[first.from()];
      chain.x[0] = first.carrier().foot(x, y).x();
      chain.y[0] = first.carrier().foot(x, y).y();
    } else {
      chain.x[0] = start.x();
      chain.y[0] = start.y();
    }
    chain.heading[0] = heading;
  }

  private double heading(int j) {
    if (j == 0 && ends.start() != null) {
      return ends.start().heading();
    }
    Stretch before = j > 0 ? stretches.get(j - 1) : ends.ring() ? stretches.get(pieces - 1) : null;
    Stretch after = j < pieces ? stretches.get(j) : ends.ring() ? stretches.get(0) : null;
    int at = j < pieces ? stretches.get(j).from() : stretches.get(pieces - 1).to();
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

  /**
   * Lets straights bend that are so short that the neighbour's bend would not show in them; whether
   * there are any.
   */
  boolean free(TangentChain guess, double tolerance) {
    boolean any = false;
    for (int i = 0; i < pieces; i++) {
      if (!guess.held[i] || stretches.get(i).drawn()) {
        continue;
      }
      double before = i > 0 || ends.ring() ? curvature(i + pieces - 1) : 0;
      double after = i + 1 < pieces || ends.ring() ? curvature(i + 1) : 0;
      double bend = Math.max(Math.abs(before), Math.abs(after));
      if (bend * guess.length[i] * guess.length[i] < 8 * tolerance && bend > 0) {
        guess.held[i] = false;
        any = true;
      }
    }
    return any;
  }

  private double curvature(int i) {
    return stretches.get(i % pieces).carrier().curvature();
  }
}
