package org.bearingline.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.SpeedTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.part.Cavity;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;

/**
 * The sentences of caution that concern a part, a bit and what it follows, the weightiest first:
 * the order of the table they come from, with their sources. They defer to the tool makers'
 * manuals.
 */
public final class Cautions {

  private final FactTable sentences = FactTable.read(Cautions.class, "cautions.tsv");
  private final Practice practice = Practice.shipped();
  private final List<String> told = new ArrayList<>();

  private final Units units;

  private Cautions(Units units) {
    this.units = units;
  }

  /** What holds for all work with a router. */
  public static List<String> always() {
    Cautions cautions = new Cautions(Units.INCH);
    cautions.tell("guards");
    cautions.tell("unplug");
    cautions.tell("manual");
    return cautions.told;
  }

  /** For a part that one bit works. */
  static List<String> of(Part part, RoutingSettings settings, Kit kit) {
    if (!isRouted(part)) {
      return sawn(settings.units());
    }
    Cautions cautions = new Cautions(settings.units());
    cautions.tool(settings.cutter().diameter());
    cautions.work(part, settings, kit);
    boolean openings = part.cavities().stream().anyMatch(c -> c.kind() == Cavity.Kind.THROUGH);
    boolean blind = part.cavities().stream().anyMatch(c -> c.kind() != Cavity.Kind.THROUGH);
    cautions.router(settings.station(), openings, blind);
    cautions.end();
    return cautions.told;
  }

  /** What guides a tool. */
  public enum Guide {
    TEMPLATE,
    /** The finished edge itself, where a fence may do at a router table. */
    STRAIGHT_EDGE,
    CURVED_EDGE
  }

  /** For a tool that runs along the finished edge, or along a template made for another tool. */
  public static List<String> of(
      Part part, Cutter cutter, Station station, Guide guide, Units units) {
    Cautions cautions = new Cautions(units);
    cautions.tool(cutter.diameter());
    cautions.size(part);
    if (guide == Guide.TEMPLATE) {
      cautions.router(station, false, false);
    } else if (station == Station.TABLE) {
      cautions.tell("feed-table");
      cautions.tell(guide == Guide.STRAIGHT_EDGE ? "fence-table" : "pin-table");
      cautions.tell("holding-table");
    } else {
      cautions.tell("feed");
      cautions.tell("holding");
    }
    cautions.end();
    return cautions.told;
  }

  /** For a part that is sawn or drilled, and never routed. */
  public static List<String> sawn(Units units) {
    Cautions cautions = new Cautions(units);
    cautions.tell("saw");
    cautions.tell("guards-saw");
    cautions.tell("manual");
    return cautions.told;
  }

  /** Cautions of several operations as one, each once, the weightiest first. */
  public static List<String> joined(List<List<String>> several) {
    Set<String> once = new LinkedHashSet<>();
    several.forEach(once::addAll);
    Cautions order = new Cautions(Units.INCH);
    // Where the same piece is fastened to a template too, that says how it is held.
    order.dropBeside("fastening", "holding", once);
    order.dropBeside("fastening-table", "holding-table", once);
    List<String> sorted = new ArrayList<>(once);
    sorted.sort(Comparator.comparingInt(order::rank));
    return sorted;
  }

  private void dropBeside(String stronger, String weaker, Set<String> all) {
    if (all.contains(sentence(stronger))) {
      all.remove(sentence(weaker));
    }
  }

  private String sentence(String key) {
    return sentences.rows().stream()
        .filter(row -> row.text("key").equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("cautions.tsv has no sentence " + key))
        .text("sentence");
  }

  /** Its row in the table; what comes from elsewhere speaks of this very work and stands first. */
  private int rank(String sentence) {
    List<FactRow> rows = sentences.rows();
    for (int i = 0; i < rows.size(); i++) {
      if (isMadeOf(rows.get(i).text("sentence"), sentence)) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isMadeOf(String row, String sentence) {
    int at = 0;
    String[] pieces = row.split("%s", -1);
    for (int i = 0; i < pieces.length; i++) {
      int found = sentence.indexOf(pieces[i], at);
      if (found < 0 || (i == 0 && found > 0)) {
        return false;
      }
      at = found + pieces[i].length();
    }
    return at == sentence.length();
  }

  private static boolean isRouted(Part part) {
    return !part.cavities().isEmpty() || part.contour().kinds().contains(EdgeKind.ROUTED);
  }

  private void tool(double diameter) {
    if (diameter > practice.mm("table-only-above") + 1e-6) {
      tell("table-only", length(diameter));
    }
    OptionalInt ceiling = SpeedTable.ceiling(diameter);
    if (ceiling.isPresent()) {
      String speed = String.format(Locale.ROOT, "%,d", ceiling.getAsInt());
      tell("speed", length(diameter), speed);
    } else {
      tell("speed-unknown", length(diameter));
    }
  }

  private void work(Part part, RoutingSettings settings, Kit kit) {
    size(part);
    if (settings.allowance() > practice.mm("widest-allowance") + 1e-6) {
      tell("allowance", length(settings.allowance()));
    }
    if (settings.follower() instanceof Follower.Collar) {
      tell("collar-depth");
    } else if (settings.thickness().isPresent()) {
      shortBit(settings, kit);
    }
  }

  private void size(Part part) {
    Bounds box = part.contour().loop().bounds();
    if (Math.max(box.width(), box.height()) < practice.mm("small-piece")) {
      tell("small");
    }
  }

  private void router(Station station, boolean openings, boolean blind) {
    if (station == Station.TABLE) {
      tell("feed-table");
      tell("pin-table");
      if (openings) {
        tell("opening-table");
      }
      if (blind) {
        tell("blind-table");
      }
      tell("fastening-table");
    } else {
      tell("feed");
      tell("fastening");
    }
  }

  private void end() {
    tell("guards");
    tell("unplug");
    tell("manual");
  }

  private void shortBit(RoutingSettings settings, Kit kit) {
    double thickness = settings.thickness().getAsDouble();
    double longest = 0;
    for (Bit bit : kit.bits()) {
      if (Math.abs(bit.diameter() - settings.cutter().diameter()) < 0.01) {
        longest = Math.max(longest, bit.cuttingLength().orElse(0));
      }
    }
    if (longest > 0 && longest < thickness) {
      tell("length", length(thickness), length(settings.cutter().diameter()), length(longest));
    }
  }

  private String length(double mm) {
    return Length.print(mm, units);
  }

  private void tell(String key, String... figures) {
    told.add(String.format(Locale.ROOT, sentence(key), (Object[]) figures));
  }
}
