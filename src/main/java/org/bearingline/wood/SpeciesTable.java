package org.bearingline.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** The woods whose movement is known, from {@code species.tsv}. */
public final class SpeciesTable {

  private SpeciesTable() {}

  /** All of them, in the table's order. */
  public static List<Species> all() {
    List<Species> all = new ArrayList<>();
    for (FactRow row : FactTable.read(SpeciesTable.class, "species.tsv").rows()) {
      all.add(
          new Species(
              row.text("wood"),
              row.text("kind").equals("solid"),
              row.has("radial") ? row.number("radial") : 0,
              row.has("tangential") ? row.number("tangential") : 0,
              optional(row, "radial-shrinkage"),
              optional(row, "tangential-shrinkage"),
              row.source()));
    }
    return all;
  }

  private static OptionalDouble optional(FactRow row, String column) {
    return row.has(column) ? OptionalDouble.of(row.number(column)) : OptionalDouble.empty();
  }

  /** The wood of that name; fails with a {@link Problem} that names the nearest known one. */
  public static Species named(String name) {
    List<Species> all = all();
    String wanted = name.strip().toLowerCase(Locale.ROOT);
    for (Species species : all) {
      if (species.name().equals(wanted)) {
        return species;
      }
    }
    List<String> names = all.stream().map(Species::name).toList();
    throw new Problem(
        Place.field("wood"), "no movement is known of " + name.strip() + hint(names, wanted));
  }

  /** Makers leave out which cherry or oak it is, and the oaks move differently. */
  private static String hint(List<String> names, String wanted) {
    List<String> kinds = names.stream().filter(known -> known.contains(wanted)).toList();
    return wanted.isEmpty() || kinds.isEmpty()
        ? NearestName.hint(names, wanted)
        : "; write " + String.join(" or ", kinds);
  }
}
