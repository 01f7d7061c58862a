package org.bearingline.routing.setup;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;

/**
 * K ⊕ D(ρ): what a disc of radius ρ covers while its centre follows paths. Exact in lines and arcs:
 * a line sweeps a rectangle with round ends. An arc of up to a quarter turn sweeps its own band
 * with round ends; where its radius is no more than ρ the band has no inner side, and the round
 * ends meet behind the arc's centre.
 */
final class SweptDisc {

  private static final double QUARTER = 90;

  /** An inner side of the band with a radius this small, in mm, is a point. */
  private static final double TOUCHING = 1e-6;

  private SweptDisc() {}

  static Region of(List<Path> paths, double radius) {
    List<Region> parts = new ArrayList<>();
    for (Path path : paths) {
      for (Primitive piece : path.primitives()) {
        piece.match(
            line -> parts.add(Region.of(Outline.of(along(line, radius)))),
            arc -> parts.addAll(along(arc, radius)));
      }
    }
    return union(parts);
  }

  /** Joined two by two, so that most unions are of small regions. */
  private static Region union(List<Region> parts) {
    if (parts.isEmpty()) {
      return Region.EMPTY;
    }
    if (parts.size() == 1) {
      return parts.get(0);
    }
    int half = parts.size() / 2;
    return Overlay.union(union(parts.subList(0, half)), union(parts.subList(half, parts.size())));
  }

  private static Loop along(Line line, double radius) {
    Point side = line.tangentAt(0).left().times(radius);
    Point a = line.start();
    Point b = line.end();
    return Loop.of(
        new Line(a.minus(side), b.minus(side)),
        Arc.between(b.minus(side), b.plus(side), b, true),
        new Line(b.plus(side), a.plus(side)),
        Arc.between(a.plus(side), a.minus(side), a, true));
  }

  private static List<Region> along(Arc given, double radius) {
    Arc arc = given.sweep() > 0 ? given : given.reversed();
    int count = (int) Math.ceil(arc.sweep() / QUARTER - 1e-9);
    List<Region> parts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Arc part = arc.part((double) i / count, (double) (i + 1) / count);
      parts.add(Region.of(Outline.of(band(part, radius))));
    }
    return parts;
  }

  /** A counter-clockwise arc of up to a quarter turn. */
  private static Loop band(Arc arc, double radius) {
    Point center = arc.center();
    Point from = arc.start().minus(center).unit();
    Point to = arc.end().minus(center).unit();
    Point outerFrom = arc.start().plus(from.times(radius));
    Point outerTo = arc.end().plus(to.times(radius));
    Arc outer = Arc.between(outerFrom, outerTo, center, true);
    if (arc.radius() - radius > TOUCHING) {
      Point innerFrom = arc.start().minus(from.times(radius));
      Point innerTo = arc.end().minus(to.times(radius));
      return Loop.of(
          outer,
          Arc.between(outerTo, innerTo, arc.end(), true),
          Arc.between(innerTo, innerFrom, center, false),
          Arc.between(innerFrom, outerFrom, arc.start(), true));
    }
    Point middle = arc.start().towards(arc.end(), 0.5);
    double half = arc.start().distanceTo(arc.end()) / 2;
    Point inward = arc.end().minus(arc.start()).unit().left();
    Point behind = middle.plus(inward.times(Math.sqrt(radius * radius - half * half)));
    return Loop.of(
        outer,
        Arc.between(outerTo, behind, arc.end(), true),
        Arc.between(behind, outerFrom, arc.start(), true));
  }
}
