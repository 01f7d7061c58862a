package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.Reach;

/** Says in words what bits reach. */
final class ReachWords {

  /** No router bit is fatter, in mm (3-1/2 in, the end of the tables of bit speed). */
  private static final double FATTEST_BIT = 88.9;

  private ReachWords() {}

  static List<String> lines(List<ReachJob.Row> rows, Units units) {
    List<String> lines = new ArrayList<>();
    String part = null;
    for (ReachJob.Row row : rows) {
      if (!row.part().name().equals(part)) {
        part = row.part().name();
        lines.add(part + ": " + largest(row.largest(), units));
        if (row.order().shape() instanceof DrawnDesign design) {
          lines.addAll(DrawnWords.lines(design, units));
        }
      }
      lines.addAll(lines(row.reach(), units));
    }
    return lines;
  }

  /** One sentence on the fattest cutter. */
  static String largest(LargestCutter largest, Units units) {
    OptionalDouble diameter = largest.diameter();
    if (diameter.isEmpty()) {
      return "no inside corner or neck limits the bit.";
    }
    if (diameter.getAsDouble() == 0) {
      return "a sharp inside corner leaves something with every bit.";
    }
    if (diameter.getAsDouble() > FATTEST_BIT) {
      return "any router bit leaves nothing (the tightest inside curve is R "
          + Length.print(diameter.getAsDouble() / 2, units)
          + ").";
    }
    return "the largest bit that leaves nothing is "
        + Length.print(diameter.getAsDouble(), units)
        + ".";
  }

  /** The same of a part whose operations have a bit each. */
  static String largestForAll(LargestCutter largest, Units units) {
    OptionalDouble diameter = largest.diameter();
    boolean limited =
        diameter.isPresent() && diameter.getAsDouble() > 0 && diameter.getAsDouble() <= FATTEST_BIT;
    return limited
        ? "its tightest place takes a bit of "
            + Length.print(diameter.getAsDouble(), units)
            + " at most."
        : largest(largest, units);
  }

  /** The tool, and one line for each leftover. */
  static List<String> lines(Reach reach, Units units) {
    List<String> lines = new ArrayList<>();
    int count = reach.leftovers().size();
    String tool = Words.tool(reach.cutter(), reach.follower(), units);
    lines.add(
        "  "
            + tool
            + ": "
            + (count == 0
                ? "leaves nothing."
                : count == 1 ? "1 place out of reach:" : count + " places out of reach:"));
    for (Leftover leftover : reach.leftovers()) {
      lines.add("    " + leftover(leftover, units));
    }
    for (String caution : reach.cautions()) {
      lines.add("    " + caution);
    }
    return lines;
  }

  static String leftover(Leftover leftover, Units units) {
    String radius =
        leftover.insideRadius() == 0
            ? "sharp"
            : "inside radius " + Length.print(leftover.insideRadius(), units);
    return leftover.number()
        + "  "
        + leftover.kind().word()
        + " at "
        + Length.printRough(leftover.at().x(), units)
        + ", "
        + Length.printRough(leftover.at().y(), units)
        + "; depth "
        + Words.small(leftover.depth(), units)
        + "; area "
        + Length.printRoughArea(leftover.area(), units)
        + "; "
        + radius;
  }
}
