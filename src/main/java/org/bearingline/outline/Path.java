package org.bearingline.outline;

import java.util.List;

/**
 * An open or closed chain of primitives, such as a saw line or a stretch of routed edge.
 *
 * @param primitives at least one, each starting where the one before ends
 */
public record Path(List<Primitive> primitives) {

  public Path {
    primitives = List.copyOf(primitives);
    if (primitives.isEmpty()) {
      throw new IllegalArgumentException("a path needs at least one primitive");
    }
  }

  public static Path of(Primitive... primitives) {
    return new Path(List.of(primitives));
  }

  public static Path of(Loop loop) {
    return new Path(loop.primitives());
  }

  public Point start() {
    return primitives.get(0).start();
  }

  public Point end() {
    return primitives.get(primitives.size() - 1).end();
  }

  public boolean isClosed() {
    return start().equals(end());
  }

  public double length() {
    return primitives.stream().mapToDouble(Primitive::length).sum();
  }

  public Bounds bounds() {
    return primitives.stream().map(Primitive::bounds).reduce(Bounds::union).orElseThrow();
  }

  public Path transformed(Similarity similarity) {
    return new Path(primitives.stream().map(p -> p.transformed(similarity)).toList());
  }
}
