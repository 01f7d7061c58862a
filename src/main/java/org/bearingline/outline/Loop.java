package org.bearingline.outline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A closed chain of primitives, each starting to the last bit where the one before ends.
 * Self-crossing is not checked here; that is a matter of topology.
 *
 * @param primitives at least one; a single one must be a full circle
 */
public record Loop(List<Primitive> primitives) {

  /**
   * Ends nearer than this share of the loop's size are welded: far above the rounding of a double,
   * far below what a drawing means to say.
   */
  public static final double JOIN_TOLERANCE = 1e-9;

  /** Fails where the chain is empty, open, or broken by more than the joining tolerance. */
  public Loop {
    primitives = welded(List.copyOf(primitives));
  }

  public static Loop of(Primitive... primitives) {
    return new Loop(List.of(primitives));
  }

  /** The closed polygon through the given corners. */
  public static Loop polygon(List<Point> corners) {
    List<Primitive> lines = new ArrayList<>(corners.size());
    for (int i = 0; i < corners.size(); i++) {
      lines.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Loop(lines);
  }

  /** A counter-clockwise rectangle with its low corner first. */
  public static Loop rectangle(Bounds box) {
    return polygon(
        List.of(
            new Point(box.minX(), box.minY()),
            new Point(box.maxX(), box.minY()),
            new Point(box.maxX(), box.maxY()),
            new Point(box.minX(), box.maxY())));
  }

  private static List<Primitive> welded(List<Primitive> given) {
    if (given.isEmpty()) {
      throw new IllegalArgumentException("a loop needs at least one primitive");
    }
    double size = 1;
    for (Primitive p : given) {
      size = Math.max(size, Math.max(Math.abs(p.start().x()), Math.abs(p.start().y())));
    }
    double tolerance = JOIN_TOLERANCE * size;
    List<Primitive> whole = null;
    int n = given.size();
    for (int i = 0; i < n; i++) {
      Primitive here = given.get(i);
      Primitive before = given.get((i + n - 1) % n);
      if (here.start().equals(before.end())) {
        continue;
      }
      double gap = here.start().distanceTo(before.end());
      if (!(gap <= tolerance)) {
        throw new IllegalArgumentException(
            "the chain is broken by " + gap + " mm at " + here.start());
      }
      if (whole == null) {
        whole = new ArrayList<>(given);
      }
      whole.set(i, whole.get(i).withEnds(before.end(), whole.get(i).end()));
    }
    return whole == null ? given : Collections.unmodifiableList(whole);
  }

  public int size() {
    return primitives.size();
  }

  /** Area in mm², positive for a counter-clockwise loop. */
  public double signedArea() {
    // Taken about the first point: far from the origin the terms would cancel.
    Point about = primitives.get(0).start();
    double doubled = 0;
    for (Primitive p : primitives) {
      doubled += p.doubledSweptArea(about);
    }
    return doubled / 2;
  }

  public boolean isCounterClockwise() {
    return signedArea() > 0;
  }

  public double length() {
    double sum = 0;
    for (Primitive p : primitives) {
      sum += p.length();
    }
    return sum;
  }

  public Bounds bounds() {
    Bounds box = primitives.get(0).bounds();
    for (Primitive p : primitives) {
      box = box.union(p.bounds());
    }
    return box;
  }

  /** The same loop travelled the other way. */
  public Loop reversed() {
    List<Primitive> back = new ArrayList<>(primitives.size());
    for (int i = primitives.size() - 1; i >= 0; i--) {
      back.add(primitives.get(i).reversed());
    }
    return new Loop(back);
  }

  public Loop counterClockwise() {
    return isCounterClockwise() ? this : reversed();
  }

  public Loop clockwise() {
    return isCounterClockwise() ? reversed() : this;
  }

  /** The loop under a similarity; a mirror turns its sense round, the order of pieces stays. */
  public Loop transformed(Similarity similarity) {
    List<Primitive> moved = new ArrayList<>(primitives.size());
    for (Primitive p : primitives) {
      moved.add(p.transformed(similarity));
    }
    return new Loop(moved);
  }

  /** Distance in mm from {@code p} to the nearest point of the loop. */
  public double distanceTo(Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (Primitive piece : primitives) {
      least = Math.min(least, piece.distanceTo(p));
    }
    return least;
  }

  /** Whether {@code p} lies inside, by the even-odd rule; undecided within rounding of the edge. */
  public boolean contains(Point p) {
    int crossings = 0;
    for (Primitive piece : primitives) {
      crossings += RayCrossings.count(piece, p);
    }
    return crossings % 2 != 0;
  }
}
