package org.bearingline.outside;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Counts what a reader leaves out, for {@link Sketch#ignored}. */
public final class Tally {

  /** More kinds than this nobody reads: a damaged file may hold thousands of strange words. */
  private static final int MOST_KINDS = 30;

  /** Words longer than this come from no program. */
  private static final int LONGEST = 60;

  private record Kind(String one, String many) implements Comparable<Kind> {
    @Override
    public int compareTo(Kind other) {
      int order = one.compareTo(other.one);
      return order != 0 ? order : many.compareTo(other.many);
    }
  }

  private final Map<Kind, Integer> counts = new TreeMap<>();

  private int further;

  /** One more of a kind that has a word for many, such as {@code text} and {@code texts}. */
  public void add(String one, String many) {
    add(one, many, 1);
  }

  public void add(String one, String many, int count) {
    Kind kind = new Kind(shortened(one), shortened(many));
    if (counts.containsKey(kind) || counts.size() < MOST_KINDS) {
      counts.merge(kind, count, Integer::sum);
    } else {
      further += count;
    }
  }

  /** One short phrase for each kind, by its first letters: {@code 1 filter}, {@code 3 texts}. */
  public List<String> phrases() {
    List<String> phrases = new ArrayList<>();
    counts.forEach(
        (kind, count) -> phrases.add(count + " " + (count == 1 ? kind.one() : kind.many())));
    if (further > 0) {
      phrases.add(further + " more of other kinds");
    }
    return List.copyOf(phrases);
  }

  private static String shortened(String words) {
    return words.length() <= LONGEST ? words : words.substring(0, LONGEST - 1) + "…";
  }
}
