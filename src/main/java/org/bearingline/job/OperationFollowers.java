package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.Pairing;
import org.bearingline.problem.Problem;
import org.bearingline.routing.operation.Routed;
import org.bearingline.routing.operation.SharedFollower;
import org.bearingline.routing.operation.Target;

/**
 * Settles what the bit of an operation follows: its own bearing or collar, the one with which it
 * shares a template, else the part's, else what the kit's bits carry.
 *
 * @param wishes of the part
 * @param kit the maker's tools
 */
record OperationFollowers(Wishes wishes, Kit kit) {

  /**
   * The follower of an operation.
   *
   * @param target the edge it shapes, where it can share the template of another
   */
  Follower of(OperationFields fields, Cutter cutter, Optional<Target> target) {
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

  /** The kit's smallest collar that lets the bit through. */
  Follower smallestCollar(OperationFields fields, Cutter cutter) {
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
    if (!(wanted > Tools.SAME_TOOL)) {
      throw problem.of(
          "no bearing is small enough to make this from the template of "
              + other.name()
              + " with a "
              + Words.both(cutter.diameter())
              + " bit; choose a wider bit, or leave “shares” out");
    }
    if (Math.abs(wanted - cutter.diameter()) < Tools.SAME_TOOL) {
      return Follower.flush(cutter);
    }
    boolean collar = wanted > cutter.diameter();
    List<? extends Follower> owned = collar ? kit.collars() : kit.bearings();
    return owned.stream()
        .filter(one -> Math.abs(one.diameter() - wanted) < Tools.SAME_TOOL)
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

  /** A tube is a collar's, and a bearing's seat and height a bearing's. */
  static void check(OperationFields fields, Follower follower) {
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
}
