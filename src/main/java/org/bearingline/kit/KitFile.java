package org.bearingline.kit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import org.bearingline.length.Length;
import org.bearingline.length.LengthForm;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.TextFile;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;

/**
 * Reads a kit file:
 *
 * <pre>
 * name: my shop
 * units: in                # only where bare numbers are to be read
 * bits:
 *   - 1/4in
 *   - {diameter: 1/2in, cutting-length: 1in, shank: 1/4in, bearing: shank,
 *      bearing-height: 3/16in}
 * bearings: [1/2in, 3/4in]
 * collars:
 *   - {outside: 5/8in, inside: 17/32in, tube: 9/16in}
 * blades:
 *   - 1/4in
 *   - {width: 10mm, radius: 38mm}
 * </pre>
 */
final class KitFile {

  private static final Set<String> FIELDS =
      Set.of("name", "units", "bits", "bearings", "collars", "blades");

  private final LengthForm form;

  private KitFile(LengthForm form) {
    this.form = form;
  }

  static Kit read(Path file) {
    return read(file.toString(), TextFile.read(file));
  }

  static Kit read(String fileName, String text) {
    YamlNode top = YamlFile.read(fileName, text);
    top.allowOnly(FIELDS);
    KitFile kit = new KitFile(form(top.optional("units")));
    return new Kit(
        top.optional("name").map(YamlNode::text).orElse(fileName),
        kit.all(top, "bits", kit::bit),
        kit.all(top, "bearings", kit::bearing),
        kit.all(top, "collars", kit::collar),
        kit.all(top, "blades", kit::blade));
  }

  private static LengthForm form(Optional<YamlNode> units) {
    if (units.isEmpty()) {
      return LengthForm.WITH_UNITS;
    }
    return switch (units.get().text()) {
      case "in" -> LengthForm.WITH_UNITS.bareIn(Units.INCH);
      case "mm" -> LengthForm.WITH_UNITS.bareIn(Units.MM);
      default -> throw units.get().problem("units are in or mm");
    };
  }

  private interface Reader<T> {
    T read(YamlNode node);
  }

  private <T> List<T> all(YamlNode top, String field, Reader<T> reader) {
    Optional<YamlNode> list = top.optional(field);
    if (list.isEmpty()) {
      return List.of();
    }
    List<T> tools = new ArrayList<>();
    Set<T> seen = new HashSet<>();
    for (YamlNode node : list.get().items()) {
      T tool = reader.read(node);
      if (!seen.add(tool)) {
        throw node.problem("this stands in " + field + " a second time; keep one of them");
      }
      tools.add(tool);
    }
    return tools;
  }

  private Bit bit(YamlNode node) {
    if (node.isScalar()) {
      return placed(node, () -> new Bit(new Cutter(bitOf(node)), none(), none(), seat(null)));
    }
    node.allowOnly(Set.of("diameter", "cutting-length", "shank", "bearing", "bearing-height"));
    Bit.BearingSeat seat = seat(node.optional("bearing").orElse(null));
    Optional<YamlNode> height = node.optional("bearing-height");
    if (seat == Bit.BearingSeat.NONE && height.isPresent()) {
      throw height.get().problem("this bit carries no bearing; leave its height out");
    }
    return placed(
        node.field("diameter"),
        () ->
            new Bit(
                new Cutter(bitOf(node.field("diameter"))),
                positive(node.optional("cutting-length")),
                positive(node.optional("shank")),
                seat,
                positive(height)));
  }

  private static Bit.BearingSeat seat(YamlNode node) {
    if (node == null) {
      return Bit.BearingSeat.SHANK;
    }
    for (Bit.BearingSeat seat : Bit.BearingSeat.values()) {
      if (seat.name().toLowerCase(Locale.ROOT).equals(node.text())) {
        return seat;
      }
    }
    throw node.problem("a bit's bearing sits on its shank, its tip, both, or there is none");
  }

  private Follower.Bearing bearing(YamlNode node) {
    return placed(node, () -> new Follower.Bearing(ToolSizes.bearing(above0(node), node.place())));
  }

  private Follower.Collar collar(YamlNode node) {
    if (node.isScalar()) {
      return placed(node, () -> new Follower.Collar(collarOf(node)));
    }
    node.allowOnly(Set.of("outside", "inside", "tube"));
    return placed(
        node.field("outside"),
        () ->
            new Follower.Collar(
                collarOf(node.field("outside")),
                positive(node.optional("inside")),
                tubeOf(node.optional("tube"))));
  }

  private SawBlade blade(YamlNode node) {
    if (node.isScalar()) {
      return placed(node, () -> SawBlade.ofWidth(mm(node)));
    }
    node.allowOnly(Set.of("width", "radius"));
    YamlNode width = node.field("width");
    Optional<YamlNode> radius = node.optional("radius");
    return placed(
        width,
        () ->
            radius.isPresent()
                ? new SawBlade(mm(width), mm(radius.get()))
                : SawBlade.ofWidth(mm(width)));
  }

  private double bitOf(YamlNode node) {
    return ToolSizes.bit(above0(node), node.place());
  }

  private double collarOf(YamlNode node) {
    return ToolSizes.collar(above0(node), node.place());
  }

  private OptionalDouble tubeOf(Optional<YamlNode> node) {
    OptionalDouble tube = positive(node);
    tube.ifPresent(mm -> ToolSizes.tube(mm, node.orElseThrow().place()));
    return tube;
  }

  private double above0(YamlNode node) {
    return positive(Optional.of(node)).orElseThrow();
  }

  private double mm(YamlNode node) {
    return placed(node, () -> Length.parse(node.text(), form));
  }

  private OptionalDouble positive(Optional<YamlNode> node) {
    if (node.isEmpty()) {
      return none();
    }
    double mm = mm(node.get());
    if (!(mm > 0)) {
      throw node.get().problem("a length above 0 is wanted here");
    }
    return OptionalDouble.of(mm);
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }

  /** Gives a problem of the value itself the place where the value was written. */
  private static <T> T placed(YamlNode node, Supplier<T> made) {
    try {
      return made.get();
    } catch (Problem problem) {
      throw problem.place() instanceof Place.Spot ? problem : problem.at(node.place());
    }
  }
}
