package org.bearingline.job;

import java.util.List;
import java.util.Locale;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.Station;

/** Turns of speech shared by card, report and terminal. */
final class Words {

  /** Diameters this near, in mm, are the same to the hand: the template is the part's line. */
  private static final double FLUSH = 1e-6;

  private Words() {}

  /** In inches with millimetres beside them, for sentences of refusal. */
  static String both(double mm) {
    return Length.print(mm, Units.INCH) + " (" + Length.print(mm, Units.MM) + ")";
  }

  /** Where the router is, as a job file says it. */
  static String router(Station station) {
    return station == Station.TABLE ? "table" : "hand";
  }

  static String tool(Cutter cutter, Follower follower, Units units) {
    String bit = Length.print(cutter.diameter(), units) + " bit";
    if (isFlush(cutter, follower)) {
      return bit + " on a flush bearing";
    }
    return bit + " on a " + Length.print(follower.diameter(), units) + " " + follower.kind();
  }

  /** The tool of a part, with the router table where it belongs in one. */
  static String tool(RoutingSettings settings, Units units) {
    String tool = tool(settings.cutter(), settings.follower(), units);
    return settings.station() == Station.TABLE ? tool + " at the router table" : tool;
  }

  static boolean isFlush(Cutter cutter, Follower follower) {
    return Math.abs(cutter.diameter() - follower.diameter()) < FLUSH;
  }

  /** A small length, which must not be said to be nothing where it only rounds to nothing. */
  static String small(double mm, Units units) {
    double least = units == Units.INCH ? 25.4 / 64 : 0.01;
    return mm > 0 && mm < least ? "under " + Length.print(least, units) : Length.print(mm, units);
  }

  /** With a capital letter. */
  static String capital(String sentence) {
    return sentence.isEmpty()
        ? sentence
        : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }

  /** "a, b and c". */
  static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
