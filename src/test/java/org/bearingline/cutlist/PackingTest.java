package org.bearingline.cutlist;

import static org.bearingline.cutlist.Blanks.board;
import static org.bearingline.cutlist.Blanks.grained;
import static org.bearingline.cutlist.Blanks.turning;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.length.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackingTest {

  private static final SawRules RULES = new SawRules(3, 0, 6.35);

  private static PackingResult pack(List<Blank> blanks, List<Board> boards, SawRules rules) {
    PackingResult result = Packing.pack(blanks, boards, rules, Units.MM);
    LayoutCheck.check(blanks, boards, rules, result);
    return result;
  }

  /** n pieces of length l with a kerf k between them take n l + (n − 1) k of a strip. */
  @ParameterizedTest
  @CsvSource({"1", "2", "7", "30", "61"})
  void equalPiecesFillAStripToTheLastBit(int n) {
    double length = n * 100.1 + (n - 1) * 3;
    PackingResult exact =
        pack(List.of(grained("slat", 100.1, 40, n)), List.of(board("strip", length, 40, 9)), RULES);
    assertEquals(1, exact.boards().size());
    PackingResult short1 =
        pack(
            List.of(grained("slat", 100.1, 40, n)),
            List.of(board("strip", length - 0.01, 40, 9)),
            RULES);
    assertEquals(n == 1 ? 0 : 2, short1.boards().size());
    assertEquals(n == 1 ? 0 : 2, short1.bound().leastBoards());
  }

  @Test
  void equalPiecesInAGridTakeTheBoardsThatCountingGives() {
    // Five across and four up on each board, so 100 pieces want five boards.
    PackingResult result =
        pack(List.of(grained("tile", 200, 97, 100)), List.of(board("sheet", 1012, 397, 8)), RULES);
    assertEquals(5, result.boards().size());
    assertEquals(5, result.bound().leastBoards());
    assertEquals(0, result.bound().gap(), 1e-12);
  }

  @Test
  void aPieceAcrossTheGrainIsRefusedAndATemplateIsTurned() {
    List<Board> boards = List.of(board("offcut", 100, 400, 1));
    PackingResult grained = pack(List.of(grained("rail", 300, 60, 1)), boards, RULES);
    assertFalse(grained.isComplete());
    assertTrue(grained.leftOut().get(0).reason().contains("may not lie across the grain"));
    PackingResult turned = pack(List.of(turning("plate", 300, 60, 1)), boards, RULES);
    assertTrue(turned.boards().get(0).placements().get(0).turned());
  }

  @Test
  void whatDidNotFitIsNamedWithItsCount() {
    PackingResult result =
        pack(List.of(grained("leg", 700, 50, 4)), List.of(board("offcut", 720, 110, 1)), RULES);
    assertEquals(1, result.leftOut().size());
    assertEquals(2, result.leftOut().get(0).count());
    assertEquals(
        "2 × leg, 700 mm × 50 mm: the boards listed are used up; add one at least that large.",
        result.leftOut().get(0).reason());
  }

  @Test
  void noBoardsAtAllLeaveEverythingOut() {
    PackingResult result = pack(List.of(grained("leg", 700, 50, 4)), List.of(), RULES);
    assertEquals(4, result.leftOut().get(0).count());
    assertTrue(result.boards().isEmpty());
  }

  @Test
  void trimIsTakenOffEveryEdge() {
    List<Blank> one = List.of(grained("rail", 480, 80, 1));
    List<Board> boards = List.of(board("rough", 500, 100, 1));
    assertTrue(pack(one, boards, new SawRules(3, 10, 0)).isComplete());
    assertFalse(pack(one, boards, new SawRules(3, 10.1, 0)).isComplete());
  }

  /** Four 3 × 2 about a hole in 5 × 5: the classic layout that no straight cut can begin. */
  @Test
  void aPinwheelWantsTwoBoardsWhenSawnAndOneByTheLowerBound() {
    List<Blank> blanks = List.of(turning("piece", 300, 200, 4));
    List<Board> boards = List.of(board("square", 500, 500, 4));
    PackingResult result = pack(blanks, boards, new SawRules(0, 0, 0));
    assertEquals(2, result.bound().boards());
    CuttingTask task = TaskSplit.tasks(blanks, boards, new SawRules(0, 0, 0)).get(0);
    assertEquals(1, new LowerBounds(task, new int[] {4}).boards());
  }

  @Test
  void piecesWiderThanHalfTheBoardCannotLieAboveEachOther() {
    // By area four boards would do: 5 of 600 × 110 are 0.33 m², a board 0.2 m².
    List<Blank> blanks = List.of(grained("wide", 600, 110, 5));
    List<Board> boards = List.of(board("plank", 1000, 200, 9));
    CuttingTask task = TaskSplit.tasks(blanks, boards, RULES).get(0);
    assertEquals(5, new LowerBounds(task, new int[] {5}).boards());
    assertEquals(5, pack(blanks, boards, RULES).bound().boards());
  }

  @Test
  void smallOffcutsAreTakenBeforeALargeBoard() {
    PackingResult result =
        pack(
            List.of(grained("stile", 600, 60, 2), grained("rail", 300, 60, 2)),
            List.of(
                board("plank", 2400, 200, 1),
                board("offcut", 640, 125, 1),
                board("short", 310, 125, 1)),
            RULES);
    assertEquals(2, result.boards().size());
    assertTrue(result.boards().stream().noneMatch(cut -> cut.board().name().equals("plank")));
  }

  @Test
  void materialAndThicknessMustServe() {
    Blank oak = blank("white oak", 22);
    assertTrue(pack(List.of(oak), List.of(plank("White Oak ", 25.4)), RULES).isComplete());
    assertFalse(pack(List.of(oak), List.of(plank("walnut", 25.4)), RULES).isComplete());
    assertFalse(pack(List.of(oak), List.of(plank("white oak", 19)), RULES).isComplete());
    assertFalse(pack(List.of(oak), List.of(plank("white oak", 44)), RULES).isComplete());
  }

  /** A planer thins a board, and nobody thins a sheet. */
  @Test
  void aPlateIsCutFromASheetOfItsThickness() {
    assertTrue(pack(List.of(plate(12)), List.of(sheet(12.3)), RULES).isComplete());
    assertFalse(pack(List.of(plate(12)), List.of(sheet(6)), RULES).isComplete());
    PackingResult thicker = pack(List.of(plate(12)), List.of(sheet(18)), RULES);
    assertTrue(thicker.leftOut().get(0).reason().contains("thickness"));
  }

  private static Blank plate(double thickness) {
    return new Blank(
        "rail, template",
        Purpose.TEMPLATE,
        300,
        50,
        OptionalDouble.of(thickness),
        Optional.empty(),
        1,
        true);
  }

  private static Board sheet(double thickness) {
    return new Board(
        "sheet", Purpose.TEMPLATE, 500, 100, OptionalDouble.of(thickness), Optional.empty(), 1);
  }

  private static Blank blank(String material, double thickness) {
    return new Blank(
        "rail",
        Purpose.PART,
        300,
        50,
        OptionalDouble.of(thickness),
        Optional.of(material),
        1,
        false);
  }

  private static Board plank(String material, double thickness) {
    return new Board(
        "plank", Purpose.PART, 500, 100, OptionalDouble.of(thickness), Optional.of(material), 1);
  }

  @Test
  void anOffcutWorthKeepingStaysInOnePiece() {
    PackingResult result =
        pack(List.of(grained("rail", 300, 60, 1)), List.of(board("plank", 1000, 200, 1)), RULES);
    CutBoard cut = result.boards().get(0);
    // 697 × 200 beside, 300 × 137 above; the other way round 1000 × 137 and 697 × 60.
    assertEquals(697 * 200, cut.offcuts().get(0).width() * cut.offcuts().get(0).height(), 1e-6);
    assertEquals(2, cut.cuts().size());
    assertEquals(300, cut.cuts().get(0).setting(), 1e-9);
  }

  @Test
  void aHundredDifferentPiecesAreLaidOutNearTheBound() {
    List<Blank> blanks = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      blanks.add(grained("piece-" + i, 200 + (i * 37) % 701, 40 + (i * 53) % 131, 1));
    }
    PackingResult result =
        pack(
            blanks,
            List.of(board("plank", 2400, 250, 40), board("offcut", 1100, 180, 6)),
            SawRules.usual());
    assertTrue(result.isComplete());
    assertTrue(result.bound().gap() < 0.10, "gap " + result.bound().gap());
  }
}
