package org.bearingline.outline.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.topology.FlattenedBuffer;
import org.bearingline.outline.topology.Nesting;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The second way, taken where the exact one cannot be proved: a buffer of a finely flattened copy,
 * arcs found again, checked with the tolerance that this costs.
 */
final class FallBack {

  /** mm by which a chord may miss its arc in the flattened copy. */
  private static final double CHORD = 0.0005;

  private final Region region;
  private final double radius;
  private final double tolerance;

  FallBack(Region region, double radius) {
    this.region = region;
    this.radius = radius;
    // The buffer joins chords nearer than a twentieth of the distance bluntly: radius / 800.
    this.tolerance = 8 * CHORD + radius / 400;
  }

  OffsetResult run(Morphology.Operation operation, Unproven why) {
    double[] steps =
        switch (operation) {
          case DILATE -> new double[] {radius};
          case ERODE -> new double[] {-radius};
          case CLOSE -> new double[] {radius, -radius};
          case OPEN -> new double[] {-radius, radius};
        };
    Region result = buffered(steps, why);
    // Against the step before the last: the whole outline, or its own fall-back dilation.
    Region before = steps.length == 1 ? region : buffered(new double[] {steps[0]}, why);
    check(result, before, steps[steps.length - 1], why);
    ordered(operation, result, why);
    String caution =
        String.format(
            Locale.ROOT,
            "the exact offset could not be proved near x %.3f, y %.3f mm (%s); this line is true to"
                + " within %.3f mm only",
            why.x(),
            why.y(),
            why.getMessage(),
            tolerance);
    return new OffsetResult(result, tolerance, Optional.of(caution));
  }

  private Region buffered(double[] steps, Unproven why) {
    try {
      List<Loop> loops = new ArrayList<>();
      for (var ring : FlattenedBuffer.rings(region, CHORD, steps)) {
        Loop loop = ArcFinding.loop(ring, CHORD);
        if (Math.abs(loop.signedArea()) > tolerance * loop.length()) {
          loops.add(loop);
        }
      }
      return Nesting.region(loops);
    } catch (IllegalArgumentException failure) {
      throw refused(why);
    }
  }

  private void check(Region result, Region before, double step, Unproven why) {
    boolean grows = step > 0;
    for (Loop loop : result.loops()) {
      for (Primitive piece : loop.primitives()) {
        for (double t : new double[] {0, 0.5}) {
          double found = before.distanceTo(piece.pointAt(t));
          boolean rightSide = before.contains(piece.pointAt(t)) != grows;
          if (Math.abs(found - Math.abs(step)) > tolerance || !rightSide) {
            throw refused(why);
          }
        }
      }
    }
    if (result.isEmpty() && grows) {
      throw refused(why);
    }
  }

  /** A dilation and a closing cover the outline, it covers an erosion and an opening. */
  void ordered(Morphology.Operation operation, Region result, Unproven why) {
    switch (operation) {
      case DILATE, CLOSE -> covers(result, region, why);
      case ERODE, OPEN -> covers(region, result, why);
    }
  }

  private void covers(Region outer, Region inner, Unproven why) {
    for (Loop loop : inner.loops()) {
      for (Primitive piece : loop.primitives()) {
        for (double t : new double[] {0, 0.25, 0.5, 0.75}) {
          Point p = piece.pointAt(t);
          if (!outer.contains(p) && outer.distanceTo(p) > tolerance) {
            throw refused(why);
          }
        }
      }
    }
  }

  private static Problem refused(Unproven why) {
    return new Problem(
        Place.nowhere(),
        String.format(
            Locale.ROOT,
            "the outline cannot be offset safely near x %.3f, y %.3f mm (%s); look there for edges"
                + " that cross, run on each other or zigzag, and mend or thin them",
            why.x(),
            why.y(),
            why.getMessage()));
  }
}
