package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.Station;

/** The words of a plan. */
final class FeedWords {

  private final GrainShares shares;
  private final Units units;

  /** Shares are those of all edges, each counted once. */
  FeedWords(GrainShares shares, Units units) {
    this.shares = shares;
    this.units = units;
  }

  String shares(Approach approach) {
    return shares("routed edge", approach);
  }

  /** Of edges that do not go through, so that turning the work over cannot help them. */
  List<String> blind(Approach approach) {
    List<String> sentences = new ArrayList<>();
    sentences.add(shares("blind edge", approach));
    if (shares.length(GrainClass.TEARS) > 0) {
      sentences.add(
          "A blind cut has one face only: where it runs against the grain, knife the line first and"
              + " take light passes.");
    }
    return sentences;
  }

  private String shares(String what, Approach approach) {
    List<String> each = new ArrayList<>();
    for (GrainClass grain : GrainClass.values()) {
      if (shares.length(grain) > 0) {
        each.add(percent(shares.length(grain)) + " is " + grain.words());
      }
    }
    return "Of "
        + Length.printRough(shares.total(), units)
        + " of "
        + what
        + ", "
        + lying(approach)
        + ", "
        + String.join(", ", each)
        + ".";
  }

  String beginsFrom(Approach approach) {
    return "Begin with face "
        + approach.up()
        + " up: from the other face nothing would be cut with the grain. The arrows are drawn for"
        + " that, seen through the wood where the picture shows the other face.";
  }

  String neverClean(List<GrainStretch> stretches) {
    boolean ends = stretches.stream().anyMatch(s -> s.grain() == GrainClass.END_GRAIN);
    boolean tears = stretches.stream().anyMatch(s -> s.grain() == GrainClass.TEARS);
    String what =
        ends && tears
            ? "End grain, and what runs against the grain where the cut does not go through,"
            : ends ? "End grain" : "What runs against the grain where the cut does not go through";
    return what
        + " is cut clean from neither face ("
        + amount(stretches)
        + "): leave no more than "
        + Length.printAtMost(GrainLimits.shipped().mm("end-grain-allowance", units), units)
        + " there and take it off with a sharp bit in light passes.";
  }

  List<FeedStep> steps(List<StepDraft> drafts) {
    List<FeedStep> steps = new ArrayList<>();
    Approach before = null;
    for (StepDraft draft : drafts) {
      boolean turns = before != null && before.up() != draft.approach().up();
      String words =
          lead(draft.approach(), before, drafts.size())
              + draft.what()
              + " ("
              + amount(draft.stretches())
              + ")"
              + draft.how()
              + blocks(draft.blocks().size())
              + "."
              + (turns ? template(draft.approach()) : "");
      steps.add(
          new FeedStep(
              steps.size() + 1, draft.approach(), turns, draft.stretches(), draft.blocks(), words));
      before = draft.approach();
    }
    return steps;
  }

  private static String lead(Approach approach, Approach before, int of) {
    if (before == null) {
      String lying = lying(approach);
      return Character.toUpperCase(lying.charAt(0))
          + lying.substring(1)
          + (of == 1 ? ", rout " : ", first rout ");
    }
    return before.up() == approach.up()
        ? "Then rout "
        : "Turn the work over; " + lying(approach) + ", rout ";
  }

  private static String lying(Approach approach) {
    return approach.station() == Station.HAND_HELD
        ? "with the router in the hand on face " + approach.up()
        : "at the table with face " + approach.up() + " up";
  }

  private static String blocks(int count) {
    if (count == 0) {
      return "";
    }
    return count == 1
        ? ", with a backing block held where the cutter leaves it"
        : ", with backing blocks held where the cutter leaves it";
  }

  private static String template(Approach approach) {
    return " Turn the template over with the work and follow it with the bearing at the bit's other"
        + " end, or fasten it to face "
        + approach.towardsRouter()
        + " on its marks.";
  }

  private String amount(List<GrainStretch> stretches) {
    double sum = stretches.stream().mapToDouble(GrainStretch::length).sum();
    return (stretches.size() == 1 ? "1 stretch, " : stretches.size() + " stretches, ")
        + percent(sum)
        + " of the edge";
  }

  private String percent(double length) {
    double percent = 100 * length / shares.total();
    return percent < 1 ? "under 1 %" : String.format(Locale.ROOT, "%.0f %%", percent);
  }
}
