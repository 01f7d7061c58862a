package org.bearingline.outside.clean;

import java.util.List;

/**
 * A few stretches in a row that run on smoothly into each other, made a tangent chain. Long chains
 * are solved in windows, each starting in the state where the one before was cut.
 */
final class Window {

  private final Fitting fitting;
  private final Course course;
  private final List<Stretch> stretches;
  private final int from;
  private final int to;

  /** The solution; null where there is none within the tolerance. */
  private TangentChain chain;

  private PieceSamples samples;
  private double spread;

  Window(Fitting fitting, List<Stretch> stretches) {
    this.fitting = fitting;
    this.stretches = stretches;
    course = fitting.course();
    from = stretches.get(0).from();
    to = stretches.get(stretches.size() - 1).to();
  }

  List<Stretch> stretches() {
    return stretches;
  }

  /** Its last sample. */
  int to() {
    return to;
  }

  TangentChain chain() {
    return chain;
  }

  /** Root of the mean squared distance in mm. */
  double spread() {
    return spread;
  }

  /** The sample of the course at which piece i starts. */
  int sample(int i) {
    return samples.first(i);
  }

  /** Solves for the tangent chain; whether there is one within the tolerance. */
  boolean solve(EndStates ends) {
    FirstGuess first = new FirstGuess(course, stretches, ends);
    TangentChain guess = first.chain();
    if (guess == null) {
      return false;
    }
    if (isChord() && ends.areFree()) {
      chain = guess;
      samples = picked(ends);
      return true;
    }
    TangentChain freer = guess.copy();
    return solve(guess, ends) || first.free(freer, fitting.tolerance()) && solve(freer, ends);
  }

  private boolean solve(TangentChain guess, EndStates ends) {
    double tolerance = fitting.tolerance();
    ChainSolver solver = new ChainSolver(guess, picked(ends), ends);
    double worst = solver.solve(tolerance);
    samples = solver.samples();
    spread = samples.spread(solver.chain());
    SolvedCheck check = new SolvedCheck(course, solver.chain(), samples, to);
    if (worst <= tolerance && samples.count() <= to - from) {
      worst = check.worst();
    }
    boolean good =
        worst <= tolerance
            && solver.chain().isSound()
            && check.isClosed(ends)
            && check.keepsChords(tolerance);
    chain = good ? solver.chain() : null;
    return good;
  }

  private PieceSamples picked(EndStates ends) {
    return ends.ring()
        ? PieceSamples.round(course, fitting.carriers(), stretches, fitting.tolerance())
        : PieceSamples.of(course, fitting.carriers(), stretches, fitting.tolerance());
  }

  // One chord: as it is.
  private boolean isChord() {
    return to == from + 1 && course.isFlat(from);
  }

  /**
   * Lets the chain end where its samples do, for nothing tells how long the last piece of an open
   * chain is; a piece that starts past them is left out.
   */
  void trimEnd() {
    int joint = sample(stretches.size() - 1);
    double way = course.along(chain.carrier(chain.pieces - 1), joint, to);
    chain = chain.endingAt(course.at(to), way);
  }

  /** The same at its start. */
  void trimStart() {
    int joint = stretches.size() > 1 ? sample(1) : to;
    double way = course.along(chain.carrier(0), from, joint);
    chain = chain.reversed().endingAt(course.at(from), way).reversed();
  }
}
