package org.bearingline.outline;

import java.util.List;

/**
 * Any number of outlines that do not overlap: what an offset can leave of a part.
 *
 * @param pieces largest area first is not promised; may be empty
 */
public record Region(List<Outline> pieces) {

  public static final Region EMPTY = new Region(List.of());

  public Region {
    pieces = List.copyOf(pieces);
  }

  public static Region of(Outline... pieces) {
    return new Region(List.of(pieces));
  }

  public boolean isEmpty() {
    return pieces.isEmpty();
  }

  /** Area in mm². */
  public double area() {
    return pieces.stream().mapToDouble(Outline::area).sum();
  }

  public List<Loop> loops() {
    return pieces.stream().flatMap(piece -> piece.loops().stream()).toList();
  }

  /** How many primitives all loops hold together. */
  public int size() {
    return pieces.stream().mapToInt(Outline::size).sum();
  }

  public boolean contains(Point p) {
    return pieces.stream().anyMatch(piece -> piece.contains(p));
  }

  /** Distance in mm to the nearest edge; infinite where there is none. */
  public double distanceTo(Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (Outline piece : pieces) {
      least = Math.min(least, piece.distanceTo(p));
    }
    return least;
  }

  /** Bounds of all pieces; fails on an empty region. */
  public Bounds bounds() {
    return pieces.stream()
        .map(Outline::bounds)
        .reduce(Bounds::union)
        .orElseThrow(() -> new IllegalStateException("an empty region has no bounds"));
  }

  public Region transformed(Similarity similarity) {
    return new Region(pieces.stream().map(piece -> piece.transformed(similarity)).toList());
  }
}
