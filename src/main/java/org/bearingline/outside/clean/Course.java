package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.StrokePiece;

/**
 * A chain of strokes as samples of the drawn line, in flat arrays: a drawing may have a million.
 * Step i runs from sample i to the next; in a closed course the last sample stands where the first
 * does. Not safe for use by several threads.
 */
final class Course {

  /** How the line runs between two samples. */
  enum Step {
    /** Straight, as drawn. */
    CHORD,
    /** Along a curve of which the samples are close enough. */
    CURVE,
    /** Along an arc as drawn. */
    ARC
  }

  double[] x = new double[64];
  double[] y = new double[64];
  Step[] step = new Step[64];

  /** The primitive as drawn over an arc's steps, and of anchored courses over their ends. */
  Primitive[] drawn = new Primitive[64];

  /** Corners that the drawing itself has: the direction jumps there. */
  boolean[] corner = new boolean[64];

  /** Chords that stand for a curve: their rise belongs to the drawing, not to the fit. */
  boolean[] bent = new boolean[64];

  /** Radians by which pieces with known directions turn where they meet here. */
  double[] joint = new double[64];

  /** Which of {@link #elements} a step belongs to. */
  int[] element = new int[64];

  /** The parameter at each sample of the free curve on which it lies; 0 elsewhere. */
  double[] parameter = new double[64];

  /** The stroke pieces that the course is made of; a straight over a gap is one too. */
  List<StrokePiece> elements = new ArrayList<>();

  boolean closed;

  /** Whether what is drawn over its first and its last step stays exactly there. */
  boolean anchored;

  int size;

  void add(double px, double py, Step kind, Primitive primitive) {
    if (size == x.length) {
      int room = 2 * size;
      x = Arrays.copyOf(x, room);
      y = Arrays.copyOf(y, room);
      step = Arrays.copyOf(step, room);
      drawn = Arrays.copyOf(drawn, room);
      corner = Arrays.copyOf(corner, room);
      bent = Arrays.copyOf(bent, room);
      joint = Arrays.copyOf(joint, room);
      element = Arrays.copyOf(element, room);
      parameter = Arrays.copyOf(parameter, room);
    }
    x[size] = px;
    y[size] = py;
    step[size] = kind;
    drawn[size] = primitive;
    size++;
  }

  Point at(int i) {
    return new Point(x[i], y[i]);
  }

  /** Whether a step is one of those that stay exactly as they are drawn. */
  boolean isAnchor(int step) {
    return anchored && drawn[step] != null && (step == 0 || step == size - 2);
  }

  double length(int i) {
    return Math.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
  }

  /** Radians turned at sample i, with the step before it and the step after it. */
  double turn(int before, int i, int after) {
    double ax = x[i] - x[before];
    double ay = y[i] - y[before];
    double bx = x[after] - x[i];
    double by = y[after] - y[i];
    return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }

  int before(int i) {
    return i > 0 ? i - 1 : size - 2;
  }

  int after(int i) {
    return i + 1 < size ? i + 1 : 1;
  }

  /** The same closed course from sample {@code first} round to it again. */
  Course from(int first) {
    if (first == 0) {
      return this;
    }
    Course turned = new Course();
    turned.closed = true;
    turned.elements = elements;
    int n = size - 1;
    for (int i = 0; i <= n; i++) {
      int k = (first + i) % n;
      turned.add(x[k], y[k], step[k], drawn[k]);
      turned.corner[i] = corner[k];
      turned.bent[i] = bent[k];
      turned.joint[i] = joint[k];
      turned.element[i] = element[k];
      turned.parameter[i] = parameter[k];
    }
    return turned;
  }
}
