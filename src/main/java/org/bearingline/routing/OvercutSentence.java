package org.bearingline.routing;

import java.util.List;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** Tells what a follower wider than its cutter does to outside corners. */
final class OvercutSentence {

  private OvercutSentence() {}

  static List<String> of(Reach reach, Units units) {
    if (reach.overcuts().isEmpty()) {
      return List.of();
    }
    double wider = reach.follower().radius() - reach.cutter().radius();
    int count = reach.overcuts().size();
    return List.of(
        (count == 1 ? "One outside corner comes" : count + " outside corners come")
            + " out rounded to "
            + Length.print(wider, units)
            + ", by which the "
            + reach.follower().kind()
            + " stands out beyond the bit: follow with a bearing as wide as the bit, or work the"
            + " corner by hand.");
  }
}
