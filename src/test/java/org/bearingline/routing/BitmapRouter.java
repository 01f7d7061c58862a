package org.bearingline.routing;

import java.util.Arrays;
import java.util.function.Predicate;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;

/**
 * Routes on a grid of dots, with nothing of the program but the question whether a point lies
 * inside an outline: a dot may be the centre of follower and cutter where no dot of the template is
 * nearer than the follower's radius; the cutter takes every dot nearer than its radius to such a
 * centre. Distances are exact between dots (squared distance transform of Felzenszwalb and
 * Huttenlocher, 2012); what is uncertain is a strip of about one pitch along the edges.
 */
final class BitmapRouter {

  private final double pitch;
  private final Bounds box;
  private final int columns;
  private final int rows;

  BitmapRouter(Bounds box, double pitch) {
    this.box = box;
    this.pitch = pitch;
    this.columns = (int) Math.ceil(box.width() / pitch);
    this.rows = (int) Math.ceil(box.height() / pitch);
  }

  boolean[] dots(Outline outline) {
    return dotsWhere(outline::contains);
  }

  boolean[] dotsWhere(Predicate<Point> isIn) {
    boolean[] dots = new boolean[columns * rows];
    for (int i = 0; i < dots.length; i++) {
      dots[i] = isIn.test(at(i));
    }
    return dots;
  }

  /** The place of a dot of the arrays. */
  Point at(int index) {
    return at(index % columns, index / columns);
  }

  Point at(int column, int row) {
    return new Point(box.minX() + (column + 0.5) * pitch, box.minY() + (row + 0.5) * pitch);
  }

  /** What stays of a board when follower and cutter have gone round the template. */
  boolean[] left(boolean[] template, double follower, double cutter) {
    boolean[] centres = not(near(template, follower));
    return not(near(centres, cutter));
  }

  /** Dots no farther than {@code radius} from a dot that is set. */
  boolean[] near(boolean[] set, double radius) {
    double[] squared = squaredDistances(set);
    double limit = radius / pitch * (radius / pitch);
    boolean[] near = new boolean[set.length];
    for (int i = 0; i < set.length; i++) {
      near[i] = squared[i] <= limit;
    }
    return near;
  }

  /** mm from every dot to the nearest dot that is set. */
  double[] distances(boolean[] set) {
    double[] distances = squaredDistances(set);
    for (int i = 0; i < distances.length; i++) {
      distances[i] = Math.sqrt(distances[i]) * pitch;
    }
    return distances;
  }

  static boolean[] not(boolean[] set) {
    boolean[] not = new boolean[set.length];
    for (int i = 0; i < set.length; i++) {
      not[i] = !set[i];
    }
    return not;
  }

  /** Area in mm² of dots set in {@code a} but not in {@code b}, counted where {@code where} is. */
  double areaWithout(boolean[] a, boolean[] b, Outline where) {
    int count = 0;
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int i = row * columns + column;
        if (a[i] && !b[i] && where.contains(at(column, row))) {
          count++;
        }
      }
    }
    return count * pitch * pitch;
  }

  private double[] squaredDistances(boolean[] set) {
    double far = 1e12;
    double[] squared = new double[set.length];
    for (int i = 0; i < set.length; i++) {
      squared[i] = set[i] ? 0 : far;
    }
    double[] line = new double[Math.max(columns, rows)];
    for (int column = 0; column < columns; column++) {
      for (int row = 0; row < rows; row++) {
        line[row] = squared[row * columns + column];
      }
      double[] done = alongLine(line, rows);
      for (int row = 0; row < rows; row++) {
        squared[row * columns + column] = done[row];
      }
    }
    for (int row = 0; row < rows; row++) {
      System.arraycopy(squared, row * columns, line, 0, columns);
      System.arraycopy(alongLine(line, columns), 0, squared, row * columns, columns);
    }
    return squared;
  }

  /** min over j of f(j) + (i − j)²: the lower envelope of parabolas. */
  private static double[] alongLine(double[] f, int n) {
    int[] apex = new int[n];
    double[] from = new double[n + 1];
    int k = 0;
    from[0] = Double.NEGATIVE_INFINITY;
    from[1] = Double.POSITIVE_INFINITY;
    for (int q = 1; q < n; q++) {
      double s = meet(f, apex[k], q);
      while (s <= from[k]) {
        k--;
        s = meet(f, apex[k], q);
      }
      k++;
      apex[k] = q;
      from[k] = s;
      from[k + 1] = Double.POSITIVE_INFINITY;
    }
    double[] done = new double[n];
    k = 0;
    for (int q = 0; q < n; q++) {
      while (from[k + 1] < q) {
        k++;
      }
      double away = q - apex[k];
      done[q] = away * away + f[apex[k]];
    }
    return Arrays.copyOf(done, n);
  }

  private static double meet(double[] f, int p, int q) {
    return ((f[q] + (double) q * q) - (f[p] + (double) p * p)) / (2.0 * q - 2.0 * p);
  }
}
