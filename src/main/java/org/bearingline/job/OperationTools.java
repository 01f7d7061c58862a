package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.ToolSizes;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.operation.Handling;
import org.bearingline.routing.operation.Target;
import org.bearingline.routing.operation.Tooling;
import org.bearingline.yaml.YamlNode;

/**
 * Settles the bit of an operation, its own, else the part's, else the kit's best, and what it
 * follows.
 *
 * @param wishes of the part
 * @param kit the maker's tools
 */
record OperationTools(Wishes wishes, Kit kit) {

  /** The fields of an operation that belong here. */
  static final Set<String> FIELDS =
      Set.of(
          "bit",
          "cutting-length",
          "bearing",
          "bearing-at",
          "bearing-height",
          "collar",
          "tube",
          "shares");

  /** Those of an operation whose edge follows no other. */
  static final Set<String> UNSHARED =
      Set.of("bit", "cutting-length", "bearing", "bearing-at", "bearing-height", "collar", "tube");

  /** For an edge of any form. */
  Tooling forEdge(OperationFields fields, Target target) {
    Cutter cutter = ownBit(fields).orElseGet(() -> bestFor(fields.part(), target));
    return tooling(fields, cutter, followers().of(fields, cutter, Optional.of(target)));
  }

  /** For a slot of straight sides: the kit's widest bit that enters it. */
  Tooling forSlot(OperationFields fields, double width, Target target) {
    Cutter cutter = slotCutter(fields, width);
    return tooling(fields, cutter, followers().of(fields, cutter, Optional.of(target)));
  }

  /** The same through a collar where nothing else is asked for. */
  Tooling forMortise(OperationFields fields, double width) {
    Cutter cutter = slotCutter(fields, width);
    boolean free = !fields.has("collar") && !fields.has("bearing");
    Follower follower =
        free
            ? followers().smallestCollar(fields, cutter)
            : followers().of(fields, cutter, Optional.empty());
    return tooling(fields, cutter, follower);
  }

  /** For a hinge leaf: a bit of the maker's choice, else the kit's smallest with a bearing. */
  Tooling forLeaf(OperationFields fields, double narrowest) {
    boolean chosen = fields.has("bit") || !wishes.bits().isEmpty();
    Cutter cutter =
        chosen
            ? slotCutter(fields, narrowest)
            : kit.bits().stream()
                .filter(bit -> bit.bearing() != Bit.BearingSeat.NONE)
                .findFirst()
                .map(Bit::cutter)
                .orElseGet(() -> widestIn(fields, narrowest));
    return tooling(fields, cutter, followers().of(fields, cutter, Optional.empty()));
  }

  /** How the operation is worked: its own words, else the part's. */
  Handling handling(OperationFields fields) {
    OptionalDouble pass = fields.optionalLength("deepest-pass");
    return new Handling(
        fields.has("router")
            ? Settings.station(
                fields.node().field("router").text(), fields.node().field("router").place())
            : Settings.station(wishes, diameter(fields), fields.has("collar")),
        pass.isPresent() ? pass : Settings.deepestPass(wishes),
        fields.has("bearing-at") ? Optional.of(seat(fields)) : Optional.empty(),
        fields.optionalLength("bearing-height"),
        fields.has("tube")
            ? OptionalDouble.of(
                ToolSizes.tube(fields.length("tube"), fields.node().field("tube").place()))
            : OptionalDouble.empty());
  }

  /** What the part says for all its operations, of one with this tool. */
  Handling handling(Cutter cutter, Follower follower) {
    return Handling.of(
        Settings.station(wishes, cutter.diameter(), follower instanceof Follower.Collar),
        Settings.deepestPass(wishes));
  }

  /** Of the bit named, in mm; 0 where the kit's best is taken, which is never a large one. */
  private double diameter(OperationFields fields) {
    return fields.has("bit")
        ? fields.length("bit")
        : wishes.bits().stream().findFirst().orElse(0.0);
  }

  private static Bit.BearingSeat seat(OperationFields fields) {
    YamlNode written = fields.node().field("bearing-at");
    return switch (written.text()) {
      case "shank" -> Bit.BearingSeat.SHANK;
      case "tip" -> Bit.BearingSeat.TIP;
      case "both" -> Bit.BearingSeat.BOTH;
      default ->
          throw written.problem(
              "“" + written.text() + "” is no place of a bearing; write shank, tip or both");
    };
  }

  private Tooling tooling(OperationFields fields, Cutter cutter, Follower follower) {
    OperationFollowers.check(fields, follower);
    OptionalDouble length = fields.optionalLength("cutting-length");
    return new Tooling(cutter, length.isPresent() ? length : ownedLength(cutter), follower);
  }

  private OperationFollowers followers() {
    return new OperationFollowers(wishes, kit);
  }

  /** A collar of a field, which the bit must pass. */
  Follower collar(OperationFields fields, String field, Cutter cutter) {
    return followers().collar(fields, field, cutter);
  }

  private Optional<Cutter> ownBit(OperationFields fields) {
    return fields.has("bit") ? Optional.of(new Cutter(fields.bit("bit"))) : Optional.empty();
  }

  private Cutter slotCutter(OperationFields fields, double width) {
    return ownBit(fields)
        .or(() -> wishes.bits().stream().findFirst().map(Cutter::new))
        .orElseGet(() -> widestIn(fields, width));
  }

  private Cutter widestIn(OperationFields fields, double width) {
    List<Bit> bits = kit.bits();
    for (int i = bits.size() - 1; i >= 0; i--) {
      if (bits.get(i).diameter() <= width + Tools.SAME_TOOL / 2) {
        return bits.get(i).cutter();
      }
    }
    throw fields.problem(
        kit.name()
            + " has no bit of "
            + Words.both(width)
            + " or less; name one, as in bit: 1/8in");
  }

  private Cutter bestFor(Part part, Target target) {
    Part alone = alone(part, target);
    return Tools.cutter(wishes, alone, kit, LargestCutter.of(alone));
  }

  private static Part alone(Part part, Target target) {
    if (target.outside()) {
      return new Part(part.name(), part.about(), target.contour(), List.of(), List.of(), List.of());
    }
    Cavity cavity =
        new Cavity(target.of(), Cavity.Kind.THROUGH, target.contour(), OptionalDouble.empty());
    return new Part(
        part.name(),
        part.about(),
        Contour.sawn(part.contour().loop()),
        List.of(cavity),
        List.of(),
        List.of());
  }

  private OptionalDouble ownedLength(Cutter cutter) {
    return kit.bits().stream()
        .filter(bit -> Math.abs(bit.diameter() - cutter.diameter()) < Tools.SAME_TOOL)
        .flatMapToDouble(bit -> bit.cuttingLength().stream())
        .max();
  }
}
