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

  /** Tolerances of length from which a single chord is a line that was meant. */
  private static final double LONG = 200;

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

  /** Whether a stretch starts or ends with such a step. */
  boolean isAnchored(Stretch s) {
    return s.from() == 0 && isAnchor(0) || s.to() == size - 1 && isAnchor(size - 2);
  }

  /** Whether a step is a straight as drawn, and not the chord of a curve. */
  boolean isFlat(int step) {
    return this.step[step] == Step.CHORD && !bent[step];
  }

  /** Whether a step is a chord so long that it was meant as a line. */
  boolean isMeantLine(int step, double tolerance) {
    return this.step[step] == Step.CHORD && length(step) > LONG * tolerance;
  }

  /** The stroke piece that a step belongs to. */
  StrokePiece pieceAt(int step) {
    return elements.get(element[step]);
  }

  /** One past the steps, up to {@code to}, of the stroke piece that a step belongs to. */
  int pieceEnd(int step, int to) {
    int next = step + 1;
    while (next < to && element[next] == element[step]) {
      next++;
    }
    return next;
  }

  double length(int i) {
    return Math.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
  }

  /** mm from the first sample of a stretch straight to its last. */
  double chord(Stretch s) {
    return Math.hypot(x[s.to()] - x[s.from()], y[s.to()] - y[s.from()]);
  }

  /** Signed mm from a carrier to the middle of a step. */
  double middleOff(Carrier carrier, int step) {
    return carrier.off((x[step] + x[step + 1]) / 2, (y[step] + y[step + 1]) / 2);
  }

  /** mm that a step goes along a carrier; less than nothing where it runs back. */
  double along(Carrier carrier, int step) {
    double dx = x[step + 1] - x[step];
    double dy = y[step + 1] - y[step];
    return carrier.along((x[step] + x[step + 1]) / 2, (y[step] + y[step + 1]) / 2, dx, dy);
  }

  /**
   * The same from one sample to another: the steps of a noisy drawing zigzag and are longer than
   * their way.
   */
  double along(Carrier carrier, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += along(carrier, i);
    }
    return sum;
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
