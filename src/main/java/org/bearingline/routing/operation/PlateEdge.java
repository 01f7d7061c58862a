package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Region;

/** One edge of a plate while its operations are gathered. */
final class PlateEdge {

  private final Loop loop;
  private final EdgeWork first;
  private final List<Routed> served = new ArrayList<>();

  PlateEdge(EdgeWork first) {
    this.loop = first.edge();
    this.first = first;
    served.add(first.operation());
  }

  Loop loop() {
    return loop;
  }

  EdgeWork first() {
    return first;
  }

  List<Routed> served() {
    return served;
  }

  boolean isOutside() {
    return first.isOutside();
  }

  /** Whether another operation comes out no worse than from a template of its own. */
  boolean makes(EdgeWork work) {
    return work.isOutside() == isOutside() && makes(work, work.cutting());
  }

  /** The same with another bit or follower in place of the operation's own. */
  boolean makes(EdgeWork work, Tooling cutting) {
    if (EdgeMatch.deviation(loop, work.edge()) < EdgeMatch.SAME_EDGE
        && cutting.equals(work.cutting())) {
      return true;
    }
    Region cut = Play.cut(loop, isOutside(), cutting);
    Region own = work.made();
    return Play.same(cut, own)
        || !cut.isEmpty()
            && work.designed().isPresent()
            && Play.isNoWorse(cut, own, work.designed().get());
  }

  void serve(Routed operation) {
    served.add(operation);
  }
}
