package org.bearingline.outline.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.bearingline.outline.Crest;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.problem.CutOff;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Turns curves into tangent-continuous lines and arcs, once, on entry. The chain starts and ends
 * where the curve does and in its directions; corners and cusps stay corners; a curve that is its
 * own mirror image or half turn gets a chain that is so too.
 */
public final class CurveFit {

  /** Tolerance in mm unless another is asked for: a fifth of what a shop can see. */
  public static final double DEFAULT_TOLERANCE = 0.02;

  /** Finer than this, in mm, the rounding of the arcs themselves would count. */
  public static final double FINEST_TOLERANCE = 1e-6;

  private static final int MEASURED_SAMPLES = 256;

  /**
   * Leave the crest within a thousandth of the samples' spacing, far below what its height shows.
   */
  private static final int MEASURED_STEPS = 16;

  private final Curve curve;
  private final double tolerance;

  private CurveFit(Curve curve, double tolerance) {
    this.curve = SharpTurns.cornered(curve, tolerance);
    this.tolerance = tolerance;
  }

  public static FittedCurve fit(Curve curve) {
    return fit(curve, DEFAULT_TOLERANCE);
  }

  /**
   * Few arcs and lines that nowhere leave the curve by more than {@code tolerance} mm. The
   * deviation is measured at 256 points of each biarc and the crests between them. Fails with a
   * Problem where the curve has no length or the tolerance is below {@link #FINEST_TOLERANCE}.
   */
  public static FittedCurve fit(Curve curve, double tolerance) {
    if (!(tolerance >= FINEST_TOLERANCE) || !Double.isFinite(tolerance)) {
      throw new Problem(
          Place.nowhere(), "the tolerance of a fitted curve must be at least 0.000001 mm");
    }
    double asked = tolerance;
    FittedCurve fitted = new CurveFit(curve, asked).fitted();
    // A crest between two samples of the search may stand out; then ask for a little less.
    while (fitted.maxDeviation() > tolerance && asked > tolerance / 2) {
      asked *= 0.97 * tolerance / fitted.maxDeviation();
      fitted = new CurveFit(curve, asked).fitted();
    }
    return fitted;
  }

  /** Pieces of a span with what they stray from it. */
  private record Part(List<Primitive> pieces, double deviation) {}

  private FittedCurve fitted() {
    Span whole = new Span(curve, 0, 1);
    requireLength(whole);
    Part part = part(whole);
    List<Primitive> pieces =
        whole.start().equals(whole.end())
            ? Joining.joinedRound(part.pieces())
            : Joining.joined(part.pieces());
    return new FittedCurve(pieces, part.deviation());
  }

  private static void requireLength(Span span) {
    int samples = span.samples(16);
    for (int i = 1; i <= samples; i++) {
      if (span.at((double) i / samples).distanceTo(span.start()) > FINEST_TOLERANCE) {
        return;
      }
    }
    throw new Problem(Place.nowhere(), "the curve has no length: all its points lie at one place");
  }

  private Part part(Span span) {
    CutOff.check();
    List<Double> cuts = cuts(span);
    if (cuts.isEmpty()) {
      Optional<Run> single = new LongestRuns(span).single(tolerance);
      if (single.isPresent()) {
        return measured(span, List.of(single.get()));
      }
    }
    Optional<Similarity> symmetry = Symmetry.of(span);
    if (symmetry.isPresent()) {
      return doubled(part(span.firstHalf()), symmetry.get(), span.end());
    }
    List<Primitive> pieces = new ArrayList<>();
    double deviation = 0;
    double from = span.from();
    cuts.add(span.to());
    for (double to : cuts) {
      Span smooth = new Span(curve, from, to);
      Part part = measured(smooth, new LongestRuns(smooth).cover(tolerance));
      pieces.addAll(part.pieces());
      deviation = Math.max(deviation, part.deviation());
      from = to;
    }
    return new Part(pieces, deviation);
  }

  private List<Double> cuts(Span span) {
    TreeSet<Double> cuts = new TreeSet<>(SlowPoints.of(span));
    cuts.addAll(curve.breaks());
    return new ArrayList<>(cuts.subSet(span.from(), false, span.to(), false));
  }

  private static Part doubled(Part half, Similarity symmetry, Point end) {
    List<Primitive> pieces = new ArrayList<>(half.pieces());
    for (int i = half.pieces().size() - 1; i >= 0; i--) {
      Primitive image = half.pieces().get(i).transformed(symmetry).reversed();
      Point start = pieces.get(pieces.size() - 1).end();
      pieces.add(image.withEnds(start, i == 0 ? end : image.end()));
    }
    return new Part(Joining.joined(pieces), half.deviation());
  }

  private static Part measured(Span span, List<Run> runs) {
    List<Primitive> pieces = new ArrayList<>();
    double deviation = 0;
    for (Run run : runs) {
      Span part = new Span(span.curve(), run.from(), run.to());
      Crest crest =
          Crest.highest(s -> run.biarc().distanceTo(part.at(s)), MEASURED_SAMPLES, MEASURED_STEPS);
      deviation = Math.max(deviation, crest.height());
      pieces.addAll(run.biarc().pieces());
    }
    return new Part(Joining.joined(pieces), deviation);
  }
}
