package org.bearingline.routing.grain;

import java.util.List;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** Words for the steps of a plan. */
final class FeedWords {

  private FeedWords() {}

  static String lead(int stepsBefore) {
    return stepsBefore == 0 ? "First, " : "Then, ";
  }

  static String lying(Approach approach) {
    return approach.station() == Station.HAND_HELD
        ? "router in the hand on face " + approach.up()
        : "at the table with face " + approach.up() + " up";
  }

  static String amount(List<GrainStretch> stretches, Units units) {
    double sum = stretches.stream().mapToDouble(GrainStretch::length).sum();
    String length = Length.print(sum, units);
    return stretches.size() == 1
        ? "1 stretch (" + length + ")"
        : stretches.size() + " stretches (" + length + " together)";
  }

  static String turning(Approach approach, String amount) {
    return "Turn the work over; "
        + lying(approach)
        + ", "
        + amount
        + " that would have torn before. Turn the template over with the work and follow it with"
        + " the bearing at the bit's other end, or fasten it to face "
        + approach.towardsRouter()
        + " on its marks.";
  }
}
