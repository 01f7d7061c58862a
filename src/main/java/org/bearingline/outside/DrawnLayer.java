package org.bearingline.outside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A layer of a drawing on which lines can be seen.
 *
 * @param name as its author wrote it; asked for by this name
 * @param shapes how many figures lie on it, 1 or more
 */
public record DrawnLayer(String name, int shapes) {

  public DrawnLayer {
    Objects.requireNonNull(name);
    if (shapes < 1) {
      throw new IllegalArgumentException("a layer with lines has at least one figure");
    }
  }

  /** Counts the figures of layers, in the order in which they are met. */
  public static final class Count {
    private final Map<String, Integer> shapes = new LinkedHashMap<>();

    public void add(String name) {
      shapes.merge(name, 1, Integer::sum);
    }

    public List<DrawnLayer> layers() {
      List<DrawnLayer> layers = new ArrayList<>();
      shapes.forEach((name, count) -> layers.add(new DrawnLayer(name, count)));
      return layers;
    }
  }
}
