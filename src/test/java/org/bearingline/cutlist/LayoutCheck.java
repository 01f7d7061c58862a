package org.bearingline.cutlist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bearingline.outline.Bounds;

/** Checks a packing against what a shop could saw, by boxes alone. */
final class LayoutCheck {

  private static final double NEAR = 1e-4;

  private LayoutCheck() {}

  static void check(List<Blank> blanks, List<Board> boards, SawRules rules, PackingResult result) {
    everyPieceOnce(blanks, result);
    Set<String> used = new HashSet<>();
    for (CutBoard cut : result.boards()) {
      assertTrue(cut.number() <= cut.board().quantity(), "a board that is not there");
      assertTrue(used.add(cut.board() + "/" + cut.number()), "one board used twice");
      assertTrue(boards.contains(cut.board()));
      assertFalse(cut.placements().isEmpty(), "a board without a piece");
      onOneBoard(cut, rules);
      sawingFreesEveryPiece(cut, rules);
    }
    Bound bound = result.bound();
    assertEquals(result.boards().size(), bound.boards());
    assertTrue(bound.leastBoards() <= bound.boards());
    assertTrue(bound.leastArea() <= bound.area() * (1 + 1e-9));
    double pieces = result.boards().stream().mapToDouble(CutBoard::usedArea).sum();
    assertTrue(bound.leastArea() >= pieces * (1 - 1e-5), "the area bound");
  }

  private static void everyPieceOnce(List<Blank> blanks, PackingResult result) {
    for (Blank blank : blanks) {
      Set<Integer> numbers = new HashSet<>();
      for (CutBoard cut : result.boards()) {
        for (Placement placement : cut.placements()) {
          if (placement.blank().equals(blank)) {
            assertTrue(numbers.add(placement.number()), "placed twice: " + placement);
          }
        }
      }
      int left = 0;
      for (LeftOut rest : result.leftOut()) {
        left += rest.blank().equals(blank) ? rest.count() : 0;
      }
      assertEquals(blank.quantity(), numbers.size() + left, blank.name());
    }
  }

  private static void onOneBoard(CutBoard cut, SawRules rules) {
    List<Placement> all = cut.placements();
    for (int i = 0; i < all.size(); i++) {
      Placement here = all.get(i);
      Bounds at = here.at();
      Blank blank = here.blank();
      assertTrue(blank.mayTurn() || !here.turned(), "turned across the grain");
      assertEquals(here.turned() ? blank.width() : blank.length(), at.width(), NEAR);
      assertEquals(here.turned() ? blank.length() : blank.width(), at.height(), NEAR);
      assertTrue(at.minX() >= rules.trim() - NEAR && at.minY() >= rules.trim() - NEAR);
      assertTrue(at.maxX() <= cut.board().length() - rules.trim() + NEAR);
      assertTrue(at.maxY() <= cut.board().width() - rules.trim() + NEAR);
      for (int j = i + 1; j < all.size(); j++) {
        Bounds other = all.get(j).at();
        double apart =
            Math.max(
                Math.max(other.minX() - at.maxX(), at.minX() - other.maxX()),
                Math.max(other.minY() - at.maxY(), at.minY() - other.maxY()));
        assertTrue(apart >= rules.kerf() - NEAR, "too near: " + at + " and " + other);
      }
    }
  }

  /** Plays the cuts on the board and looks whether what is left in the end is the pieces. */
  private static void sawingFreesEveryPiece(CutBoard cut, SawRules rules) {
    List<Bounds> loose = new ArrayList<>();
    double trim = rules.trim();
    loose.add(new Bounds(trim, trim, cut.board().length() - trim, cut.board().width() - trim));
    for (SawCut saw : cut.cuts()) {
      Bounds piece = saw.piece();
      assertTrue(loose.removeIf(box -> same(box, piece)), "sawn what is not loose");
      double half = rules.kerf() / 2;
      if (saw.direction() == SawCut.Direction.CROSSCUT) {
        double x = saw.from().x();
        add(loose, piece.minX(), piece.minY(), x - half, piece.maxY());
        add(loose, x + half, piece.minY(), piece.maxX(), piece.maxY());
      } else {
        double y = saw.from().y();
        add(loose, piece.minX(), piece.minY(), piece.maxX(), y - half);
        add(loose, piece.minX(), y + half, piece.maxX(), piece.maxY());
      }
    }
    for (Placement placement : cut.placements()) {
      assertTrue(
          loose.stream().anyMatch(box -> same(box, placement.at())), "not free: " + placement);
    }
    for (Bounds offcut : cut.offcuts()) {
      assertTrue(loose.stream().anyMatch(box -> same(box, offcut)), "no offcut: " + offcut);
    }
  }

  private static void add(List<Bounds> loose, double x, double y, double endX, double endY) {
    if (endX - x > NEAR && endY - y > NEAR) {
      loose.add(new Bounds(x, y, endX, endY));
    }
  }

  private static boolean same(Bounds a, Bounds b) {
    return Math.abs(a.minX() - b.minX()) < NEAR
        && Math.abs(a.minY() - b.minY()) < NEAR
        && Math.abs(a.maxX() - b.maxX()) < NEAR
        && Math.abs(a.maxY() - b.maxY()) < NEAR;
  }
}
