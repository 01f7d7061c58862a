package org.bearingline.outline.offset;

import java.util.List;
import java.util.function.Predicate;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.topology.Crossings;
import org.bearingline.outline.topology.PieceIndex;
import org.bearingline.outline.topology.Pieces;

/**
 * What loops that may cross, overlap or run on each other enclose. All edges are cut where they
 * meet; a part stays where there is wood on one side of it only.
 */
public final class Filling {

  private static final int TRIES = 6;

  /** Tolerances beside an edge at which its two sides are looked at. */
  private static final double BESIDE = 64;

  /** Tolerances within which a part that joins no loop lies on the result, or is nothing. */
  private static final double LEFT = 20;

  private final Pieces all;
  private final Frame frame;
  private final boolean nonZero;
  private final double[] middle = new double[2];
  private final double[] tangent = new double[2];

  private Filling(List<Loop> loops, boolean nonZero, Frame frame) {
    this.frame = frame;
    this.nonZero = nonZero;
    all = new Pieces(16);
    for (Loop loop : loops) {
      for (Primitive piece : loop.primitives()) {
        all.add(piece, frame.originX(), frame.originY(), all.size());
      }
    }
  }

  /** A place is wood where the loops do not wind round it zero times in all. */
  public static Region nonZero(List<Loop> loops) {
    return nonZero(loops, found -> true);
  }

  /**
   * The same, made again with points told apart less finely until the result is found sound.
   *
   * @param isSound a check from outside
   */
  public static Region nonZero(List<Loop> loops, Predicate<Region> isSound) {
    return of(loops, true, isSound);
  }

  /** A place is wood where an odd number of loops surround it. */
  public static Region evenOdd(List<Loop> loops) {
    return of(loops, false, found -> true);
  }

  private static Region of(List<Loop> loops, boolean nonZero, Predicate<Region> isSound) {
    if (loops.isEmpty()) {
      return Region.EMPTY;
    }
    Bounds box = loops.stream().map(Loop::bounds).reduce(Bounds::union).orElseThrow();
    return new CoarserTries(box, TRIES)
        .first(
            frame -> new Filling(loops, nonZero, frame).run(isSound),
            "what the loops enclose cannot be told",
            "edges that run on each other");
  }

  private Region run(Predicate<Region> isSound) throws Unproven {
    double tolerance = frame.tolerance();
    Crossings crossings = new Crossings(all, tolerance);
    crossings.findAll();
    Inside inside = new Inside(all, new PieceIndex(all), false);
    Pieces kept = new Pieces(all.size());
    Pieces parts = new Pieces(16);
    for (int k = 0; k < all.size(); k++) {
      parts.truncate(0);
      crossings.cuts().parts(k, tolerance, parts, k);
      for (int i = 0; i < parts.size(); i++) {
        keep(parts, i, k, inside, kept);
      }
    }
    Stitching.Stitched stitched = Stitching.of(kept, tolerance);
    LoopSet out = Merging.of(stitched.loops(), tolerance).withoutCrumbs(tolerance);
    checkLeftOver(stitched.leftOver(), new Nearness(out.pieces));
    Region region = Regions.of(out, false, frame);
    if (!isSound.test(region)) {
      throw new Unproven("the whole has not the area it should have", all.x0[0], all.y0[0], frame);
    }
    return region;
  }

  // Parts without a loop may remain only on the result itself.
  private void checkLeftOver(Pieces leftOver, Nearness result) throws Unproven {
    double slack = LEFT * frame.tolerance();
    for (int k = 0; k < leftOver.size(); k++) {
      leftOver.middle(k, middle);
      if (leftOver.length(k) > slack && result.within(middle[0], middle[1], slack) > slack) {
        throw new Unproven("part of the edge joins no loop", middle[0], middle[1], frame);
      }
    }
  }

  // Where another edge touches a part, the looks to its sides fall beyond that: one of three places
  // along it is clear of one contact.
  private void keep(Pieces parts, int i, int k, Inside inside, Pieces kept) {
    boolean left = wood(parts, i, inside, 1);
    boolean right = wood(parts, i, inside, -1);
    for (int half = 0; half < 2 && left == right; half++) {
      parts.middle(i, middle);
      double x = half == 0 ? parts.x0[i] : middle[0];
      double y = half == 0 ? parts.y0[i] : middle[1];
      double toX = half == 0 ? middle[0] : parts.x1[i];
      double toY = half == 0 ? middle[1] : parts.y1[i];
      Pieces one = new Pieces(1);
      one.addPart(parts, i, x, y, toX, toY, false, k);
      left = wood(one, 0, inside, 1);
      right = wood(one, 0, inside, -1);
    }
    if (left && !right) {
      kept.add(parts, i, k);
    } else if (right && !left) {
      kept.addReversed(parts, i, k);
    }
  }

  // Whether there is wood beside the middle, on the left (1) or the right (-1).
  private boolean wood(Pieces parts, int i, Inside inside, int side) {
    parts.middle(i, middle);
    parts.direction(i, middle[0], middle[1], tangent);
    double beside = side * BESIDE * frame.tolerance();
    return isWood(inside.winding(middle[0] - tangent[1] * beside, middle[1] + tangent[0] * beside));
  }

  private boolean isWood(int winding) {
    return nonZero ? winding != 0 : winding % 2 != 0;
  }
}
