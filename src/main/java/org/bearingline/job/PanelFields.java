package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.facts.FactTable;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Problem;
import org.bearingline.routing.Fibres;
import org.bearingline.routing.FrameMember;
import org.bearingline.routing.Groove;
import org.bearingline.routing.PanelSettings;
import org.bearingline.wood.Cut;
import org.bearingline.wood.MoistureRange;
import org.bearingline.wood.Species;
import org.bearingline.wood.SpeciesTable;
import org.bearingline.wood.Temperature;
import org.bearingline.yaml.YamlNode;

/**
 * What one panel's block says, with what is usual where it is silent.
 *
 * @param node the panel's block
 * @param job the whole file
 * @param units for sentences
 */
record PanelFields(YamlNode node, JobFile job, Units units) {

  /** A depth that differs by less than this, in mm, is the one asked for. */
  private static final double SAME_DEPTH = 0.05;

  double opening(String field) {
    YamlNode block = node.field("opening");
    block.allowOnly(Set.of("width", "height"));
    return length(block, field);
  }

  private double length(YamlNode block, String field) {
    YamlNode written = block.field(field);
    double mm = WishFields.length(block, field, job.units()).orElseThrow();
    if (!(mm > 0)) {
      throw written.problem("give a length above 0");
    }
    return mm;
  }

  private OptionalDouble from0(String field) {
    OptionalDouble mm = WishFields.length(node, field, job.units());
    if (mm.isPresent() && !(mm.getAsDouble() >= 0)) {
      throw node.field(field).problem("give a length of 0 or more");
    }
    return mm;
  }

  /** mm along the rails to the opening, where it is written. */
  OptionalDouble fromLeft() {
    return from0("from-left");
  }

  /** Whether the stiles' grooves run out at their ends, for haunched tenons. */
  boolean stilesThrough() {
    Optional<YamlNode> written = node.optional("stile-grooves");
    return switch (written.map(YamlNode::text).orElse("stopped")) {
      case "stopped" -> false;
      case "through" -> true;
      default ->
          throw written
              .get()
              .problem(
                  "“"
                      + written.get().text()
                      + "” is no way to groove a stile; write stopped or through");
    };
  }

  /** The slot cutter of the frame's groove; depth and bearing settle each other. */
  SlotCutter slot() {
    YamlNode block = node.field("groove");
    block.allowOnly(Set.of("bit", "bearing", "into", "width", "from-face"));
    double bit = length(block, "bit");
    boolean into = block.optional("into").isPresent();
    double bearing;
    if (block.optional("bearing").isPresent()) {
      bearing = length(block, "bearing");
    } else if (into) {
      bearing = bit - 2 * length(block, "into");
      if (!(bearing > 0)) {
        throw block
            .field("into")
            .problem("this cutter is too small to go in that deep; choose a larger one");
      }
    } else {
      throw block.problem("“bearing:” is missing here; or give “into:”, the groove's depth");
    }
    SlotCutter slot;
    try {
      slot = new SlotCutter(new Cutter(bit), new Follower.Bearing(bearing), length(block, "width"));
    } catch (Problem refused) {
      throw block.problem(refused.getMessage());
    }
    if (into && Math.abs(slot.depth() - length(block, "into")) > SAME_DEPTH) {
      throw block
          .field("into")
          .problem(
              "this cutter goes "
                  + Words.both(slot.depth())
                  + " into the edge its bearing rides; leave “into” out or change the bearing");
    }
    return slot;
  }

  /** mm from the rail's face to the groove: as written, else in the middle of its thickness. */
  double fromFace(SlotCutter slot, double railThickness) {
    YamlNode block = node.field("groove");
    if (slot.thickness() >= railThickness) {
      throw block.problem(
          "the slot is "
              + Length.print(slot.thickness(), units)
              + " wide and its rail only "
              + Length.print(railThickness, units)
              + " thick; take a thinner slot cutter");
    }
    OptionalDouble written = WishFields.length(block, "from-face", job.units());
    double mm = written.orElse((railThickness - slot.thickness()) / 2);
    if (!(mm >= 0) || mm + slot.thickness() >= railThickness) {
      throw block
          .field("from-face")
          .problem("the slot would run out of the rail's faces; keep it within the thickness");
    }
    return mm;
  }

  /** Refuses a bearing too large for a hollow that a smaller one would follow. */
  void checkFollows(FrameMember rail, SlotCutter slot) {
    Groove groove;
    try {
      groove = Groove.along(rail.part(), slot, rail.extent(), units);
    } catch (Problem refused) {
      throw refused.at(node.field("groove").place());
    }
    for (Groove.Shallow shallow : groove.shallow()) {
      if (shallow.insideRadius() > 0) {
        throw node.field("groove")
            .problem(
                "the "
                    + Length.print(slot.bearing().diameter(), units)
                    + " bearing of the slot cutter cannot follow “"
                    + rail.part().name()
                    + "” into a hollow of R "
                    + Length.print(shallow.insideRadius(), units)
                    + ", so the groove would be "
                    + Words.small(shallow.lostDepth(), units)
                    + " too shallow there; take a bearing of "
                    + Length.print(2 * shallow.insideRadius(), units)
                    + " or less, or make the curve wider");
      }
    }
  }

