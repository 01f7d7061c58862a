package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The best strips of one length at once: the knapsack of pieces by their extent along the strip,
 * filled in the order of their height, knows after each height the best strip no higher than that.
 */
final class StripChoice {

  /** Steps that a strip's length is parted into; a piece takes whole ones. */
  private static final int STEPS = 600;

  private final List<StripItem> items;
  private final int[] steps;
  private final boolean[][] taken;
  private final double[] best;
  private final int most;

  /**
   * @param offered the pieces there are, each as often as it may be taken
   * @param length mm of the strip
   * @param kerf mm between pieces
   * @param effort that this costs
   */
  StripChoice(List<StripItem> offered, double length, double kerf, Effort effort) {
    items = new ArrayList<>(offered);
    items.sort(Comparator.comparingDouble(StripItem::high));
    double step = (length + kerf) / STEPS;
    most = STEPS;
    steps = new int[items.size()];
    taken = new boolean[items.size()][];
    best = new double[items.size()];
    double[] worth = new double[most + 1];
    for (int i = 0; i < items.size(); i++) {
      StripItem item = items.get(i);
      // A piece that fills the strip to the last bit still fits.
      int size = (int) Math.ceil((item.along() + kerf) / step - 1e-6);
      steps[i] = size;
      taken[i] = new boolean[most + 1];
      effort.spend(Math.max(1, most - size));
      for (int at = most; at >= size; at--) {
        double with = worth[at - size] + item.worth();
        if (with > worth[at]) {
          worth[at] = with;
          taken[i][at] = true;
        }
      }
      best[i] = worth[most];
    }
  }

  /**
   * One strip.
   *
   * @param high mm
   * @param last number of the highest piece that it may hold
   * @param worth of its pieces
   */
  record Strip(double high, int last, double worth) {}

  /** The best strip of each height, from the lowest; heights that win nothing are left out. */
  List<Strip> strips(double most) {
    List<Strip> strips = new ArrayList<>();
    double before = 0;
    for (int i = 0; i < items.size() && items.get(i).high() <= most + CuttingTask.ROUNDING; i++) {
      boolean highestOfAlike =
          i + 1 == items.size() || items.get(i + 1).high() > items.get(i).high();
      if (highestOfAlike && best[i] > before) {
        strips.add(new Strip(items.get(i).high(), i, best[i]));
        before = best[i];
      }
    }
    return strips;
  }

  /** The pieces of a strip, the highest first. */
  List<StripItem> pieces(Strip strip) {
    List<StripItem> pieces = new ArrayList<>();
    int at = most;
    for (int i = strip.last(); i >= 0; i--) {
      if (taken[i][at]) {
        pieces.add(items.get(i));
        at -= steps[i];
      }
    }
    return pieces;
  }
}
