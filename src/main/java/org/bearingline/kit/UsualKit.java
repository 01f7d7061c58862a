package org.bearingline.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;

/** Reads the kit that comes with the program from its tables. */
final class UsualKit {

  private UsualKit() {}

  static Kit read() {
    List<Bit> bits = new ArrayList<>();
    for (FactRow row : FactTable.read(Kit.class, "bits.tsv").rows()) {
      bits.add(
          new Bit(
              new Cutter(mm(row, "diameter")),
              OptionalDouble.of(mm(row, "cutting-length")),
              OptionalDouble.of(mm(row, "shank")),
              Bit.BearingSeat.valueOf(row.text("bearing").toUpperCase(Locale.ROOT))));
    }
    List<Follower.Bearing> bearings = new ArrayList<>();
    for (FactRow row : FactTable.read(Kit.class, "bearings.tsv").rows()) {
      bearings.add(new Follower.Bearing(mm(row, "diameter")));
    }
    List<Follower.Collar> collars = new ArrayList<>();
    for (FactRow row : FactTable.read(Kit.class, "collars.tsv").rows()) {
      collars.add(new Follower.Collar(mm(row, "outside"), OptionalDouble.of(mm(row, "inside"))));
    }
    List<SawBlade> blades = new ArrayList<>();
    for (BladeTable.Row row : BladeTable.shipped().rows()) {
      if (row.usual()) {
        blades.add(new SawBlade(row.width(), row.smallestRadius()));
      }
    }
    return new Kit("the usual kit", bits, bearings, collars, blades);
  }

  private static double mm(FactRow row, String column) {
    return Length.parse(row.text(column));
  }
}
