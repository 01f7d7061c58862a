package org.bearingline.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.SawBlade;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** A kit as the fields of a kit file. */
final class KitTree {

  private KitTree() {}

  static Map<String, Object> of(Kit kit) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("name", kit.name());
    tree.put("bits", kit.bits().stream().map(KitTree::bit).toList());
    tree.put("bearings", kit.bearings().stream().map(one -> written(one.diameter())).toList());
    tree.put("collars", kit.collars().stream().map(KitTree::collar).toList());
    tree.put("blades", kit.blades().stream().map(KitTree::blade).toList());
    return tree;
  }

  private static Map<String, String> bit(Bit bit) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("diameter", written(bit.diameter()));
    put(fields, "cutting-length", bit.cuttingLength());
    put(fields, "shank", bit.shank());
    fields.put("bearing", bit.bearing().name().toLowerCase(Locale.ROOT));
    return fields;
  }

  private static Map<String, String> collar(Follower.Collar collar) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("outside", written(collar.diameter()));
    put(fields, "inside", collar.insideDiameter());
    return fields;
  }

  private static Map<String, String> blade(SawBlade blade) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("width", written(blade.width()));
    fields.put("radius", written(blade.smallestRadius()));
    return fields;
  }

  private static void put(Map<String, String> fields, String name, OptionalDouble mm) {
    if (mm.isPresent()) {
      fields.put(name, written(mm.getAsDouble()));
    }
  }

  /** A length that is read again as the same: in inches where they are round, else in mm. */
  static String written(double mm) {
    for (Units units : List.of(Units.INCH, Units.MM)) {
      String printed = Length.print(mm, units);
      if (!printed.startsWith("≈")) {
        return printed.replace(" ", "");
      }
    }
    return java.math.BigDecimal.valueOf(mm).toPlainString() + "mm";
  }
}
