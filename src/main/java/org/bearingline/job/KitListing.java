package org.bearingline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.SawBlade;
import org.bearingline.kit.SpeedTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** The tools of a kit, as words for tables. */
public final class KitListing {

  private final Kit kit;
  private final Units units;

  private KitListing(Kit kit, Units units) {
    this.kit = kit;
    this.units = units;
  }

  /** The kit in a file, or the usual one. */
  public static KitListing of(Optional<Path> file, Units units) {
    return new KitListing(file.map(Kit::read).orElseGet(Kit::usual), units);
  }

  public String name() {
    return kit.name();
  }

  /** Diameter, cutting length, shank, bearing, fastest speed. */
  public List<List<String>> bits() {
    List<List<String>> rows = new ArrayList<>();
    for (Bit bit : kit.bits()) {
      OptionalInt speed = SpeedTable.ceiling(bit.diameter());
      rows.add(
          List.of(
              Length.print(bit.diameter(), units),
              bit.cuttingLength().isPresent()
                  ? Length.print(bit.cuttingLength().getAsDouble(), units)
                  : "?",
              bit.shank().isPresent() ? Length.print(bit.shank().getAsDouble(), units) : "?",
              bit.bearing().name().toLowerCase(Locale.ROOT)
                  + said(", ", bit.bearingHeight(), " tall"),
              speed.isPresent() ? speed.getAsInt() + " rev/min" : "see the bit"));
    }
    return rows;
  }

  /** Kind, outside and inside diameter. */
  public List<List<String>> followers() {
    List<List<String>> rows = new ArrayList<>();
    for (Follower.Bearing bearing : kit.bearings()) {
      rows.add(List.of("bearing", Length.print(bearing.diameter(), units), ""));
    }
    for (Follower.Collar collar : kit.collars()) {
      rows.add(
          List.of(
              "collar",
              Length.print(collar.diameter(), units),
              collar.insideDiameter().isPresent()
                  ? Length.print(collar.insideDiameter().getAsDouble(), units)
                      + said(", tube ", collar.tube(), "")
                  : "?" + said(", tube ", collar.tube(), "")));
    }
    return rows;
  }

  private String said(String before, OptionalDouble mm, String after) {
    return mm.isPresent() ? before + Length.print(mm.getAsDouble(), units) + after : "";
  }

  /** Width and tightest curve. */
  public List<List<String>> blades() {
    List<List<String>> rows = new ArrayList<>();
    for (SawBlade blade : kit.blades()) {
      rows.add(
          List.of(
              Length.print(blade.width(), units),
              "R " + Length.print(blade.smallestRadius(), units)));
    }
    return rows;
  }

  /** Where the program's own figures come from: a row a table, each of its sources once. */
  public List<List<String>> sources() {
    List<List<String>> rows = new ArrayList<>();
    for (String table : List.of("bits", "bearings", "collars", "pairing", "speeds", "blades")) {
      rows.add(List.of(table, sources(Kit.class, table)));
    }
    rows.add(List.of("papers", sources(Paper.class, "papers")));
    return rows;
  }

  private static String sources(Class<?> owner, String table) {
    Set<String> sources = new LinkedHashSet<>();
    for (FactRow row : FactTable.read(owner, table + ".tsv").rows()) {
      Collections.addAll(sources, row.source().split("; "));
    }
    return String.join("; ", sources);
  }

  /** Name, width and height of every paper that has a name, each in the units it is made by. */
  public List<List<String>> papers() {
    List<List<String>> rows = new ArrayList<>();
    for (Paper paper : Paper.named()) {
      rows.add(
          List.of(
              paper.name(),
              size(paper.width()),
              paper.height().isPresent()
                  ? size(paper.height().getAsDouble())
                  : "cut off as needed"));
    }
    return rows;
  }

  /** Nobody calls a sheet of 210 mm one of 8-17/64 in. */
  private static String size(double mm) {
    return Length.print(mm, Length.isExact(mm, Units.INCH) ? Units.INCH : Units.MM);
  }
}
