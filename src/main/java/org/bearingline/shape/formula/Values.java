package org.bearingline.shape.formula;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The values that names stand for: mm, degrees, plain numbers, 1 or 0 for a truth, the number of a
 * word.
 */
public final class Values {

  private final Map<String, Double> byName;

  private Values(Map<String, Double> byName) {
    this.byName = byName;
  }

  public static Values of(Map<String, Double> byName) {
    return new Values(new LinkedHashMap<>(byName));
  }

  /** These values and one more, which hides an earlier one of its name. */
  public Values with(String name, double value) {
    Values more = of(byName);
    more.byName.put(name, value);
    return more;
  }

  public double get(String name) {
    Double value = byName.get(name);
    if (value == null) {
      throw new IllegalStateException("no value for " + name);
    }
    return value;
  }
}
