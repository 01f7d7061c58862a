package org.bearingline.routing.operation;

import org.bearingline.kit.Follower;

/**
 * (R₁ − r₁) = (R₂ + r₂): a pocket cut with collar R₁ and bit r₁ and a plug cut with collar R₂ and
 * bit r₂ inside the same template opening have the same edge. With one bit of diameter d this
 * reads: the collars' outside diameters differ by 2 d.
 *
 * @param pocketInset mm from the template's edge to the pocket's: R₁ − r₁
 * @param plugInset mm from the template's edge to the plug's: R₂ + r₂
 */
public record InlayFit(double pocketInset, double plugInset) {

  /** A joint no wider than this, in mm, closes. */
  private static final double CLOSES = 0.05;

  public static InlayFit of(Tooling pocket, Tooling plug) {
    return new InlayFit(pocket.wider(), plug.follower().radius() + plug.cutter().radius());
  }

  /** Room all round the plug in mm; below 0 the plug is too large. */
  public double gap() {
    return plugInset - pocketInset;
  }

  public boolean fits() {
    return Math.abs(gap()) <= CLOSES;
  }

  /** The collar that cuts a fitting pocket with a bit beside the given plug tool. */
  public static Follower.Collar collarForPocket(double pocketBit, Tooling plug) {
    return new Follower.Collar(plug.follower().diameter() + plug.cutter().diameter() + pocketBit);
  }

  /** How far off it is, in words for a maker. */
  public String words() {
    return gap() > 0
        ? "the plug comes out too small, " + Sentences.mm(gap()) + " of gap on every side"
        : "the plug comes out too large by " + Sentences.mm(-gap()) + " on every side";
  }
}
