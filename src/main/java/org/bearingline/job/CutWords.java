package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.cutlist.CutBoard;
import org.bearingline.length.Units;

/** What a job's cut list says on the terminal. */
final class CutWords {

  private CutWords() {}

  static List<String> lines(JobCuts cuts, String card, Units units) {
    List<String> lines = new ArrayList<>();
    lines.add("cut list: " + card);
    cuts.list().sentences().forEach(sentence -> lines.add("  " + sentence));
    cuts.packing()
        .ifPresent(
            packing -> {
              packing.sentences().forEach(sentence -> lines.add("  " + sentence));
              packing.boards().forEach(board -> lines.add("  " + board(board, units)));
            });
    cuts.notes().forEach(note -> lines.add("  " + note));
    return lines;
  }

  private static String board(CutBoard cut, Units units) {
    List<String> names =
        cut.placements().stream().map(placement -> placement.blank().name()).toList();
    return JobCard.title(cut, units) + ": " + String.join("; ", names);
  }
}
