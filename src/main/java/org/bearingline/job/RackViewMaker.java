package org.bearingline.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.SawBlade;
import org.bearingline.kit.SpeedTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.Reach;

/** Tries every bit of a kit on one part, as {@code reach} does. */
final class RackViewMaker {

  private final PartOrder order;
  private final Kit kit;
  private final Units units;

  RackViewMaker(PartOrder order) {
    this.order = order;
    this.kit = new KitOnDemand(order.wishes()).get();
    this.units = Settings.units(order.wishes());
  }

  RackView view() {
    Part part = order.shape().part().named(order.name());
    LargestCutter largest = LargestCutter.of(part);
    OptionalDouble chosen = chosen(part, largest);
    Map<Double, Verdict> verdicts = new HashMap<>();
    List<RackView.BitView> bits = new ArrayList<>();
    for (Bit bit : kit.bits()) {
      Verdict verdict =
          verdicts.computeIfAbsent(bit.diameter(), any -> verdict(part, bit.cutter()));
      bits.add(view(bit, verdict, isSame(chosen, bit.diameter())));
    }
    return new RackView(
        kit.name(), ReachWords.largest(largest, units), bits, followers(), blades());
  }

  private OptionalDouble chosen(Part part, LargestCutter largest) {
    try {
      return OptionalDouble.of(Tools.cutter(order.wishes(), part, kit, largest).diameter());
    } catch (Problem none) {
      // The drawing tells it; here no bit is marked.
      return OptionalDouble.empty();
    }
  }

  private static boolean isSame(OptionalDouble one, double other) {
    return one.isPresent() && Math.abs(one.getAsDouble() - other) < Tools.SAME_TOOL;
  }

  private record Verdict(String key, String word, int count, double depth, List<String> details) {}

  private Verdict verdict(Part part, Cutter cutter) {
    Reach reach;
    try {
      reach = Reach.of(part, cutter, Tools.follower(order.wishes(), cutter, () -> kit));
    } catch (Problem refused) {
      return new Verdict("refused", refused.getMessage(), 0, 0, List.of(refused.getMessage()));
    }
    List<String> details = ReachWords.lines(reach, units).stream().map(String::strip).toList();
    int count = reach.leftovers().size();
    double depth = reach.leftovers().stream().mapToDouble(Leftover::depth).max().orElse(0);
    if (count == 0) {
      return new Verdict("clean", "cuts it clean", 0, 0, details);
    }
    String places = count == 1 ? "1 place" : count + " places";
    if (depth <= Tools.UNSEEN) {
      return new Verdict(
          "nearly", "leaves a trace in " + places + " that sanding takes", count, depth, details);
    }
    return new Verdict(
        "leaves",
        "leaves " + places + ", up to " + Words.small(depth, units),
        count,
        depth,
        details);
  }

  private RackView.BitView view(Bit bit, Verdict verdict, boolean chosen) {
    OptionalInt speed = SpeedTable.ceiling(bit.diameter());
    return new RackView.BitView(
        KitTree.written(bit.diameter()),
        Length.print(bit.diameter(), units),
        bit.diameter(),
        words(bit.cuttingLength()),
        words(bit.shank()),
        bit.bearing().name().toLowerCase(Locale.ROOT),
        speed.isPresent() ? speed.getAsInt() + " rev/min" : "see the bit",
        verdict.key(),
        verdict.word(),
        verdict.count(),
        verdict.depth(),
        verdict.details(),
        chosen);
  }

  private String words(OptionalDouble mm) {
    return mm.isPresent() ? Length.print(mm.getAsDouble(), units) : "?";
  }

  private List<RackView.FollowerView> followers() {
    List<RackView.FollowerView> views = new ArrayList<>();
    for (Follower.Bearing bearing : kit.bearings()) {
      views.add(view(bearing, "", isSame(order.wishes().bearing(), bearing.diameter())));
    }
    for (Follower.Collar collar : kit.collars()) {
      boolean chosen = isSame(order.wishes().collar(), collar.diameter());
      views.add(view(collar, words(collar.insideDiameter()), chosen));
    }
    return views;
  }

  private RackView.FollowerView view(Follower follower, String inside, boolean chosen) {
    return new RackView.FollowerView(
        follower.kind(),
        KitTree.written(follower.diameter()),
        Length.print(follower.diameter(), units),
        inside,
        chosen);
  }

  private List<RackView.BladeView> blades() {
    OptionalDouble chosen = OptionalDouble.of(Settings.sawBlade(order.wishes()));
    List<RackView.BladeView> views = new ArrayList<>();
    for (SawBlade blade : kit.blades()) {
      views.add(
          new RackView.BladeView(
              KitTree.written(blade.width()),
              Length.print(blade.width(), units),
              "R " + Length.print(blade.smallestRadius(), units),
              isSame(chosen, blade.width())));
    }
    return views;
  }
}
