package org.bearingline.drawing;

import java.util.List;
import java.util.Objects;

/**
 * A named layer.
 *
 * @param name which one
 * @param role what it asks of the maker
 * @param title a few words for a person, such as "template edge: work to this line"
 * @param items in drawing order
 */
public record Layer(LayerName name, Role role, String title, List<Item> items) {

  public Layer {
    Objects.requireNonNull(name);
    Objects.requireNonNull(role);
    Objects.requireNonNull(title);
    items = List.copyOf(items);
  }
}
