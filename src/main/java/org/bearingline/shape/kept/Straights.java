package org.bearingline.shape.kept;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;

/**
 * Where a part may be cut across and drawn apart: there every edge it crosses is a straight along
 * the way it stretches, so that curves, holes and what stands square stay as they are.
 *
 * @param alongX whether the part grows along x, else along y
 * @param low where the part begins, in mm
 * @param high where it ends
 * @param cuts where it is drawn apart, from low to high, each by the same share
 * @param room mm that may be taken out in all before a straight vanishes
 */
record Straights(boolean alongX, double low, double high, List<Double> cuts, double room) {

  /** Rise to run up to which an edge counts as lying along the way: a tenth of a degree. */
  private static final double ALONG = 2e-3;

  /** Shorter straights, in mm, are no place to grow. */
  private static final double LEAST = 2;

  /** Share of the longest straight from which the one in the middle is preferred. */
  private static final double WORTH = 0.2;

  private static final double ALIKE = 1e-6;

  double size() {
    return high - low;
  }

  boolean canStretch() {
    return !cuts.isEmpty();
  }

  /** Which share of the growth a coordinate moves by: 0 before the first cut, 1 after the last. */
  double share(double at) {
    return (double) cuts.stream().filter(cut -> cut < at).count() / cuts.size();
  }

  private record Span(double from, double to) {
    double length() {
      return to - from;
    }

    double middle() {
      return (from + to) / 2;
    }
  }

  static Straights of(Part part, boolean alongX) {
    List<Span> blocked = new ArrayList<>();
    block(part.contour().loop(), alongX, blocked);
    for (Cavity cavity : part.cavities()) {
      block(cavity.contour().loop(), alongX, blocked);
    }
    for (Mark mark : part.marks()) {
      if (mark instanceof Mark.DrillCentre hole) {
        double at = alongX ? hole.at().x() : hole.at().y();
        blocked.add(new Span(at - hole.diameter() / 2, at + hole.diameter() / 2));
      }
    }
    Bounds box = part.contour().loop().bounds();
    double low = alongX ? box.minX() : box.minY();
    double high = alongX ? box.maxX() : box.maxY();
    List<Span> chosen = chosen(free(blocked, low, high), low + high);
    double room = chosen.stream().mapToDouble(Span::length).sum();
    return new Straights(alongX, low, high, chosen.stream().map(Span::middle).toList(), room);
  }

  private static void block(Loop loop, boolean alongX, List<Span> blocked) {
    for (Primitive piece : loop.primitives()) {
      Bounds box = piece.bounds();
      double way = alongX ? box.width() : box.height();
      double rise = alongX ? box.height() : box.width();
      if (!(piece instanceof Line) || rise > ALONG * way) {
        blocked.add(alongX ? new Span(box.minX(), box.maxX()) : new Span(box.minY(), box.maxY()));
      }
    }
  }

  private static List<Span> free(List<Span> blocked, double low, double high) {
    blocked.sort(Comparator.comparingDouble(Span::from));
    List<Span> free = new ArrayList<>();
    double reached = low;
    for (Span span : blocked) {
      if (span.from() - reached >= LEAST) {
        free.add(new Span(reached, span.from()));
      }
      reached = Math.max(reached, span.to());
    }
    if (high - reached >= LEAST) {
      free.add(new Span(reached, high));
    }
    return free;
  }

  // In a part alike on both sides of its middle, one span in the middle or a pair; else the
  // longest.
  private static List<Span> chosen(List<Span> free, double doubledMiddle) {
    if (free.isEmpty()) {
      return free;
    }
    int n = free.size();
    Span longest =
        free.stream().max(Comparator.comparingDouble(s -> Math.rint(s.length() * 1e6))).get();
    for (int i = 0; i < n; i++) {
      Span image = free.get(n - 1 - i);
      if (Math.abs(free.get(i).from() + image.to() - doubledMiddle) > ALIKE) {
        return List.of(longest);
      }
    }
    Span middle = n % 2 == 1 ? free.get(n / 2) : null;
    if (middle != null && middle.length() >= WORTH * longest.length()) {
      return List.of(middle);
    }
    int i = free.indexOf(longest);
    int first = Math.min(i, n - 1 - i);
    return List.of(free.get(first), free.get(n - 1 - first));
  }
}
