package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.Pairing;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.operation.Handling;
import org.bearingline.routing.operation.Routed;
import org.bearingline.routing.operation.SharedFollower;
import org.bearingline.routing.operation.Target;
import org.bearingline.routing.operation.Tooling;
import org.bearingline.yaml.YamlNode;

/**
 * Settles the bit and follower of an operation: its own, else the part's, else the kit's best.
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

  /** Diameters nearer than this, in mm, are the same tool. */
  private static final double SAME_TOOL = 0.02;

  /** For an edge of any form. */
  Tooling forEdge(OperationFields fields, Target target) {
    Cutter cutter = ownBit(fields).orElseGet(() -> bestFor(fields.part(), target));
    return tooling(fields, cutter, follower(fields, cutter, Optional.of(target)));
  }

  /** For a slot of straight sides: the kit's widest bit that enters it. */
  Tooling forSlot(OperationFields fields, double width, Target target) {
    Cutter cutter = slotCutter(fields, width);
    return tooling(fields, cutter, follower(fields, cutter, Optional.of(target)));
  }

  /** The same through a collar where nothing else is asked for. */
  Tooling forMortise(OperationFields fields, double width) {
    Cutter cutter = slotCutter(fields, width);
    boolean free = !fields.has("collar") && !fields.has("bearing");
    Follower follower =
        free ? smallestCollar(fields, cutter) : follower(fields, cutter, Optional.empty());
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
    return tooling(fields, cutter, follower(fields, cutter, Optional.empty()));
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
        fields.optionalLength("tube"));
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

  /** A tube is a collar's, and a bearing's seat and height a bearing's. */
  private static void checkFollower(OperationFields fields, Follower follower) {
    boolean collar = follower instanceof Follower.Collar;
    for (String field : collar ? List.of("bearing-at", "bearing-height") : List.of("tube")) {
      if (fields.has(field)) {
        throw new Problem(
            fields.node().placeOfName(field),
            collar
                ? "a collar leads this bit, so it has no bearing; leave “" + field + "” out"
                : "a bearing leads this bit, and only a collar has a tube; leave “tube” out");
      }
    }
  }

  private Tooling tooling(OperationFields fields, Cutter cutter, Follower follower) {
    checkFollower(fields, follower);
    OptionalDouble length = fields.optionalLength("cutting-length");
    return new Tooling(cutter, length.isPresent() ? length : ownedLength(cutter), follower);
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
      if (bits.get(i).diameter() <= width + SAME_TOOL / 2) {
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

  private Follower follower(OperationFields fields, Cutter cutter, Optional<Target> target) {
    if (fields.has("collar") && fields.has("bearing")) {
      throw new Problem(
          fields.node().placeOfName("bearing"),
          "a bit follows a bearing or a collar, not both; keep one of them");
    }
    if (fields.has("collar")) {
      return collar(fields, "collar", cutter);
    }
    if (fields.has("bearing")) {
      return new Follower.Bearing(fields.bearing("bearing"));
    }
    if (fields.has("shares") && target.isPresent()) {
      return shared(fields, cutter, target.get());
    }
    if (!fields.has("bit") && (wishes.collar().isPresent() || wishes.bearing().isPresent())) {
      return Tools.follower(wishes, cutter, () -> kit);
    }
    return Tools.carriesBearing(cutter, kit)
        ? Follower.flush(cutter)
        : smallestCollar(fields, cutter);
  }

  /** A collar of a field, which the bit must pass. */
  Follower collar(OperationFields fields, String field, Cutter cutter) {
    Follower collar = kit.known(new Follower.Collar(fields.collar(field)));
    try {
      Pairing.check(cutter, collar);
    } catch (Problem tooNarrow) {
      throw new Problem(fields.node().field(field).place(), tooNarrow.getMessage(), tooNarrow);
    }
    return collar;
  }

  private Follower smallestCollar(OperationFields fields, Cutter cutter) {
    return Tools.smallestCollar(cutter, kit)
        .map(Follower.class::cast)
        .orElseThrow(
            () ->
                fields.problem(
                    "no collar of "
                        + kit.name()
                        + " lets a "
                        + Words.both(cutter.diameter())
                        + " bit through; name one, as in collar: 3/4in"));
  }

  private Follower shared(OperationFields fields, Cutter cutter, Target target) {
    Routed other = fields.earlier("shares");
    OptionalDouble diameter = SharedFollower.diameter(target, cutter, other);
    YamlProblem problem = sentence -> new Problem(fields.node().field("shares").place(), sentence);
    if (diameter.isEmpty()) {
      throw problem.of(
          "this edge does not run parallel to that of "
              + other.name()
              + ", so one template cannot make both; leave “shares” out");
    }
    double wanted = diameter.getAsDouble();
    if (!(wanted > SAME_TOOL)) {
      throw problem.of(
          "no bearing is small enough to make this from the template of "
              + other.name()
              + " with a "
              + Words.both(cutter.diameter())
              + " bit; choose a wider bit, or leave “shares” out");
    }
    if (Math.abs(wanted - cutter.diameter()) < SAME_TOOL) {
      return Follower.flush(cutter);
    }
    boolean collar = wanted > cutter.diameter();
    List<? extends Follower> owned = collar ? kit.collars() : kit.bearings();
    return owned.stream()
        .filter(one -> Math.abs(one.diameter() - wanted) < SAME_TOOL)
        .findFirst()
        .map(Follower.class::cast)
        .orElseThrow(
            () ->
                problem.of(
                    "to come from the template of "
                        + other.name()
                        + " a "
                        + Words.both(cutter.diameter())
                        + " bit needs a "
                        + Words.both(wanted)
                        + (collar ? " collar" : " bearing")
                        + ", which "
                        + kit.name()
                        + " does not have; name it yourself, choose another bit, or leave “shares”"
                        + " out for a second template"));
  }

  /** A sentence told where a field is written. */
  private interface YamlProblem {
    Problem of(String sentence);
  }

  private OptionalDouble ownedLength(Cutter cutter) {
    return kit.bits().stream()
        .filter(bit -> Math.abs(bit.diameter() - cutter.diameter()) < SAME_TOOL)
        .flatMapToDouble(bit -> bit.cuttingLength().stream())
        .max();
  }
}
