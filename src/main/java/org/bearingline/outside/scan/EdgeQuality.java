package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Point;

/**
 * How sharp a picture is at the template's edge: the rise of light across it, averaged over the
 * places that face the same eighth of the circle, taken as a blurred step.
 */
final class EdgeQuality {

  private static final int SAMPLES = 1600;
  private static final int SECTORS = 8;
  private static final int LEAST_IN_SECTOR = 12;
  private static final double STEP = 0.5;
  private static final double REACH = 14;
  private static final int PLACES = (int) (2 * REACH / STEP) + 1;

  /** Standard deviations between a fifth and four fifths of a step blurred by a bell. */
  private static final double FIFTHS = 2 * 0.8416;

  /** Names of the sides of the picture that an edge may face, clockwise from the right. */
  private static final List<String> SIDES =
      List.of(
          "right",
          "lower right",
          "lower",
          "lower left",
          "left",
          "upper left",
          "upper",
          "upper right");

  private final double[] blur = new double[SECTORS];

  private EdgeQuality() {}

  static EdgeQuality of(GreyImage image, Levels levels, List<TracedLoop> loops) {
    double[][] sums = new double[SECTORS][PLACES];
    int[] counts = new int[SECTORS];
    int all = loops.stream().mapToInt(TracedLoop::size).sum();
    int step = Math.max(1, all / SAMPLES);
    for (TracedLoop loop : loops) {
      for (int i = 0; i < loop.size(); i += step) {
        Point along = loop.point(i + 6).minus(loop.point(i - 6));
        if (along.norm() < 6) {
          continue;
        }
        // The template lies to the left as seen; with y downwards the way out is (-dy, dx).
        Point out = new Point(-along.y(), along.x()).times(1 / along.norm());
        double angle = Math.toDegrees(Math.atan2(out.y(), out.x()));
        int sector = Math.floorMod((int) Math.round(angle / 45), SECTORS);
        Point edge = loop.point(i);
        double ground = levels.ground(edge.x(), edge.y());
        double template = levels.template(edge.x(), edge.y());
        for (int k = 0; k < PLACES; k++) {
          double off = k * STEP - REACH;
          double light = image.lightAt(edge.x() + out.x() * off, edge.y() + out.y() * off);
          sums[sector][k] += (light - template) / (ground - template);
        }
        counts[sector]++;
      }
    }
    EdgeQuality quality = new EdgeQuality();
    for (int sector = 0; sector < SECTORS; sector++) {
      quality.blur[sector] =
          counts[sector] < LEAST_IN_SECTOR ? Double.NaN : blur(sums[sector], counts[sector]);
    }
    return quality;
  }

  /** Standard deviation of the blur that makes such a rise, pixels. */
  private static double blur(double[] sums, int count) {
    double low = crossing(sums, 0.2 * count, -1);
    double high = crossing(sums, 0.8 * count, 1);
    return (high - low) / FIFTHS;
  }

  /** How far from the edge the rise reaches a height, going out (1) or in (-1). */
  private static double crossing(double[] rise, double height, int way) {
    int middle = PLACES / 2;
    for (int k = middle; k > 0 && k < PLACES - 1; k += way) {
      double here = rise[k];
      double next = rise[k + way];
      if ((here - height) * way <= 0 && (next - height) * way > 0) {
        double share = next == here ? 0 : (height - here) / (next - here);
        return (k - middle + way * share) * STEP;
      }
    }
    return way * REACH;
  }

  /** The usual blur of the edge, pixels. */
  double blur() {
    double[] known = Arrays.stream(blur).filter(Double::isFinite).sorted().toArray();
    return known.length == 0 ? 1 : Math.max(0.3, known[(known.length - 1) / 2]);
  }

  /** The side of the picture to which the edge is much softer than elsewhere: a shadow's rim. */
  Optional<String> shadow() {
    List<String> soft = new ArrayList<>();
    for (int sector = 0; sector < SECTORS; sector++) {
      if (blur[sector] > 2 * blur() && blur[sector] > 2) {
        soft.add(SIDES.get(sector));
      }
    }
    return soft.isEmpty() ? Optional.empty() : Optional.of(String.join(" and ", soft));
  }
}
