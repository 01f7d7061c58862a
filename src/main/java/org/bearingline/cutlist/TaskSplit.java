package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Parts blanks and boards into tasks that have nothing to do with each other: wood and sheet, one
 * thickness and another.
 */
final class TaskSplit {

  private TaskSplit() {}

  /** Blanks of equal size and needs, whatever is made of them. */
  private record Like(
      Purpose purpose, double length, double width, Object thickness, Object material, boolean t) {
    static Like of(Blank blank) {
      return new Like(
          blank.purpose(),
          blank.length(),
          blank.width(),
          blank.thickness(),
          blank.material(),
          blank.mayTurn());
    }
  }

  /** The tasks; blanks that fit no board at all are in none of them. */
  static List<CuttingTask> tasks(List<Blank> blanks, List<Board> boards, SawRules rules) {
    Map<Like, List<Blank>> kinds = new LinkedHashMap<>();
    for (Blank blank : blanks) {
      if (boards.stream().anyMatch(board -> fits(blank, board, rules))) {
        kinds.computeIfAbsent(Like.of(blank), like -> new ArrayList<>()).add(blank);
      }
    }
    List<List<Blank>> alike = new ArrayList<>(kinds.values());
    int[] group = groups(alike, boards, rules);
    Map<Integer, List<List<Blank>>> byGroup = new TreeMap<>();
    for (int i = 0; i < alike.size(); i++) {
      byGroup.computeIfAbsent(group[i], g -> new ArrayList<>()).add(alike.get(i));
    }
    return byGroup.values().stream().map(members -> task(members, boards, rules)).toList();
  }

  static boolean fits(Blank blank, Board board, SawRules rules) {
    double length = board.length() - 2 * rules.trim() + CuttingTask.ROUNDING;
    double width = board.width() - 2 * rules.trim() + CuttingTask.ROUNDING;
    boolean lies = blank.length() <= length && blank.width() <= width;
    boolean liesAcross = blank.mayTurn() && blank.width() <= length && blank.length() <= width;
    return (lies || liesAcross) && board.serves(blank, rules);
  }

  /** Kinds that fit a common board get the same number, and so on through others. */
  private static int[] groups(List<List<Blank>> alike, List<Board> boards, SawRules rules) {
    int[] group = new int[alike.size()];
    Arrays.setAll(group, i -> i);
    for (Board board : boards) {
      int first = -1;
      for (int i = 0; i < group.length; i++) {
        if (fits(alike.get(i).get(0), board, rules)) {
          first = first < 0 ? group[i] : first;
          int from = group[i];
          for (int j = 0; j < group.length; j++) {
            group[j] = group[j] == from ? first : group[j];
          }
        }
      }
    }
    return group;
  }

  private static CuttingTask task(List<List<Blank>> alike, List<Board> boards, SawRules rules) {
    List<PieceKind> kinds = new ArrayList<>();
    for (List<Blank> members : alike) {
      List<PieceKind.Single> singles = new ArrayList<>();
      for (Blank blank : members) {
        for (int number = 1; number <= blank.quantity(); number++) {
          singles.add(new PieceKind.Single(blank, number));
        }
      }
      Blank model = members.get(0);
      kinds.add(new PieceKind(model.length(), model.width(), model.mayTurn(), singles));
    }
    int pieces = kinds.stream().mapToInt(PieceKind::count).sum();
    List<StockBoard> stock = new ArrayList<>();
    for (Board board : boards) {
      if (alike.stream().anyMatch(members -> fits(members.get(0), board, rules))) {
        // More boards of a size than pieces are never needed.
        for (int number = 1; number <= Math.min(board.quantity(), pieces); number++) {
          double trims = 2 * rules.trim();
          stock.add(new StockBoard(board, number, board.length() - trims, board.width() - trims));
        }
      }
    }
    boolean[][] serves = new boolean[kinds.size()][stock.size()];
    for (int kind = 0; kind < kinds.size(); kind++) {
      for (int board = 0; board < stock.size(); board++) {
        serves[kind][board] = stock.get(board).board().serves(alike.get(kind).get(0), rules);
      }
    }
    return new CuttingTask(kinds, stock, serves, rules.kerf());
  }
}
