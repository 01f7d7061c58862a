package org.bearingline.outside.clean;

/** Tells the corners of a polygon from the vertices of a line that was meant to be smooth. */
final class ChordCorners {

  private ChordCorners() {}

  /**
   * Marks a vertex between chords as a corner where no smooth line could pass it within the
   * tolerance; chords that stand for a curve have none.
   *
   * @param sharp radians from which a joint may be a corner
   */
  static void mark(Course course, double sharp, double tolerance) {
    int n = course.size;
    for (int i = course.closed ? 0 : 1; i < n - 1; i++) {
      int before = course.before(i);
      if (course.step[before] == Course.Step.CURVE && course.step[i] == Course.Step.CURVE) {
        continue;
      }
      if (course.bent[before] && course.bent[i]) {
        course.corner[i] = false;
        continue;
      }
      double turn = Math.abs(course.turn(before, i, course.after(i)));
      double shorter = Math.min(course.length(before), course.length(i));
      // By so much the arc misses the vertex that takes half of the shorter chord.
      if (turn > sharp && shorter / 2 * Math.tan(turn / 4) > tolerance) {
        course.corner[i] = true;
      }
    }
    if (course.closed) {
      course.corner[n - 1] = course.corner[0];
    }
  }
}
