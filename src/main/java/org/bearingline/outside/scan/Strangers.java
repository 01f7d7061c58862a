package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Point;

/**
 * Finds where along an edge something lies that is neither template nor ground: a thumb, tape, a
 * clamp, a sheet's rim. Near the edge the light is then neither that of the one nor of the other.
 */
final class Strangers {

  /** Light off by this share of the difference between template and ground is another thing's. */
  private static final double OFF = 0.3;

  /** Pixels from the edge to where its blur ends, and blurs more. */
  private static final double ASIDE = 4;

  private static final double BLURS = 3;

  private Strangers() {}

  /**
   * The middle of the longest stretch where something lies, in pixels.
   *
   * @param least pixels along the edge: what is shorter is grain, a pencil line or a corner
   */
  static Optional<Point> longest(
      GreyImage image, Levels levels, TracedLoop loop, double blur, double least) {
    List<Boolean> strange = new ArrayList<>();
    double aside = ASIDE + BLURS * blur;
    for (int i = 0; i < loop.size(); i++) {
      strange.add(isStrange(image, levels, loop, i, aside));
    }
    int first = strange.indexOf(false);
    if (first < 0) {
      return Optional.of(loop.point(0));
    }
    int longest = 0;
    int end = 0;
    int run = 0;
    for (int k = 1; k <= loop.size(); k++) {
      run = strange.get((first + k) % loop.size()) ? run + 1 : 0;
      if (run > longest) {
        longest = run;
        end = first + k;
      }
    }
    Point from = loop.point(end - longest + 1);
    return longest > 0 && from.distanceTo(loop.point(end)) >= least
        ? Optional.of(loop.point(end - longest / 2))
        : Optional.empty();
  }

  private static boolean isStrange(
      GreyImage image, Levels levels, TracedLoop loop, int i, double aside) {
    int near = (int) Math.ceil(aside);
    Point along = loop.point(i + near).minus(loop.point(i - near));
    // Where the edge turns sharply, aside of it need not be inside or outside.
    if (along.norm() < 1.2 * near) {
      return false;
    }
    Point out = new Point(-along.y(), along.x()).times(1 / along.norm());
    return Math.abs(share(image, levels, loop.point(i).plus(out.times(-aside)))) > OFF
        || Math.abs(share(image, levels, loop.point(i).plus(out.times(aside))) - 1) > OFF;
  }

  /** 0 for the template's light, 1 for the ground's. */
  private static double share(GreyImage image, Levels levels, Point at) {
    double template = levels.lampOnTemplate(at.x(), at.y());
    double ground = levels.lampOnGround(at.x(), at.y());
    return (image.lightAt(at.x(), at.y()) - template) / (ground - template);
  }
}
