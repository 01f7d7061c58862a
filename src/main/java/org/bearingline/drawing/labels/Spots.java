package org.bearingline.drawing.labels;

import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;

/**
 * Looks for the best spot for one line of words round a target: on rings that widen, the spot with
 * the least sum of its distance and of what its leader crosses. The search ends when no farther
 * ring can do better; where all rings are taken, the words go below everything.
 */
final class Spots {

  /** Steps from the middle of a ring's side to its corner. */
  private static final int STEPS = 4;

  /** Rings grow by this factor, starting at a clearance. */
  private static final double GROWTH = 1.3;

  private static final int RINGS = 24;

  /** How much farther, in clearances, a spot may be to save the leader one crossing. */
  private static final double CROSSING = 4;

  private final Obstacles obstacles;
  private final double clearance;
  private final Point target;
  private final double width;
  private final double height;
  private Bounds best;
  private double bestCost = Double.POSITIVE_INFINITY;

  Spots(Obstacles obstacles, double clearance, Point target, double width, double height) {
    this.obstacles = obstacles;
    this.clearance = clearance;
    this.target = target;
    this.width = width;
    this.height = height;
  }

  /** The box of the best spot. */
  Bounds best() {
    double gap = clearance;
    for (int ring = 0; ring < RINGS && gap / clearance < bestCost; ring++) {
      // Above before below, right before left, as one would write it by hand.
      for (int i = STEPS; i >= -STEPS; i--) {
        tryAt((double) i / STEPS, 1, gap);
        tryAt(1, (double) i / STEPS, gap);
        tryAt((double) i / STEPS, -1, gap);
        tryAt(-1, (double) i / STEPS, gap);
      }
      gap *= GROWTH;
    }
    return best == null ? below() : best;
  }

  /** Tries the spot at shares of the ring's half width and half height from the target. */
  private void tryAt(double across, double up, double gap) {
    Point middle =
        target.plus(new Point(across * (gap + width / 2), up * (gap + WordBoxes.HALF * height)));
    Bounds box = WordBoxes.upright(middle, width, height);
    Line leader = leader(box, target);
    double length = leader.length() / clearance;
    if (length < bestCost && obstacles.isClear(box.grown(clearance))) {
      double cost = length + CROSSING * obstacles.blockedSteps(leader, clearance / 2);
      if (cost < bestCost) {
        best = box;
        bestCost = cost;
      }
    }
  }

  private Bounds below() {
    Bounds all = obstacles.extent();
    double y = all.minY() - height - 2 * clearance;
    return WordBoxes.upright(new Point(target.x(), y), width, height);
  }

  /** From the nearest point of the box's edge to the target, which lies outside the box. */
  static Line leader(Bounds box, Point target) {
    Point from =
        new Point(
            Math.max(box.minX(), Math.min(box.maxX(), target.x())),
            Math.max(box.minY(), Math.min(box.maxY(), target.y())));
    return new Line(from, target);
  }
}
