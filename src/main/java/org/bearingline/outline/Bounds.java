package org.bearingline.outline;

/**
 * An axis-parallel box, closed on all sides.
 *
 * @param minX mm
 * @param minY mm
 * @param maxX mm, not less than minX
 * @param maxY mm, not less than minY
 */
public record Bounds(double minX, double minY, double maxX, double maxY) {

  public Bounds {
    if (!(minX <= maxX && minY <= maxY)) {
      throw new IllegalArgumentException("bounds run from low to high");
    }
  }

  public static Bounds of(Point a, Point b) {
    return new Bounds(
        Math.min(a.x(), b.x()),
        Math.min(a.y(), b.y()),
        Math.max(a.x(), b.x()),
        Math.max(a.y(), b.y()));
  }

  public static Bounds of(Point p) {
    return new Bounds(p.x(), p.y(), p.x(), p.y());
  }

  public double width() {
    return maxX - minX;
  }

  public double height() {
    return maxY - minY;
  }

  public Point center() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }

  public Bounds union(Bounds other) {
    return new Bounds(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** The box grown by {@code margin} mm on each side; a negative margin must leave a box. */
  public Bounds grown(double margin) {
    return new Bounds(minX - margin, minY - margin, maxX + margin, maxY + margin);
  }

  public boolean contains(Point p) {
    return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
  }

  public boolean intersects(Bounds other) {
    return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
  }
}
