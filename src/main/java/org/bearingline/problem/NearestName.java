package org.bearingline.problem;

import java.util.Collection;
import java.util.Optional;

/** Finds the name a user probably meant. */
public final class NearestName {

  private NearestName() {}

  /**
   * The known name with the fewest edits (Levenshtein distance) from the given one, if no more than
   * a third of its letters, or two, are wrong.
   */
  public static Optional<String> among(Collection<String> known, String given) {
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String name : known) {
      int edits = edits(name, given);
      if (edits < least) {
        least = edits;
        best = name;
      }
    }
    return least <= Math.max(2, given.length() / 3) ? Optional.ofNullable(best) : Optional.empty();
  }

  /** A tail for a sentence: {@code "; did you mean rise?"}, or nothing. */
  public static String hint(Collection<String> known, String given) {
    return among(known, given).map(name -> "; did you mean " + name + "?").orElse("");
  }

  private static int edits(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
