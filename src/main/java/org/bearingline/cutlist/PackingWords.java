package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bearingline.length.Length;
import org.bearingline.length.Units;

/** What a packing says to the maker. */
final class PackingWords {

  private final List<Board> boards;
  private final SawRules rules;
  private final Units units;

  PackingWords(List<Board> boards, SawRules rules, Units units) {
    this.boards = boards;
    this.rules = rules;
    this.units = units;
  }

  /** Why blanks found no board, and what would do. */
  String reason(Blank blank, int count) {
    String what = (count == 1 ? "" : count + " × ") + blank.name() + ", " + size(blank);
    List<Board> serving = boards.stream().filter(b -> b.serves(blank, rules)).toList();
    if (serving.isEmpty()) {
      return what + ": no board of its material and thickness is listed; add one.";
    }
    if (serving.stream().noneMatch(board -> TaskSplit.fits(blank, board, rules))) {
      Optional<Board> longest = serving.stream().max(Comparator.comparingDouble(Board::length));
      return what
          + ": larger than every board listed, trimmed"
          + longest.map(b -> "; the longest is " + b.name() + ", " + size(b)).orElse("")
          + (blank.mayTurn() ? "." : "; it may not lie across the grain.");
    }
    return what + ": the boards listed are used up; add one at least that large.";
  }

  List<String> sentences(List<CutBoard> cut, List<LeftOut> leftOut, Bound bound) {
    List<String> sentences = new ArrayList<>();
    if (!cut.isEmpty()) {
      sentences.add(bestness(bound));
      sentences.add(
          "Every cut goes right through; "
              + Length.print(rules.kerf(), units)
              + " is left for the saw between pieces"
              + (rules.trim() > 0
                  ? ", and " + Length.print(rules.trim(), units) + " comes off each board's edges"
                  : "")
              + ".");
    }
    if (!leftOut.isEmpty()) {
      sentences.add("These found no board:");
      leftOut.forEach(rest -> sentences.add(rest.reason()));
    }
    return sentences;
  }

  private static String bestness(Bound bound) {
    String uses = "Cuts into " + counted(bound.boards());
    if (bound.proven()) {
      String fewer =
          bound.boards() == bound.leastBoards()
              ? ", the fewest that can do"
              : "; " + counted(bound.leastBoards()) + " could do, of more area";
      return uses + fewer + ": every way of cutting straight through was tried.";
    }
    String fewer =
        bound.boards() == bound.leastBoards()
            ? "; no fewer can do"
            : "; no fewer than " + bound.leastBoards() + " can do";
    double percent = Math.ceil(bound.gap() * 100 - 1e-6);
    String area =
        percent <= 0
            ? ", and none do with less board."
            : String.format(
                Locale.ROOT, ", and the board area is within %.0f %% of the least.", percent);
    return uses + fewer + area;
  }

  private static String counted(int boards) {
    return boards == 1 ? "1 board" : boards + " boards";
  }

  private String size(Blank blank) {
    return size(blank.length(), blank.width());
  }

  private String size(Board board) {
    return size(board.length(), board.width());
  }

  private String size(double length, double width) {
    return Length.print(length, units) + " × " + Length.print(width, units);
  }
}
