package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/**
 * The lean of the fibres at a place of an edge: φ with sin φ = g·n, in (−90, 90]. With α the
 * direction of travel and γ that of the fibres, φ = α − γ to the next half turn where the wood is
 * on the left, and the negative of that where it is on the right. Along an arc α runs evenly, so
 * the places where the class changes have closed form: α = γ ± limit + k · 180°.
 */
final class Lean {

  /** A share of a primitive nearer to an end cuts nothing off: rounding of the angle. */
  private static final double WHOLE = 1e-9;

  /** Degrees by which an angle may miss a limit through rounding. */
  private static final double ROUNDING = 1e-9;

  private final GrainSettings settings;
  private final boolean woodOnLeft;

  Lean(GrainSettings settings, boolean woodOnLeft) {
    this.settings = settings;
    this.woodOnLeft = woodOnLeft;
  }

  /** φ for a direction of travel; degrees in (−90, 90]. */
  double of(Point travel) {
    double turn = Degrees.normalised(2 * (Degrees.of(travel) - settings.fibreDegrees())) / 2;
    double signed = turn > 90 ? turn - 180 : turn;
    return woodOnLeft || signed == 90 ? signed : -signed;
  }

  GrainClass classAt(Primitive piece, double share) {
    double lean = of(piece.tangentAt(share));
    if (Math.abs(lean) <= settings.alongWithin() + ROUNDING) {
      return GrainClass.ALONG;
    }
    if (Math.abs(lean) >= 90 - settings.endGrainWithin() - ROUNDING) {
      return GrainClass.END_GRAIN;
    }
    return lean > 0 ? GrainClass.CLEAN : GrainClass.TEARS;
  }

  /** The piece cut where its class changes, each part with one class. */
  List<Primitive> cut(Primitive piece) {
    return piece.match(line -> List.<Primitive>of(line), this::cutArc);
  }

  private List<Primitive> cutArc(Arc arc) {
    List<Double> shares = new ArrayList<>();
    double from = Degrees.of(arc.tangentAt(0)) - settings.fibreDegrees();
    double along = settings.alongWithin();
    double end = 90 - settings.endGrainWithin();
    for (double limit : new double[] {along, end, -end, -along}) {
      // The turn from the start's direction to the limit's, in the arc's own sense, below 180°.
      double turn = arc.sweep() > 0 ? limit - from : from - limit;
      double first = Degrees.normalised(2 * turn) / 2;
      for (double at = first; at < Math.abs(arc.sweep()); at += 180) {
        shares.add(at / Math.abs(arc.sweep()));
      }
    }
    shares.sort(null);
    List<Primitive> parts = new ArrayList<>();
    double last = 0;
    for (double share : shares) {
      if (share > last + WHOLE && share < 1 - WHOLE) {
        parts.add(arc.part(last, share));
        last = share;
      }
    }
    parts.add(last == 0 ? arc : arc.part(last, 1));
    return parts;
  }
}
