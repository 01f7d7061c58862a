package org.bearingline.routing.operation;

import java.util.Optional;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.Pairing;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Problem;
import org.bearingline.routing.LargestCutter;

/**
 * R′ = r′ + o: the follower with which a cutter of radius r′ cuts o inside the edge of a template
 * that was made for another operation, and so saves the second template.
 */
final class OtherFollower {

  /** Two diameters nearer than this, in mm, are one size. */
  private static final double SAME = 0.02;

  private final Kit kit;
  private final Units units;

  OtherFollower(Kit kit, Units units) {
    this.kit = kit;
    this.units = units;
  }

  /** The follower that would do; empty where no follower makes the cut from that edge. */
  Optional<Follower> of(EdgeWork work, PlateEdge edge) {
    return work.isOutside() == edge.isOutside()
        ? follower(work, edge.loop(), work.tool())
            .filter(follower -> edge.makes(work, work.cutting().with(follower)))
        : Optional.empty();
  }

  private Optional<Follower> follower(EdgeWork work, Loop edge, Tooling tool) {
    double diameter = tool.cutter().diameter() + 2 * inset(work, edge);
    if (!(diameter > SAME)) {
      return Optional.empty();
    }
    boolean collar =
        !(work.operation() instanceof EdgeGroove) && diameter > tool.cutter().diameter() + SAME;
    return Optional.of(
        collar ? kit.known(new Follower.Collar(diameter)) : new Follower.Bearing(diameter));
  }

  /** mm by which the edge to be cut lies beyond the template's edge, seen from the router. */
  private static double inset(EdgeWork work, Loop edge) {
    Point on = onRouted(work.operation().edge().contour());
    double distance = edge.distanceTo(on);
    return edge.contains(on) == work.isOutside() ? -distance : distance;
  }

  private static Point onRouted(Contour contour) {
    int first = Math.max(0, contour.kinds().indexOf(EdgeKind.ROUTED));
    return contour.loop().primitives().get(first).middle();
  }

  /** The sentence that names what would make one template serve; empty where nothing would. */
  Optional<String> advice(EdgeWork work, PlateEdge edge, int number) {
    return of(work, edge).map(follower -> sentence(work, edge, number, follower));
  }

  private String sentence(EdgeWork work, PlateEdge edge, int number, Follower follower) {
    String what = work.operation().name();
    String served = what + " from template " + number + " too";
    String size = sized(follower);
    if (owns(follower) && passes(work.tool(), follower)) {
      return "The "
          + size
          + " of "
          + kit.name()
          + " with the "
          + bit(work)
          + " makes "
          + served
          + ", and this plate is not needed.";
    }
    String wanted =
        "A " + size + " with the " + bit(work) + " would make " + served + "; " + kit.name();
    return owned(work, edge)
        .map(
            tool ->
                wanted
                    + " has none, but its "
                    + sized(tool.follower())
                    + " with a "
                    + Length.print(tool.cutter().diameter(), units)
                    + " bit does the same.")
        .orElse(wanted + " has none.");
  }

  private String sized(Follower follower) {
    return Length.print(follower.diameter(), units) + " " + follower.kind();
  }

  private String bit(EdgeWork work) {
    Routed operation = work.operation();
    return Length.print(operation.tool().cutter().diameter(), units)
        + (operation instanceof EdgeGroove ? " slot cutter" : " bit");
  }

  /** Another bit and follower of the kit that make the cut from that edge. */
  private Optional<Tooling> owned(EdgeWork work, PlateEdge edge) {
    if (work.operation() instanceof EdgeGroove) {
      return Optional.empty();
    }
    LargestCutter largest = work.result().largestCutter();
    for (int i = kit.bits().size() - 1; i >= 0; i--) {
      Bit bit = kit.bits().get(i);
      Tooling tool = new Tooling(bit.cutter(), bit.cuttingLength(), Follower.flush(bit.cutter()));
      Optional<Follower> follower = follower(work, edge.loop(), tool);
      if (largest.allows(bit.diameter())
          && follower.isPresent()
          && owns(follower.get())
          && passes(tool, follower.get())
          && edge.makes(work, tool.with(follower.get()))) {
        return Optional.of(tool.with(follower.get()));
      }
    }
    return Optional.empty();
  }

  private boolean owns(Follower follower) {
    return (follower instanceof Follower.Collar ? kit.collars() : kit.bearings())
        .stream().anyMatch(owned -> Math.abs(owned.diameter() - follower.diameter()) < SAME);
  }

  private static boolean passes(Tooling tool, Follower follower) {
    try {
      Pairing.check(tool.cutter(), follower);
      return true;
    } catch (Problem tooNarrow) {
      return false;
    }
  }
}
