package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
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

  /** The blanks of these parts and of their templates. */
  public static CutList of(List<Ordered> ordered, Units units) {
    return of(ordered, List.of(), units);
  }

  /** The same with plates that serve several parts. */
  public static CutList of(List<Ordered> ordered, List<SharedPlate> shared, Units units) {
    List<Blank> parts = new ArrayList<>();
    List<Blank> templates = new ArrayList<>();
    for (Ordered one : ordered) {
      parts.add(BlankSizes.ofPart(one, units));
      templates.addAll(BlankSizes.ofTemplates(one, units));
    }
    // Parts that share a plate have their templates from one stock, where all say the same.
    List<OptionalDouble> stock =
        ordered.stream().map(Ordered::templateThickness).distinct().toList();
    OptionalDouble thickness = stock.size() == 1 ? stock.get(0) : OptionalDouble.empty();
    for (SharedPlate plate : shared) {
      templates.add(BlankSizes.ofPlate(plate, units, thickness));
    }
    Amount partAmount = Amount.of(parts);
    Amount templateAmount = Amount.of(templates);
    return new CutList(
        parts,
        templates,
        partAmount,
        templateAmount,
        AmountWords.sentences(partAmount, templateAmount, units));
  }

  /** Parts, then templates. */
  public List<Blank> all() {
    List<Blank> all = new ArrayList<>(parts);
    all.addAll(templates);
    return all;
  }
}
