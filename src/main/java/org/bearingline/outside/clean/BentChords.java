package org.bearingline.outside.clean;

/**
 * Tells chords that stand for a curve from the sides of a polygon. A drawing program that cuts a
 * curve into chords turns by small angles that change little from one corner to the next; four such
 * corners in a row are no chance.
 */
final class BentChords {

  private static final int LEAST = 4;

  /** Factor within which the bends of neighbouring corners count as alike. */
  private static final double ALIKE = 1.6;

  private BentChords() {}

  /**
   * @param most radians that a corner of such a row turns at most
   */
  static void mark(Course course, double most) {
    int n = course.size;
    if (n < LEAST + 2) {
      return;
    }
    double[] bend = new double[n];
    for (int i = 0; i < n; i++) {
      boolean inside = course.closed || i > 0 && i < n - 1;
      bend[i] = inside ? bend(course, i % (n - 1), most) : 0;
    }
    int first = 0;
    for (int i = 1; i <= n; i++) {
      if (i == n || !alike(bend[i - 1], bend[i])) {
        if (i - first >= LEAST && bend[first] != 0) {
          markRow(course, first, i - 1);
        }
        first = i;
      }
    }
  }

  /** mm by which the curve that bent chords stand for leaves them at most. */
  static double rise(Course course) {
    return rise(course, 0, course.size - 1);
  }

  /** The same from one sample to another. */
  static double rise(Course course, int from, int to) {
    double most = 0;
    for (int i = from; i < to; i++) {
      if (course.bent[i]) {
        double turn = i > 0 || course.closed ? turn(course, i) : 0;
        double next = i + 2 < course.size || course.closed ? turn(course, i + 1) : 0;
        most = Math.max(most, course.length(i) / 4 * Math.max(turn, next));
      }
    }
    return most;
  }

  private static double turn(Course course, int i) {
    int at = i == course.size - 1 ? 0 : i;
    return Math.abs(course.turn(course.before(at), at, course.after(at)));
  }

  // Radians per mm; 0 where the corner is no corner of a curve.
  private static double bend(Course course, int i, double most) {
    int before = course.before(i);
    int after = course.after(i);
    if (course.step[before] != Course.Step.CHORD || course.step[i] != Course.Step.CHORD) {
      return 0;
    }
    double turn = course.turn(before, i, after);
    if (Math.abs(turn) > most) {
      return 0;
    }
    return 2 * turn / (course.length(before) + course.length(i));
  }

  private static boolean alike(double a, double b) {
    return a * b > 0 && Math.abs(a) <= ALIKE * Math.abs(b) && Math.abs(b) <= ALIKE * Math.abs(a);
  }

  private static void markRow(Course course, int from, int to) {
    for (int i = from; i < to; i++) {
      course.bent[i] = true;
    }
    // The chord before the row, and the one after it, where they are no longer than their like.
    extend(course, from, -1);
    extend(course, to, 1);
  }

  private static void extend(Course course, int corner, int side) {
    int chord = side < 0 ? corner - 1 : corner;
    int like = side < 0 ? corner : corner - 1;
    if (chord < 0 || chord >= course.size - 1 || course.step[chord] != Course.Step.CHORD) {
      return;
    }
    if (course.length(chord) <= 1.05 * course.length(like)) {
      course.bent[chord] = true;
    }
  }
}
