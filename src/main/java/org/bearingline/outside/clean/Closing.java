package org.bearingline.outside.clean;

/** Where a tangent chain has to end while it is solved. */
sealed interface Closing {

  /** What the end of the chain misses: mm in x, mm in y, radians. */
  double[] gap(TangentChain chain);

  /** Whether anything is asked of the end. */
  default boolean isAsked() {
    return true;
  }

  /** Whether the place to end in moves along with the start of the chain. */
  default boolean isOwnStart() {
    return false;
  }

  /**
   * What the ends ask for; of directions that differ by whole turns the one nearest to the guess.
   */
  static Closing of(EndStates ends, TangentChain guess) {
    double last = guess.heading[guess.pieces];
    if (ends.end() != null) {
      TangentChain.State end = ends.end();
      double turned = end.heading() + wholeTurns(last - end.heading());
      return new Given(new TangentChain.State(end.x(), end.y(), turned));
    }
    return ends.ring() ? new Round(wholeTurns(last - guess.heading[0])) : new Open();
  }

  private static double wholeTurns(double turn) {
    return 2 * Math.PI * Math.round(turn / (2 * Math.PI));
  }

  /** Anywhere. */
  record Open() implements Closing {

    @Override
    public double[] gap(TangentChain chain) {
      return new double[3];
    }

    @Override
    public boolean isAsked() {
      return false;
    }
  }

  /**
   * Where it starts.
   *
   * @param turn radians that it turns by all in all
   */
  record Round(double turn) implements Closing {

    @Override
    public double[] gap(TangentChain chain) {
      return missed(chain, chain.x[0], chain.y[0], chain.heading[0] + turn);
    }

    @Override
    public boolean isOwnStart() {
      return true;
    }
  }

  /** In a given state. */
  record Given(TangentChain.State state) implements Closing {

    @Override
    public double[] gap(TangentChain chain) {
      return missed(chain, state.x(), state.y(), state.heading());
    }
  }

  private static double[] missed(TangentChain chain, double x, double y, double heading) {
    int m = chain.pieces;
    return new double[] {chain.x[m] - x, chain.y[m] - y, chain.heading[m] - heading};
  }
}
