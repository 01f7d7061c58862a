package org.bearingline.outside;

import java.util.Locale;
import org.bearingline.outline.Point;
import org.bearingline.problem.CutOff;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Counts what a reader makes of a file, so that none, however it is written, takes memory or time
 * without bound.
 */
public final class DrawingLimits {

  /** Largest file, in bytes, and largest content of a compressed one. */
  public static final long LARGEST_FILE = 200_000_000;

  /** Most points of a drawing: four times the million that a traced edge may have. */
  public static final int MOST_POINTS = 4_000_000;

  /** Most elements a drawing may show, copies counted as often as they appear. */
  public static final int MOST_ELEMENTS = 2_000_000;

  /** Most letters that may be read again in copies: twice those of the largest file. */
  public static final long MOST_LETTERS = 2 * LARGEST_FILE;

  /** Deepest nesting of groups, blocks and copies. */
  public static final int DEEPEST = 200;

  /** Farthest coordinate in units of the drawing, and in mm: past it a double has no 1e-6 left. */
  public static final double FARTHEST = 1e9;

  private int points;

  private int elements;

  private long letters;

  /** Counts points that are about to be made of what stands at {@code place}. */
  public void addPoints(int count, Place place) {
    if (count > MOST_POINTS - points) {
      throw new Problem(
          place,
          String.format(
              Locale.ROOT,
              "the drawing has more than %,d points; simplify it or take a part of it",
              MOST_POINTS));
    }
    points += count;
  }

  /**
   * Counts what is read of a copied element, each time that it is. What draws no line takes time,
   * too, and a copy of a thousand copies of it a million times as much.
   *
   * @param count letters, or other steps that take about as long
   */
  public void addLetters(long count, Place place) {
    if (count > MOST_LETTERS - letters) {
      throw new Problem(
          place,
          "the drawing repeats here what it has read already, more often than any part does; take"
              + " a part of it");
    }
    letters += count;
  }

  /** Counts one element shown; ends the work where nobody waits for it any more. */
  public void addElement(Place place) {
    CutOff.check();
    if (++elements > MOST_ELEMENTS) {
      throw new Problem(
          place,
          String.format(
              Locale.ROOT,
              "the drawing shows more than %,d elements, its copies counted; take a part of it",
              MOST_ELEMENTS));
    }
  }

  /** The point, where it lies on any bench. */
  public static Point near(Point p, Place place) {
    near(p.x(), place);
    near(p.y(), place);
    return p;
  }

  /** The map, where it stretches and moves no farther than a drawing reaches. */
  public static Affine near(Affine map, Place place) {
    if (!map.isWithin(FARTHEST)) {
      throw new Problem(
          place, "what is transformed or inserted here ends too far out to be a part; correct it");
    }
    return map;
  }

  /** The coordinate, where it is a finite number within {@link #FARTHEST}. */
  public static double near(double coordinate, Place place) {
    if (!(Math.abs(coordinate) <= FARTHEST)) {
      throw new Problem(
          place,
          Double.isFinite(coordinate)
              ? String.format(
                  Locale.ROOT,
                  "a coordinate of %.3g is too far out to be a part; move the drawing near its"
                      + " origin",
                  coordinate)
              : "a coordinate here is no number; correct the drawing");
    }
    return coordinate;
  }
}
