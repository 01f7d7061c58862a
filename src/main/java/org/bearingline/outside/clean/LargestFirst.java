package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;

/**
 * The order in which the outlines of a drawing are numbered: from the largest area down, those of
 * one area from left to right, and from below where they begin alike.
 */
final class LargestFirst {

  /** Share of an area, or of a box's size, that only computing makes. */
  private static final double ALIKE = 1e-6;

  private LargestFirst() {}

  static List<Outline> of(Collection<Outline> outlines) {
    return sorted(
        List.copyOf(outlines),
        one -> -one.area(),
        Outline::area,
        alike -> sorted(alike, one -> one.bounds().minX(), LargestFirst::size, LargestFirst::up));
  }

  private static List<Outline> up(List<Outline> alike) {
    return alike.stream().sorted(Comparator.comparingDouble(one -> one.bounds().minY())).toList();
  }

  private static double size(Outline one) {
    Bounds box = one.bounds();
    return Math.max(box.width(), box.height());
  }

  // Runs of one value, so that what differs by rounding alone is left to the next order.
  private static List<Outline> sorted(
      List<Outline> all,
      ToDoubleFunction<Outline> value,
      ToDoubleFunction<Outline> scale,
      UnaryOperator<List<Outline>> next) {
    List<Outline> by = all.stream().sorted(Comparator.comparingDouble(value)).toList();
    List<Outline> out = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= by.size(); i++) {
      Outline first = by.get(from);
      if (i == by.size()
          || value.applyAsDouble(by.get(i)) - value.applyAsDouble(first)
              > ALIKE * scale.applyAsDouble(first)) {
        out.addAll(next.apply(by.subList(from, i)));
        from = i;
      }
    }
    return out;
  }
}
