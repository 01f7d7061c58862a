package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.SpeedTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.part.Part;

/**
 * The sentences of caution that concern a part, a bit and what it follows, the weightiest first.
 * They come from a table with their sources and defer to the tool makers' manuals.
 */
final class Cautions {

  private final FactTable sentences = FactTable.read(Cautions.class, "cautions.tsv");
  private final Practice practice = Practice.shipped();
  private final List<String> told = new ArrayList<>();

  private final Units units;

  private Cautions(Units units) {
    this.units = units;
  }

  static List<String> of(Part part, RoutingSettings settings, Kit kit) {
    Cautions cautions = new Cautions(settings.units());
    cautions.tool(settings.cutter().diameter());
    cautions.work(part, settings, kit);
    cautions.tell("feed");
    cautions.tell("fastening");
    cautions.tell("guards");
    cautions.tell("unplug");
    cautions.tell("manual");
    return cautions.told;
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
    Bounds box = part.contour().loop().bounds();
    if (Math.max(box.width(), box.height()) < practice.mm("small-piece")) {
      tell("small");
    }
    if (settings.allowance() > practice.mm("widest-allowance") + 1e-6) {
      tell("allowance", length(settings.allowance()));
    }
    if (settings.follower() instanceof Follower.Collar) {
      tell("collar-depth");
    } else if (settings.thickness().isPresent()) {
      shortBit(settings, kit);
    }
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
    for (FactRow row : sentences.rows()) {
      if (row.text("key").equals(key)) {
        told.add(String.format(Locale.ROOT, row.text("sentence"), (Object[]) figures));
        return;
      }
    }
    throw new IllegalStateException("cautions.tsv has no sentence " + key);
  }
}
