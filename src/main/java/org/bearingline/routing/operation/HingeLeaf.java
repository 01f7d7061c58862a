package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.routing.BoardSide;

/**
 * The shallow recess that takes one leaf of a butt hinge, open at the edge of the part.
 *
 * @param head name and face
 * @param tool the bit and its follower
 * @param edge of the recess, its open side sawn
 * @param deep mm: the leaf's thickness
 */
public record HingeLeaf(Head head, Tooling tool, Target edge, double deep) implements Hollow {

  /**
   * A leaf let in at a straight side of the part.
   *
   * @param middle mm along the side to the leaf's middle: x of a top or bottom side, y of a left or
   *     right one
   * @param length of the leaf along the side, mm
   * @param width from the side into the part, mm
   * @param radius of its two inner corners: 0 where they are squared with a chisel
   */
  public static HingeLeaf at(
      Head head,
      Tooling tool,
      Part part,
      BoardSide side,
      double middle,
      double length,
      double width,
      double radius,
      double deep) {
    BitFits.check(head, "hinge leaf", Math.min(length, width), tool);
    Line rim = StraightSide.covering(part, side, middle - length / 2, middle + length / 2, head);
    Contour contour = contour(rim, side, middle, length, width, Math.min(radius, width / 2));
    return new HingeLeaf(head, tool, Target.opening(head.name(), contour), deep);
  }

  private static Contour contour(
      Line rim, BoardSide side, double middle, double length, double width, double radius) {
    Point out = side.outward();
    // Along the side so that the part lies on the left hand.
    Point along = out.left();
    Point on = StraightSide.pointOn(rim, side, middle);
    Point a = on.minus(along.times(length / 2));
    Point b = on.plus(along.times(length / 2));
    Point in = out.times(-width);
    double r = Math.min(radius, length / 2);
    List<Primitive> pieces = new ArrayList<>();
    pieces.add(new Line(a, b));
    pieces.add(new Line(b, b.plus(in).plus(out.times(r))));
    if (r > 0) {
      pieces.add(
          Arc.between(
              b.plus(in).plus(out.times(r)),
              b.plus(in).minus(along.times(r)),
              b.plus(in).plus(out.times(r)).minus(along.times(r)),
              true));
    }
    if (length > 2 * r) {
      pieces.add(new Line(b.plus(in).minus(along.times(r)), a.plus(in).plus(along.times(r))));
    }
    if (r > 0) {
      pieces.add(
          Arc.between(
              a.plus(in).plus(along.times(r)),
              a.plus(in).plus(out.times(r)),
              a.plus(in).plus(along.times(r)).plus(out.times(r)),
              true));
    }
    pieces.add(new Line(a.plus(in).plus(out.times(r)), a));
    List<EdgeKind> kinds = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      kinds.add(i == 0 ? EdgeKind.SAWN : EdgeKind.ROUTED);
    }
    return new Contour(new Loop(pieces), kinds);
  }

  @Override
  public String word() {
    return "hinge leaf";
  }

  @Override
  public OptionalDouble depth() {
    return OptionalDouble.of(deep);
  }

  @Override
  public HingeLeaf mirrored(Similarity mirror) {
    return new HingeLeaf(head, tool, edge.mirrored(mirror), deep);
  }
}
