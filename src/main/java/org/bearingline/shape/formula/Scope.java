package org.bearingline.shape.formula;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.length.Units;

/**
 * What a formula may name.
 *
 * @param names each name with its dimension
 * @param words the words of all choices; a word's value is its place in this list
 * @param bareUnits the units of a bare number that stands where a length is wanted; empty where it
 *     is refused
 */
public record Scope(Map<String, Dimension> names, List<String> words, Optional<Units> bareUnits) {

  public Scope {
    names = new LinkedHashMap<>(names);
    words = List.copyOf(words);
  }

  public Scope with(String name, Dimension dimension) {
    Map<String, Dimension> more = new LinkedHashMap<>(names);
    more.put(name, dimension);
    return new Scope(more, words, bareUnits);
  }

  /** Millimetres of 1 in {@code units}. */
  static double millimetres(Units units) {
    return units == Units.INCH ? 25.4 : 1;
  }
}
