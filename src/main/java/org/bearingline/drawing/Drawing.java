package org.bearingline.drawing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.bearingline.outline.Bounds;

/**
 * A part's drawing, full size in millimetres.
 *
 * @param title the part's name and measures in a few words
 * @param layers in the order of {@link LayerName}, each name at most once
 * @param enlargement how many times larger than usual lettering, arrow heads, line widths and
 *     dashes are drawn, more than 0: a full-size drawing has 1; one that will be seen reduced or
 *     magnified, such as a preview, has its own, so that it stays legible
 */
public record Drawing(String title, List<Layer> layers, double enlargement) {

  /** Usual height of lettering, as the em of the font, in mm. */
  public static final double TEXT_HEIGHT = 4;

  /** Share of a picture's longer side at which lettering reads well. */
  private static final double LEGIBLE_SHARE = 1 / 80.0;

  public Drawing {
    Objects.requireNonNull(title);
    if (!(enlargement > 0) || !Double.isFinite(enlargement)) {
      throw new IllegalArgumentException("an enlargement is more than 0, got " + enlargement);
    }
    layers = List.copyOf(layers);
    for (int i = 1; i < layers.size(); i++) {
      if (layers.get(i - 1).name().compareTo(layers.get(i).name()) >= 0) {
        throw new IllegalArgumentException("layers come in the order of their names, each once");
      }
    }
  }

  /** A full-size drawing. */
  public Drawing(String title, List<Layer> layers) {
    this(title, layers, 1);
  }

  /**
   * The enlargement with which lettering reads well in a picture a hand or a screen wide that shows
   * the whole of {@code box}.
   */
  public static double enlargementFor(Bounds box) {
    return Math.max(box.width(), box.height()) * LEGIBLE_SHARE / TEXT_HEIGHT;
  }

  /** Height of this drawing's usual lettering in mm, enlarged. */
  public double textHeight() {
    return TEXT_HEIGHT * enlargement;
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
