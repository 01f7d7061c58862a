package org.bearingline.outline;

import java.util.ArrayList;
import java.util.List;

/**
 * One connected piece of the plane: what lies inside an outer loop and outside its openings. The
 * wood is on the left of every loop's direction of travel.
 *
 * @param outer counter-clockwise
 * @param openings clockwise, inside the outer loop, apart from each other
 */
public record Outline(Loop outer, List<Loop> openings) {

  /** Turns each loop to its sense; nesting and crossing are checked in the topology room. */
  public Outline {
    outer = outer.counterClockwise();
    openings = openings.stream().map(Loop::clockwise).toList();
  }

  public static Outline of(Loop outer, Loop... openings) {
    return new Outline(outer, List.of(openings));
  }

  /** The outer loop first, then the openings. */
  public List<Loop> loops() {
    List<Loop> all = new ArrayList<>(openings.size() + 1);
    all.add(outer);
    all.addAll(openings);
    return all;
  }

  /** How many primitives all loops hold together. */
  public int size() {
    int sum = outer.size();
    for (Loop opening : openings) {
      sum += opening.size();
    }
    return sum;
  }

  /** Area in mm², openings taken off. */
  public double area() {
    double sum = outer.signedArea();
    for (Loop opening : openings) {
      sum += opening.signedArea();
    }
    return sum;
  }

  /** Length of all edges in mm. */
  public double length() {
    double sum = outer.length();
    for (Loop opening : openings) {
      sum += opening.length();
    }
    return sum;
  }

  public Bounds bounds() {
    return outer.bounds();
  }

  public boolean contains(Point p) {
    if (!outer.contains(p)) {
      return false;
    }
    for (Loop opening : openings) {
      if (opening.contains(p)) {
        return false;
      }
    }
    return true;
  }

  /** Distance in mm from {@code p} to the nearest edge, whichever side it lies on. */
  public double distanceTo(Point p) {
    double least = outer.distanceTo(p);
    for (Loop opening : openings) {
      least = Math.min(least, opening.distanceTo(p));
    }
    return least;
  }

  public Outline transformed(Similarity similarity) {
    return new Outline(
        outer.transformed(similarity),
        openings.stream().map(loop -> loop.transformed(similarity)).toList());
  }
}
