package org.bearingline;

/**
 * The seed of every property test, so that each run of the build tries the same samples. {@code
 * src/bench/wander} runs the properties with a fresh seed each time instead.
 */
public final class Seed {

  public static final String FIXED = "20261126";

  private Seed() {}
}
