package org.bearingline.cutlist;

/**
 * Numbers every set of pieces, where pieces of one size are alike: the number is written in digits,
 * one for each kind, its base one more than the kind's count. A set within another has no larger
 * number.
 */
final class PieceSets {

  private final int[] counts;
  private final int[] place;
  private final int size;

  /** Fails where there are more than the given number of sets. */
  private PieceSets(int[] counts, int size) {
    this.counts = counts;
    this.size = size;
    this.place = new int[counts.length];
    int value = 1;
    for (int kind = 0; kind < counts.length; kind++) {
      place[kind] = value;
      value *= counts[kind] + 1;
    }
  }

  /** The numbering, or null where there are more sets than {@code most}. */
  static PieceSets of(CuttingTask task, int most) {
    int[] counts = new int[task.kinds().size()];
    long size = 1;
    for (int kind = 0; kind < counts.length; kind++) {
      counts[kind] = task.kinds().get(kind).count();
      size *= counts[kind] + 1;
      if (size > most) {
        return null;
      }
    }
    return new PieceSets(counts, (int) size);
  }

  /** How many sets there are, the empty one included; the full one has the last number. */
  int size() {
    return size;
  }

  int single(int kind) {
    return place[kind];
  }

  int count(int set, int kind) {
    return set / place[kind] % (counts[kind] + 1);
  }

  boolean isWithin(int small, int large) {
    if (small > large) {
      return false;
    }
    for (int kind = 0; kind < counts.length; kind++) {
      if (count(small, kind) > count(large, kind)) {
        return false;
      }
    }
    return true;
  }
}
