package org.bearingline.routing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.shape.ShapeLibrary;
import org.bearingline.wood.MoistureRange;
import org.bearingline.wood.SpeciesTable;

/** Frames, panels and tools for tests. */
final class Frames {

  static final double INCH = 25.4;

  /** 1-7/8 in on a 1-1/8 in bearing: 3/8 in deep, 1/4 in thick. */
  static final SlotCutter SLOT = slot(1.875 * INCH, 1.125 * INCH);

  private Frames() {}

  static SlotCutter slot(double cutter, double bearing) {
    return new SlotCutter(new Cutter(cutter), new Follower.Bearing(bearing), 0.25 * INCH);
  }

  /** A built-in shape, its measures given as name and length in turns. */
  static Part shape(String name, String... measures) {
    Map<String, String> settings = new LinkedHashMap<>();
    for (int i = 0; i < measures.length; i += 2) {
      settings.put(measures[i], measures[i + 1]);
    }
    return ShapeLibrary.builtIn().find(name).measured(settings, Optional.empty()).part();
  }

  static FrameOpening plain(double width, double height) {
    return FrameOpening.of(width, height, Optional.empty(), Optional.empty(), Units.MM);
  }

  static FrameOpening under(double width, double height, Part topRail) {
    return FrameOpening.of(width, height, Optional.of(topRail), Optional.empty(), Units.MM);
  }

  static PanelSettings solid(String wood, double moisture, double driest, double dampest) {
    return PanelSettings.usual(
        SLOT,
        SpeciesTable.named(wood),
        0.75 * INCH,
        moisture,
        new MoistureRange(driest, dampest),
        Units.MM);
  }

  static PanelSettings plywood() {
    return PanelSettings.usual(
        SLOT, SpeciesTable.named("plywood"), 6, 9, new MoistureRange(6, 12), Units.MM);
  }
}
