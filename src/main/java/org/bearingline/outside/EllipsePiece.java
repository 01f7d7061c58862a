package org.bearingline.outside;

import java.util.Optional;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Point;
import org.bearingline.outline.fit.EllipseArc;

/**
 * Arcs of ellipses as drawings hold them: the image of a circle under an affine map, centre + cos t
 * · u + sin t · v with two conjugate half diameters u and v.
 */
public final class EllipsePiece {

  /**
   * Half axes that differ by less than this share are a circle's: the files' numbers are rounded.
   */
  private static final double ROUND = 1e-7;

  /** An ellipse flatter than this share is a line that is walked to and fro. */
  private static final double FLAT = 1e-9;

  private EllipsePiece() {}

  /**
   * The arc from parameter {@code from} on through {@code sweep} degrees; a true arc where the
   * ellipse is a circle. Empty where the ellipse has collapsed to a line or a point.
   *
   * @param u half diameter at parameter 0°, mm
   * @param v half diameter at parameter 90°, mm
   * @param from degrees
   * @param sweep degrees, from u towards v where positive, up to 360, not 0
   */
  public static Optional<StrokePiece> of(
      Point center, Point u, Point v, double from, double sweep) {
    // The half axes p ⊥ q (Rytz): p stands at the parameter t where |cos t u + sin t v| is largest.
    double t = Math.toDegrees(Math.atan2(2 * u.dot(v), u.dot(u) - v.dot(v)) / 2);
    boolean isRound =
        Math.abs(u.dot(u) - v.dot(v)) <= 2 * ROUND * u.dot(u)
            && Math.abs(u.dot(v)) <= ROUND * u.dot(u);
    double cos = isRound ? 1 : Math.cos(Math.toRadians(t));
    double sin = isRound ? 0 : Math.sin(Math.toRadians(t));
    Point p = u.times(cos).plus(v.times(sin));
    Point q = v.times(cos).minus(u.times(sin));
    double longer = p.norm();
    double shorter = q.norm();
    if (!(shorter > FLAT * longer) || !Double.isFinite(longer)) {
      return Optional.empty();
    }
    double sense = p.cross(q) > 0 ? 1 : -1;
    double start = sense * (isRound ? from : from - t);
    double turn = sense * sweep;
    if (isRound) {
      return Optional.of(
          new StrokePiece.Plain(Arc.around(center, longer, p.degrees() + start, turn)));
    }
    return Optional.of(
        new StrokePiece.Free(new EllipseArc(center, longer, shorter, p.degrees(), start, turn)));
  }
}
