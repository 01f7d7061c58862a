package org.bearingline.outside.clean;

import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/**
 * Tells whether outlines are almost their own mirror image: drawn so by hand or half by half, and
 * perhaps meant to be so exactly.
 */
public final class NearlyMirrored {

  /** With more pieces each against each takes too long. */
  private static final int MOST_PIECES = 300;

  private static final int ON_AN_ARC = 8;

  private NearlyMirrored() {}

  /**
   * How far the mirror image in the middle of the box round them lies from the outlines, sampled;
   * nothing where that is more than {@code most} mm or there is too much to compare.
   *
   * @param line not {@link CenterLine#NONE}
   */
  public static OptionalDouble by(List<Outline> outlines, CenterLine line, double most) {
    List<Loop> loops = outlines.stream().flatMap(outline -> outline.loops().stream()).toList();
    if (loops.isEmpty() || loops.stream().mapToInt(Loop::size).sum() > MOST_PIECES) {
      return OptionalDouble.empty();
    }
    Point middle = loops.stream().map(Loop::bounds).reduce(Bounds::union).orElseThrow().center();
    Point along = line == CenterLine.VERTICAL ? new Point(0, 1) : new Point(1, 0);
    Similarity mirror = Similarity.mirror(middle, middle.plus(along));
    double farthest = 0;
    for (Loop loop : loops) {
      for (Primitive piece : loop.primitives()) {
        int samples = piece instanceof Line ? 2 : ON_AN_ARC;
        for (int i = 0; i < samples; i++) {
          Point image = mirror.apply(piece.pointAt((double) i / samples));
          farthest = Math.max(farthest, distance(loops, image));
          if (farthest > most) {
            return OptionalDouble.empty();
          }
        }
      }
    }
    return OptionalDouble.of(farthest);
  }

  private static double distance(List<Loop> loops, Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (Loop loop : loops) {
      least = Math.min(least, loop.distanceTo(p));
    }
    return least;
  }
}
