package org.bearingline.shape.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Contour;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Values;
import org.bearingline.shape.step.Fields;
import org.bearingline.shape.step.Listed;
import org.bearingline.shape.step.Pen;

/** Several figures run together into one. */
record UnionFigure(Listed<Figure> figures, Place place) implements Figure {

  private static final int MOST = 1000;

  static Figure read(Fields f) {
    return new UnionFigure(
        Listed.read(
            f.node(), f.scope(), "figures", (item, scope) -> Figures.read(item, scope, Set.of())),
        f.place());
  }

  @Override
  public Contour drawn(Values values) {
    List<Loop> loops = new ArrayList<>();
    figures.forEach(
        values,
        (figure, inner) -> {
          if (loops.size() == MOST) {
            throw new Problem(place, "the union has more than " + MOST + " figures");
          }
          loops.add(figure.drawn(inner).loop());
        });
    return merged(loops, place);
  }

  /** The one edge round all loops; they must hang together and leave no island. */
  static Contour merged(List<Loop> loops, Place place) {
    if (loops.isEmpty()) {
      throw new Problem(place, "a union needs at least one figure");
    }
    Region all = Region.of(Outline.of(loops.get(0)));
    for (Loop loop : loops.subList(1, loops.size())) {
      Region sofar = all;
      all = Pen.at(place, () -> Overlay.union(sofar, Region.of(Outline.of(loop))));
    }
    if (all.pieces().size() != 1) {
      throw new Problem(
          place, "these figures do not touch each other; list them as openings of their own");
    }
    if (!all.pieces().get(0).openings().isEmpty()) {
      throw new Problem(
          place, "these figures leave an island of wood between them; draw them without a gap");
    }
    return Contour.routed(all.pieces().get(0).outer());
  }
}
