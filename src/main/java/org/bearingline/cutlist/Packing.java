package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;

/**
 * Lays blanks out on boards so that every cut goes right through the piece it is made in, as a
 * table saw rips and a mitre saw crosscuts.
 *
 * <p>Few pieces are tried in every such way ({@link ExactSearch}), and the result is the best there
 * is. For many, some 170 rules of filling ({@link BoardFill}) and boards filled one after the other
 * with strips, each a knapsack of pieces ({@link BoardByBoard}), give first layouts; the emptiest
 * boards are then laid out anew with others ({@link Repacking}), and sets of boards are tried in
 * the order of their area ({@link HeuristicSearch}). Lower bounds ({@link LowerBounds}) say how far
 * from the best the result can be at most. The work is counted in steps, so that a task has the
 * same layout everywhere.
 */
public final class Packing {

  private Packing() {}

  /**
   * The layout with the least blank area left out, then the least board area cut into, then the
   * fewest boards, that was found. Blanks that must keep to the grain lie along their boards.
   *
   * @param units for the sentences
   */
  public static PackingResult pack(
      List<Blank> blanks, List<Board> boards, SawRules rules, Units units) {
    List<CutBoard> cut = new ArrayList<>();
    Map<Blank, Integer> unplaced = new LinkedHashMap<>();
    for (Blank blank : blanks) {
      unplaced.merge(blank, blank.quantity(), Integer::sum);
    }
    Bound bound = new Bound(0, 0, 0, 0, true);
    for (CuttingTask task : TaskSplit.tasks(blanks, boards, rules)) {
      var exact = ExactSearch.search(task);
      HeuristicSearch.Found found = exact.orElseGet(() -> HeuristicSearch.search(task));
      Layout layout = found.layout();
      cut.addAll(boards(task, layout, rules, unplaced));
      bound =
          new Bound(
              bound.boards() + layout.boardCount(),
              bound.leastBoards() + found.leastBoards(),
              bound.area() + layout.boardArea(task),
              bound.leastArea() + found.leastArea(),
              bound.proven() && exact.isPresent());
    }
    PackingWords words = new PackingWords(boards, rules, units);
    List<LeftOut> leftOut = new ArrayList<>();
    unplaced.forEach(
        (blank, count) -> {
          if (count > 0) {
            leftOut.add(new LeftOut(blank, count, words.reason(blank, count)));
          }
        });
    return new PackingResult(cut, leftOut, bound, words.sentences(cut, leftOut, bound));
  }

  private static List<CutBoard> boards(
      CuttingTask task, Layout layout, SawRules rules, Map<Blank, Integer> unplaced) {
    int[] next = new int[task.kinds().size()];
    Map<Board, Integer> taken = new LinkedHashMap<>();
    List<CutBoard> cut = new ArrayList<>();
    for (int board = 0; board < task.boards().size(); board++) {
      List<Layout.Laid> laid = layout.onBoard().get(board);
      if (laid.isEmpty()) {
        continue;
      }
      StockBoard on = task.boards().get(board);
      List<Placement> placements = new ArrayList<>();
      for (Layout.Laid piece : laid) {
        PieceKind kind = task.kinds().get(piece.kind());
        PieceKind.Single single = kind.pieces().get(next[piece.kind()]++);
        unplaced.merge(single.blank(), -1, Integer::sum);
        placements.add(
            new Placement(
                single.blank(), single.number(), box(kind, piece, rules.trim()), piece.turned()));
      }
      Bounds usable =
          new Bounds(
              rules.trim(), rules.trim(), rules.trim() + on.length(), rules.trim() + on.width());
      CutSequence.Sawn sawn =
          CutSequence.of(usable, placements.stream().map(Placement::at).toList(), rules.kerf());
      // Of boards that are alike the first ones are named, whichever the search took.
      int number = taken.merge(on.board(), 1, Integer::sum);
      cut.add(new CutBoard(on.board(), number, placements, sawn.cuts(), sawn.offcuts()));
    }
    return cut;
  }

  private static Bounds box(PieceKind kind, Layout.Laid piece, double trim) {
    double length = piece.turned() ? kind.width() : kind.length();
    double width = piece.turned() ? kind.length() : kind.width();
    double x = trim + piece.x();
    double y = trim + piece.y();
    return new Bounds(x, y, x + length, y + width);
  }
}