  PanelSettings settings(SlotCutter slot, Wishes wishes) {
    Species species = SpeciesTable.named(species());
    PanelSettings settings =
        PanelSettings.usual(
                slot,
                species,
                Settings.thickness(wishes),
                percent("moisture").orElse(usual("moisture")),
                range(),
                units)
            .withCut(cut())
            .withFibres(fibres());
    OptionalDouble along = from0("gap-along");
    OptionalDouble across = from0("gap-across");
    OptionalDouble start = from0("start-gap");
    OptionalDouble seat = from0("least-seat");
    settings = along.isPresent() ? settings.withAlongGap(along.getAsDouble()) : settings;
    settings = across.isPresent() ? settings.withAcrossGap(across.getAsDouble()) : settings;
    settings = start.isPresent() ? settings.withStartGap(start.getAsDouble()) : settings;
    return seat.isPresent() ? settings.withLeastSeat(seat.getAsDouble()) : settings;
  }

  /** The panel's own, else the job's. */
  String species() {
    return node.optional("species")
        .or(() -> job.top().optional("stock").flatMap(stock -> stock.optional("species")))
        .orElseThrow(
            () -> node.problem("“species:” is missing here: a wood, or plywood for a sheet"))
        .text();
  }

  private Cut cut() {
    Optional<YamlNode> written = node.optional("sawn");
    return switch (written.map(YamlNode::text).orElse("flat")) {
      case "flat" -> Cut.FLAT_SAWN;
      case "quarter" -> Cut.QUARTER_SAWN;
      default ->
          throw written
              .get()
              .problem("“" + written.get().text() + "” is no way to saw; write flat or quarter");
    };
  }

  private Fibres fibres() {
    Optional<YamlNode> written = node.optional("fibres");
    return switch (written.map(YamlNode::text).orElse("upright")) {
      case "upright" -> Fibres.UPRIGHT;
      case "level" -> Fibres.LEVEL;
      default ->
          throw written
              .get()
              .problem(
                  "“" + written.get().text() + "” is no way of the fibres; write upright or level");
    };
  }

  private MoistureRange range() {
    if (node.optional("moisture-range").isPresent()) {
      if (node.optional("humidity").isPresent()) {
        throw node.field("humidity")
            .problem("the moisture of the wood is given above; keep one of the two");
      }
      double[] pair = pair("moisture-range");
      return new MoistureRange(pair[0], pair[1]);
    }
    double[] air =
        node.optional("humidity").isPresent()
            ? pair("humidity")
            : new double[] {usual("driest-air"), usual("dampest-air")};
    return MoistureRange.indoors(temperature(), air[0], air[1]);
  }

  private Temperature temperature() {
    Optional<YamlNode> written = node.optional("temperature");
    if (written.isEmpty()) {
      return Temperature.celsius(usual("temperature"));
    }
    String text = written.get().text().replace("°", "").strip();
    String number = text.isEmpty() ? "" : text.substring(0, text.length() - 1).strip();
    if (text.endsWith("C")) {
      return Temperature.celsius(number(written.get(), number));
    }
    if (text.endsWith("F")) {
      return Temperature.fahrenheit(number(written.get(), number));
    }
    throw written.get().problem("a temperature is written as 20C or 68F");
  }

  private double[] pair(String field) {
    List<YamlNode> items = node.field(field).items();
    if (items.size() != 2) {
      throw node.field(field).problem("two figures are wanted, the driest and the dampest");
    }
    return new double[] {percent(items.get(0)), percent(items.get(1))};
  }

  private OptionalDouble percent(String field) {
    Optional<YamlNode> written = node.optional(field);
    return written.isPresent() ? OptionalDouble.of(percent(written.get())) : OptionalDouble.empty();
  }

  private static double percent(YamlNode written) {
    return number(written, written.text().replaceFirst("\\s*%$", ""));
  }

  private static double number(YamlNode written, String text) {
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException notNumber) {
      // Refused below.
    }
    throw written.problem("“" + written.text() + "” is no number; write it as in 8 or 8%");
  }

  private static double usual(String rule) {
    return FactTable.read(PanelFields.class, "air.tsv").rows().stream()
        .filter(row -> row.text("rule").equals(rule))
        .findFirst()
        .orElseThrow()
        .number("value");
  }
}
