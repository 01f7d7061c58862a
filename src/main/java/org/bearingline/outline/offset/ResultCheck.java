package org.bearingline.outline.offset;

import org.bearingline.outline.topology.Pieces;

/**
 * Looks at a dilation from both sides before it is handed on: every piece of the result lies at the
 * distance from the outline, and every stretch of the outline whose moved point is free of all
 * others has its place on the result.
 */
final class ResultCheck {

  private final LoopSet in;
  private final Nearness outline;
  private final LoopSet out;
  private final Frame frame;
  private final Nearness result;
  private final double[] point = new double[2];
  private final double[] tangent = new double[2];

  ResultCheck(LoopSet in, Nearness outline, LoopSet out, Frame frame) {
    this.in = in;
    this.outline = outline;
    this.out = out;
    this.frame = frame;
    this.result = new Nearness(out.pieces);
  }

  /**
   * @param leftOver pieces that passed the distance test but found no loop
   */
  void offset(double distance, Pieces leftOver) throws Unproven {
    Pieces p = out.pieces;
    for (int k = 0; k < p.size(); k++) {
      atDistance(p.x0[k], p.y0[k], distance, p.source[k]);
      p.middle(k, point);
      double x = point[0];
      double y = point[1];
      atDistance(x, y, distance, p.source[k]);
      onTheRight(k, x, y, distance);
    }
    for (int k = 0; k < leftOver.size(); k++) {
      leftOver.middle(k, point);
      if (result.within(point[0], point[1], frame.promise()) > frame.promise()
          && hasRoom(leftOver, k, distance)) {
        throw new Unproven("part of the offset joins no loop", point[0], point[1], frame);
      }
    }
    for (int k = 0; k < in.pieces.size(); k++) {
      hasItsPlace(k, distance);
    }
  }

  // Where opposite edges meet within the tolerance a part may be left over: nothing lies between.
  private boolean hasRoom(Pieces p, int k, double distance) {
    double x = point[0];
    double y = point[1];
    double step = 4 * frame.tolerance();
    p.direction(k, x, y, tangent);
    return outline.isClear(
        x + tangent[1] * step,
        y - tangent[0] * step,
        distance + step - frame.tolerance(),
        p.source[k]);
  }

  private void atDistance(double x, double y, double distance, int hint) throws Unproven {
    double found = outline.within(x, y, distance + frame.promise(), hint);
    if (!(Math.abs(found - distance) <= frame.promise())) {
      throw new Unproven("the offset is not at its distance", x, y, frame);
    }
  }

  // The wood is on the left of a result's travel: a short step that way comes nearer to it. A long
  // step would not do: past a narrow gap it meets the opposite edge, which is as near.
  private void onTheRight(int k, double x, double y, double distance) throws Unproven {
    int near = outline.nearest();
    double step = Math.min(4 * frame.promise(), distance / 2);
    out.pieces.direction(k, x, y, tangent);
    double leftX = x - tangent[1] * step;
    double leftY = y + tangent[0] * step;
    double nearer = distance - step / 2;
    if (in.pieces.distance(near, leftX, leftY) > nearer
        && outline.within(leftX, leftY, nearer) > nearer) {
      throw new Unproven("the offset runs the wrong way", x, y, frame);
    }
  }

  private void hasItsPlace(int k, double distance) throws Unproven {
    Pieces p = in.pieces;
    p.middle(k, point);
    double x = point[0];
    double y = point[1];
    p.direction(k, x, y, tangent);
    // A little farther out, so that a stretch that meets its opposite is no longer free.
    double beyond = 2 * frame.promise();
    double step = distance + beyond;
    double ax = x + tangent[1] * step;
    double ay = y - tangent[0] * step;
    if (outline.isClear(ax, ay, step - frame.tolerance(), k)
        && !(result.within(ax, ay, beyond + frame.promise()) <= beyond + frame.promise())) {
      throw new Unproven("part of the offset is missing", ax, ay, frame);
    }
  }
}
