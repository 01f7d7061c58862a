package org.bearingline.cutlist;

/**
 * How much work a search may still do. It counts steps and not time, so that the same task has the
 * same layout on every machine.
 */
final class Effort {

  private long left;

  Effort(long steps) {
    this.left = steps;
  }

  void spend(long steps) {
    left -= steps;
  }

  boolean isSpent() {
    return left <= 0;
  }
}
