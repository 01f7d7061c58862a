package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.Pairing;
import org.bearingline.kit.ToolSizes;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.Reach;

/** Settles which cutter and follower work a part. */
final class Tools {

  /** Above this diameter a bit belongs in a router table, so none is chosen unasked (1 in). */
  static final double LARGEST_UNASKED = 25.4;

  /** A leftover this shallow, 1/64 in, goes with the sanding. */
  static final double UNSEEN = 25.4 / 64;

  /** Share of a slot's width that a bit may take and still be led along its edges. */
  private static final double ROOM = 0.9;

  /** Diameters nearer than this, in mm, are the same tool in a kit. */
  static final double SAME_TOOL = 0.02;

  private Tools() {}

  /** The one cutter for a layout: the one asked for, else the kit's best. */
  static Cutter cutter(Wishes wishes, Part part, Kit kit, LargestCutter largest) {
    if (wishes.bits().size() > 1) {
      throw new Problem(
          Place.option("--bit"), "a layout is made for one bit; give one, or compare with reach");
    }
    if (!wishes.bits().isEmpty()) {
      return asked(wishes.bits().get(0));
    }
    return best(part, kit, largest);
  }

  /** All cutters to try for reach: those asked for, else every bit of the kit. */
  static List<Cutter> cutters(Wishes wishes, Supplier<Kit> kit) {
    if (wishes.bits().isEmpty()) {
      return distinct(kit.get());
    }
    List<Cutter> cutters = new ArrayList<>();
    for (double diameter : wishes.bits()) {
      cutters.add(asked(diameter));
    }
    return cutters;
  }

  private static Cutter asked(double diameter) {
    if (!(diameter > 0)) {
      throw new Problem(
          Place.option("--bit"), "a bit needs a diameter above 0; give its cutting diameter");
    }
    return new Cutter(ToolSizes.bit(diameter, Place.option("--bit")));
  }

  private static Cutter best(Part part, Kit kit, LargestCutter largest) {
    List<Cutter> all = distinct(kit);
    if (all.isEmpty()) {
      throw new Problem(
          Place.option("--bit"), kit.name() + " holds no bit; give one, as in --bit 1/2in");
    }
    for (int i = all.size() - 1; i >= 0; i--) {
      Cutter cutter = all.get(i);
      boolean free =
          largest.narrowestNeck().isEmpty()
              || cutter.diameter() <= ROOM * largest.narrowestNeck().getAsDouble();
      if (cutter.diameter() <= LARGEST_UNASKED && free && leavesNothingToSee(part, cutter)) {
        return cutter;
      }
    }
    return all.get(0);
  }

  private static boolean leavesNothingToSee(Part part, Cutter cutter) {
    for (Leftover leftover : Reach.of(part, cutter, Follower.flush(cutter)).leftovers()) {
      if (leftover.depth() > UNSEEN) {
        return false;
      }
    }
    return true;
  }

  /** The kit's cutters by growing diameter: another length or shank reaches the same. */
  private static List<Cutter> distinct(Kit kit) {
    List<Cutter> cutters = new ArrayList<>();
    for (Bit bit : kit.bits()) {
      if (cutters.isEmpty()
          || cutters.get(cutters.size() - 1).diameter() + SAME_TOOL < bit.diameter()) {
        cutters.add(bit.cutter());
      }
    }
    return cutters;
  }

  static Follower follower(Wishes wishes, Cutter cutter, Supplier<Kit> kit) {
    if (wishes.collar().isPresent()) {
      return collar(wishes.collar().getAsDouble(), cutter, kit.get());
    }
    if (wishes.bearing().isPresent()) {
      double diameter = wishes.bearing().getAsDouble();
      if (!(diameter > 0)) {
        throw new Problem(Place.option("--bearing"), "a bearing needs a diameter above 0");
      }
      return new Follower.Bearing(ToolSizes.bearing(diameter, Place.option("--bearing")));
    }
    return carriesBearing(cutter, kit.get())
        ? Follower.flush(cutter)
        : smallestCollar(cutter, kit.get())
            .map(Follower.class::cast)
            .orElseGet(() -> Follower.flush(cutter));
  }

  /** False only where the kit's bits of this diameter all work through a collar. */
  static boolean carriesBearing(Cutter cutter, Kit kit) {
    List<Bit> same =
        kit.bits().stream()
            .filter(bit -> Math.abs(bit.diameter() - cutter.diameter()) < SAME_TOOL)
            .toList();
    return same.isEmpty()
        || kit.collars().isEmpty()
        || same.stream().anyMatch(bit -> bit.bearing() != Bit.BearingSeat.NONE);
  }

  /** The kit's smallest collar whose inside is known to let the bit through. */
  static Optional<Follower.Collar> smallestCollar(Cutter cutter, Kit kit) {
    return kit.collars().stream().filter(collar -> passes(cutter, collar)).findFirst();
  }

  private static boolean passes(Cutter cutter, Follower.Collar collar) {
    try {
      Pairing.check(cutter, collar);
      return collar.insideDiameter().isPresent();
    } catch (Problem tooNarrow) {
      return false;
    }
  }

  private static Follower collar(double diameter, Cutter cutter, Kit kit) {
    if (!(diameter > cutter.diameter())) {
      throw new Problem(
          Place.option("--collar"),
          "the bit passes through the collar, so the collar must be wider than the bit; give the"
              + " collar's outside diameter");
    }
    ToolSizes.collar(diameter, Place.option("--collar"));
    Optional<Follower.Collar> owned =
        kit.collars().stream()
            .filter(collar -> Math.abs(collar.diameter() - diameter) < SAME_TOOL)
            .findFirst();
    OptionalDouble inside =
        owned.isPresent() ? owned.get().insideDiameter() : OptionalDouble.empty();
    if (inside.isPresent() && inside.getAsDouble() < cutter.diameter()) {
      throw new Problem(
          Place.option("--collar"),
          "the bit does not pass through this collar of "
              + kit.name()
              + ", whose inside diameter is smaller; take a wider collar or a thinner bit");
    }
    return owned.orElseGet(() -> new Follower.Collar(diameter, inside));
  }
}
