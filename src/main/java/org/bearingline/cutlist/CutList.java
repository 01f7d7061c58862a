package org.bearingline.cutlist;

import java.util.List;
import org.bearingline.length.Units;

/**
 * Every blank of a job.
 *
 * @param parts in the job's order
 * @param templates plates, in the job's order
 * @param partAmount what the parts' blanks come to
 * @param templateAmount what the plates come to
 * @param sentences for the maker
 */
public record CutList(
    List<Blank> parts,
    List<Blank> templates,
    Amount partAmount,
    Amount templateAmount,
    List<String> sentences) {

  public CutList {
    parts = List.copyOf(parts);
    templates = List.copyOf(templates);
    sentences = List.copyOf(sentences);
  }

  public static CutList of(List<Ordered> ordered, Units units) {
    throw new UnsupportedOperationException("being written");
  }

  /** Parts, then templates. */
  public List<Blank> all() {
    List<Blank> all = new java.util.ArrayList<>(parts);
    all.addAll(templates);
    return all;
  }
}
