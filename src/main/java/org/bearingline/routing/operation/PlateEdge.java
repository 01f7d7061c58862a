package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;

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

  /** Whether another operation comes out as designed when its follower rides this edge. */
  boolean makes(EdgeWork work) {
    return work.isOutside() == isOutside() && makes(work, work.tool());
  }

  /** The same with another tool in place of the operation's own. */
  boolean makes(EdgeWork work, Tooling tool) {
    if (EdgeMatch.deviation(loop, work.edge()) < EdgeMatch.SAME_EDGE && tool.equals(work.tool())) {
      return true;
    }
    return Play.same(Play.cut(loop, isOutside(), tool), work.made());
  }

  void serve(Routed operation) {
    served.add(operation);
  }
}
