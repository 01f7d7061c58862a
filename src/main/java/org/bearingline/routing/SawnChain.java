package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * A run of sawn edges between two routed ones, and the ways to close the plate behind it.
 *
 * @param before the routed piece that ends where the sawn edges begin
 * @param sawn at least one
 * @param after the routed piece that begins where they end; may be {@code before} itself
 */
record SawnChain(Primitive before, List<Primitive> sawn, Primitive after) {

  /** Sine below which two directions count as one: 0.001 mm to the side over a metre. */
  private static final double TANGENT = 1e-6;

  /** A run-out steeper than this to the sawn edge (sine) is drawn out to reach the margin. */
  private static final double STEEP = 0.5;

  /** Shorter than this, in mm, a piece is rounding. */
  private static final double NO_LENGTH = 1e-9;

  /**
   * A closed-up chain.
   *
   * @param primitives from the end of the routed edge to the start of the next
   * @param stretches what each is
   * @param ends where the stock ends
   */
  record Closed(List<Primitive> primitives, List<Stretch> stretches, List<StockEnd> ends) {}

  /** Behind the sawn edges by {@code margin} mm, after a run-out of {@code length} mm each way. */
  Closed behind(double length, double margin) {
    // Seen from the far end the chain is the same with all directions turned round.
    Entry leaving =
        Entry.of(sawn.get(0).tangentAt(0), before.tangentAt(1), 1, length, margin, sawn.get(0));
    Primitive last = sawn.get(sawn.size() - 1);
    Entry entering =
        Entry.of(
            last.tangentAt(1).times(-1), after.tangentAt(0).times(-1), -1, length, margin, last);
    Point a = before.end();
    Point b = after.start();
    Point aOut = a.plus(leaving.step());
    Point bOut = b.plus(entering.step());
    List<Point> around = new ArrayList<>();
    around.add(aOut);
    BackingLine.corners(sawn, leaving, entering, margin, around);
    around.add(bOut);

    Chain chain = new Chain();
    chain.add(a, aOut, leaving.isRunOut() ? Stretch.RUN_OUT : Stretch.BACKING);
    for (int i = 1; i < around.size(); i++) {
      chain.add(around.get(i - 1), around.get(i), Stretch.BACKING);
    }
    chain.add(bOut, b, entering.isRunOut() ? Stretch.RUN_OUT : Stretch.BACKING);
    List<StockEnd> ends = new ArrayList<>();
    addEnd(ends, a, leaving, sawn.get(0).tangentAt(0), sawn.get(0).tangentAt(0).times(-1));
    addEnd(ends, b, entering, last.tangentAt(1), last.tangentAt(1));
    return new Closed(chain.primitives, chain.stretches, ends);
  }

  /** Straight over the open end of a slot, {@code length} mm outside it. */
  Closed openEnd(double length) {
    Point a = before.end();
    Point b = after.start();
    Point leaving = before.tangentAt(1);
    Point entering = after.tangentAt(0).times(-1);
    Point aOut = a.plus(leaving.times(length));
    Point bOut = b.plus(entering.times(length));
    Chain chain = new Chain();
    chain.add(a, aOut, Stretch.RUN_OUT);
    chain.add(aOut, bOut, Stretch.BACKING);
    chain.add(bOut, b, Stretch.RUN_OUT);
    Point first = sawn.get(0).tangentAt(0);
    Point last = sawn.get(sawn.size() - 1).tangentAt(1);
    return new Closed(
        chain.primitives,
        chain.stretches,
        List.of(
            new StockEnd(a, leaving, first, first.left()),
            new StockEnd(b, entering, last.times(-1), last.left())));
  }

  private static void addEnd(List<StockEnd> ends, Point at, Entry entry, Point travel, Point away) {
    if (entry.isRunOut()) {
      ends.add(new StockEnd(at, entry.outward(), away, travel.left().times(-1)));
    }
  }

  /** Collects straight pieces, leaving out those without length. */
  private static final class Chain {
    private final List<Primitive> primitives = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();

    void add(Point from, Point to, Stretch stretch) {
      if (from.distanceTo(to) > NO_LENGTH) {
        primitives.add(new Line(from, to));
        stretches.add(stretch);
      }
    }
  }

  /**
   * How the edge runs on at one end of the chain.
   *
   * @param outward unit vector of the routed edge away from the work
   * @param sine of the angle from it to the sawn edge; more than 0 where it leaves the stock
   * @param length mm that it runs on
   */
  record Entry(Point outward, double sine, double length) {

    static Entry of(
        Point saw, Point outward, int sense, double length, double margin, Primitive first) {
      double sine = outward.cross(saw) * sense;
      if (sine > TANGENT) {
        double reach = sine > STEEP ? Math.max(length, margin / sine) : length;
        return new Entry(outward, sine, length == 0 ? 0 : reach);
      }
      boolean tangent = Math.abs(sine) <= TANGENT && outward.dot(saw) > 0;
      // Tangent: the sawn edge itself carries the follower, up to its middle, for the other end may
      // do the same. Otherwise the corner is hollow and an edge run on would lie in the wood, so it
      // stops there.
      boolean straight = first.curvature() == 0;
      return new Entry(outward, 0, tangent && straight ? Math.min(length, first.length() / 2) : 0);
    }

    Point step() {
      return outward.times(length);
    }

    boolean isRunOut() {
      return length > 0;
    }
  }
}
