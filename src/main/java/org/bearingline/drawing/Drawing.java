package org.bearingline.drawing;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Bounds;

/**
 * A part's drawing, full size in millimetres.
 *
 * @param title the part's name and measures in a few words
 * @param layers in the order of {@link LayerName}, each name at most once
 */
public record Drawing(String title, List<Layer> layers) {

  public Drawing {
    layers = List.copyOf(layers);
    for (int i = 1; i < layers.size(); i++) {
      if (layers.get(i - 1).name().compareTo(layers.get(i).name()) >= 0) {
        throw new IllegalArgumentException("layers come in the order of their names, each once");
      }
    }
  }

  public Optional<Layer> layer(LayerName name) {
    return layers.stream().filter(layer -> layer.name() == name).findFirst();
  }

  /** A box round the geometry of all layers; fails on an empty drawing. */
  public Bounds bounds() {
    return layers.stream()
        .flatMap(layer -> layer.items().stream())
        .map(Item::bounds)
        .reduce(Bounds::union)
        .orElseThrow(() -> new IllegalStateException("an empty drawing has no bounds"));
  }
}
