package org.bearingline.cutlist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.bearingline.Seed;
import org.bearingline.length.Units;

class PackingPropertyTest {

  @Property(tries = 60, seed = Seed.FIXED)
  void whatIsLaidOutCanBeSawn(
      @ForAll("manyBlanks") List<Blank> sizes,
      @ForAll("offcuts") List<Board> stock,
      @ForAll("rules") SawRules rules) {
    List<Blank> blanks = named(sizes);
    List<Board> boards = namedBoards(stock);
    PackingResult result = Packing.pack(blanks, boards, rules, Units.MM);
    LayoutCheck.check(blanks, boards, rules, result);
  }

  @Property(tries = 60, seed = Seed.FIXED)
  void fewPiecesToo(
      @ForAll("fewBlanks") List<Blank> sizes,
      @ForAll("offcuts") List<Board> stock,
      @ForAll("rules") SawRules rules) {
    List<Blank> blanks = named(sizes);
    List<Board> boards = namedBoards(stock);
    PackingResult result = Packing.pack(blanks, boards, rules, Units.MM);
    LayoutCheck.check(blanks, boards, rules, result);
    assertTrue(result.bound().proven());
  }

  @Property(tries = 20, seed = Seed.FIXED)
  void theSameTwice(@ForAll("manyBlanks") List<Blank> sizes, @ForAll("offcuts") List<Board> stock) {
    List<Blank> blanks = named(sizes);
    List<Board> boards = namedBoards(stock);
    assertEquals(
        Packing.pack(blanks, boards, SawRules.usual(), Units.MM),
        Packing.pack(blanks, boards, SawRules.usual(), Units.MM));
  }

  @Property(tries = 150, seed = Seed.FIXED)
  void fewPiecesAreCutFromTheLeastBoardThatTryingEveryCutFinds(
      @ForAll("smallBlanks") List<Blank> sizes, @ForAll("smallBoards") List<Board> stock) {
    List<Blank> blanks = named(sizes);
    List<Board> boards = namedBoards(stock);
    double least = new CutPositions(blanks, 1).leastArea(boards);
    PackingResult result = Packing.pack(blanks, boards, new SawRules(1, 0, 0), Units.MM);
    if (Double.isInfinite(least)) {
      assertFalse(result.isComplete());
    } else {
      assertTrue(result.isComplete());
      assertEquals(least, result.bound().area(), 1e-6);
      assertEquals(least, result.bound().leastArea(), 1e-6);
    }
  }

  @Property(tries = 150, seed = Seed.FIXED)
  void lowerBoundsOfTheSearchForManyPiecesHold(
      @ForAll("smallBlanks") List<Blank> sizes, @ForAll("smallBoards") List<Board> stock) {
    List<Blank> blanks = named(sizes);
    List<Board> boards = namedBoards(stock);
    double least = new CutPositions(blanks, 1).leastArea(boards);
    if (Double.isInfinite(least)) {
      return;
    }
    SawRules rules = new SawRules(1, 0, 0);
    double bound = 0;
    double found = 0;
    for (CuttingTask task : TaskSplit.tasks(blanks, boards, rules)) {
      HeuristicSearch.Found search = HeuristicSearch.search(task);
      bound += search.leastArea();
      found += search.layout().isComplete() ? search.layout().boardArea(task) : 1e9;
      ExactSearch.search(task)
          .ifPresent(exact -> assertTrue(search.leastBoards() <= exact.leastBoards()));
    }
    assertTrue(bound <= least + 1e-6, bound + " is no lower bound of " + least);
    assertTrue(found >= least - 1e-6);
  }

  @Provide
  Arbitrary<List<Blank>> manyBlanks() {
    return blank(40, 900, 30, 250, 6).list().ofMinSize(8).ofMaxSize(14);
  }

  @Provide
  Arbitrary<List<Blank>> fewBlanks() {
    return blank(40, 900, 30, 250, 1).list().ofMaxSize(6);
  }

  @Provide
  Arbitrary<List<Blank>> smallBlanks() {
    return blank(1, 6, 1, 5, 1).list().ofMinSize(1).ofMaxSize(5);
  }

  @Provide
  Arbitrary<List<Board>> smallBoards() {
    return board(3, 9, 2, 8, 2).list().ofMinSize(1).ofMaxSize(3);
  }

  @Provide
  Arbitrary<List<Board>> offcuts() {
    return board(300, 2400, 100, 600, 4).list().ofMaxSize(5);
  }

  @Provide
  Arbitrary<SawRules> rules() {
    return Combinators.combine(Arbitraries.of(0.0, 1.6, 3.175), Arbitraries.of(0.0, 6.35, 20.0))
        .as((kerf, trim) -> new SawRules(kerf, trim, 6.35));
  }

  private static Arbitrary<Blank> blank(
      int shortest, int longest, int narrowest, int widest, int most) {
    return Combinators.combine(
            Arbitraries.integers().between(shortest, longest),
            Arbitraries.integers().between(narrowest, widest),
            Arbitraries.integers().between(1, most),
            Arbitraries.of(true, false))
        .as(
            (length, width, count, turns) ->
                turns
                    ? Blanks.turning("", length, width, count)
                    : Blanks.grained("", length, width, count));
  }

  private static Arbitrary<Board> board(
      int shortest, int longest, int narrowest, int widest, int most) {
    return Combinators.combine(
            Arbitraries.integers().between(shortest, longest),
            Arbitraries.integers().between(narrowest, widest),
            Arbitraries.integers().between(1, most))
        .as((length, width, count) -> Blanks.board("", length, width, count));
  }

  private static List<Blank> named(List<Blank> blanks) {
    List<Blank> named = new ArrayList<>();
    for (Blank b : blanks) {
      named.add(
          new Blank(
              "piece-" + named.size(),
              Purpose.PART,
              b.length(),
              b.width(),
              OptionalDouble.empty(),
              Optional.empty(),
              b.quantity(),
              b.mayTurn()));
    }
    return named;
  }

  private static List<Board> namedBoards(List<Board> boards) {
    List<Board> named = new ArrayList<>();
    for (Board b : boards) {
      named.add(Blanks.board("board-" + named.size(), b.length(), b.width(), b.quantity()));
    }
    return named;
  }
}
