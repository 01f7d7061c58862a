package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.LargestCutter;

/** Settles which cutter and follower work a part. */
final class Tools {

  /** Above this diameter a bit belongs in a router table, so none is chosen unasked (1 in). */
  private static final double LARGEST_UNASKED = 25.4;

  /** Diameters nearer than this, in mm, are the same tool in a kit. */
  private static final double SAME_TOOL = 0.02;

  private Tools() {}

  static Kit kit(Wishes wishes) {
    return wishes.kit().map(Kit::read).orElseGet(Kit::usual);
  }

  /** The one cutter for a layout: the one asked for, else the kit's best. */
  static Cutter cutter(Wishes wishes, Kit kit, LargestCutter largest) {
    if (wishes.bits().size() > 1) {
      throw new Problem(
          Place.option("--bit"), "a layout is made for one bit; give one, or compare with reach");
    }
    if (!wishes.bits().isEmpty()) {
      return asked(wishes.bits().get(0));
    }
    return best(kit, largest);
  }

  /** All cutters to try for reach: those asked for, else every bit of the kit. */
  static List<Cutter> cutters(Wishes wishes, Kit kit) {
    List<Cutter> cutters = new ArrayList<>();
    if (wishes.bits().isEmpty()) {
      for (Bit bit : kit.bits()) {
        // The same diameter with another length or shank reaches the same.
        if (cutters.isEmpty()
            || cutters.get(cutters.size() - 1).diameter() + SAME_TOOL < bit.diameter()) {
          cutters.add(bit.cutter());
        }
      }
      return cutters;
    }
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
    return new Cutter(diameter);
  }

  private static Cutter best(Kit kit, LargestCutter largest) {
    OptionalDouble limit = largest.diameter();
    Cutter smallest = null;
    Cutter best = null;
    for (Bit bit : kit.bits()) {
      double diameter = bit.diameter();
      if (smallest == null || diameter < smallest.diameter()) {
        smallest = bit.cutter();
      }
      boolean clean = limit.isEmpty() || diameter <= limit.getAsDouble() + 1e-9;
      if (clean && diameter <= LARGEST_UNASKED && (best == null || diameter > best.diameter())) {
        best = bit.cutter();
      }
    }
    if (smallest == null) {
      throw new Problem(
          Place.option("--bit"), kit.name() + " holds no bit; give one, as in --bit 1/2in");
    }
    return best == null ? smallest : best;
  }

  static Follower follower(Wishes wishes, Cutter cutter, Kit kit) {
    if (wishes.collar().isPresent()) {
      return collar(wishes.collar().getAsDouble(), cutter, kit);
    }
    if (wishes.bearing().isPresent()) {
      double diameter = wishes.bearing().getAsDouble();
      if (!(diameter > 0)) {
        throw new Problem(Place.option("--bearing"), "a bearing needs a diameter above 0");
      }
      return new Follower.Bearing(diameter);
    }
    return Follower.flush(cutter);
  }

  private static Follower collar(double diameter, Cutter cutter, Kit kit) {
    if (!(diameter > cutter.diameter())) {
      throw new Problem(
          Place.option("--collar"),
          "the bit passes through the collar, so the collar must be wider than the bit; give the"
              + " collar's outside diameter");
    }
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
    return new Follower.Collar(diameter, inside);
  }
}
