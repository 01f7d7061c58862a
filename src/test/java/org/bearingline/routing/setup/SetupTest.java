package org.bearingline.routing.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import org.bearingline.kit.Bit.BearingSeat;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.length.Units;
import org.bearingline.problem.Problem;
import org.bearingline.routing.operation.Face;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Depths, spacers and thicknesses worked by hand, in inches for round figures. */
class SetupTest {

  private static final double IN = 25.4;
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** A 1/2 in bit, its bearing 1/4 in tall: contact is 1/8 in. */
  private static SetupTool bit(double cuttingInches, BearingSeat seat, double bearingInches) {
    return new SetupTool(
        new Cutter(IN / 2),
        OptionalDouble.of(cuttingInches * IN),
        new Follower.Bearing(bearingInches * IN),
        seat,
        OptionalDouble.of(IN / 4),
        NONE);
  }

  private static SetupTool collar(double tubeInches) {
    return new SetupTool(
        new Cutter(IN / 4),
        OptionalDouble.of(IN),
        new Follower.Collar(IN / 2),
        BearingSeat.NONE,
        NONE,
        OptionalDouble.of(tubeInches * IN));
  }

  private static SetupRequest ask(SetupTool tool, double depthInches, double templateInches) {
    return new SetupRequest(
        "edge",
        tool,
        Face.A,
        depthInches * IN,
        true,
        templateInches == 0 ? NONE : OptionalDouble.of(templateInches * IN),
        NONE);
  }

  private static Setup setup(SetupTool tool, double depth, double template) {
    return Setup.of(ask(tool, depth, template), Units.INCH);
  }

  private static String refusal(SetupRequest request) {
    return assertThrows(Problem.class, () -> Setup.of(request, Units.INCH)).getMessage();
  }

  private static List<Double> inches(Setup setup, ToDoubleFunction<SetupPass> f) {
    return setup.passes().stream()
        .map(p -> Math.round(f.applyAsDouble(p) / IN * 1e6) / 1e6)
        .toList();
  }

  private static String words(Setup setup) {
    return String.join(" ", setup.sentences());
  }

  /** Two router manuals: no more than 1/8 in a pass. 3/4 in of stock: six passes of 1/8. */
  @Test
  void threeQuartersTakesSixPassesAndFiveSpacers() {
    Setup setup = setup(bit(1, BearingSeat.SHANK, 0.5), 0.75, 1);
    assertEquals(List.of(0.125, 0.25, 0.375, 0.5, 0.625, 0.75), inches(setup, SetupPass::depth));
    assertEquals(List.of(0.625, 0.5, 0.375, 0.25, 0.125, 0.0), inches(setup, SetupPass::spacer));
    assertTrue(setup.passes().stream().allMatch(SetupPass::held));
    assertTrue(words(setup).contains("spacers of 5/8 in, 1/2 in, 3/8 in, 1/4 in, 1/8 in on"));
  }

  /** Cutting edge 1, first pass 1/8: the bearing's lower side is 7/8 up, its contact ends at 1. */
  @Test
  void shankBearingAsksForATemplateAsThickAsTheEdgeIsLongLessTheFirstPass() {
    Setup setup = setup(bit(1, BearingSeat.SHANK, 0.5), 0.75, 0);
    assertEquals(IN, setup.template().least().orElseThrow(), 1e-9);
    assertTrue(words(setup).contains("at least 1 in thick"), words(setup));
    // A home page on table inserts: 3/4 template for a 1/2 to 3/4 cutting edge.
    Setup published = setup(bit(0.75, BearingSeat.SHANK, 0.5), 0.75, 0.75);
    assertEquals(0.75 * IN, published.template().least().orElseThrow(), 1e-9);
    assertTrue(published.template().serves());
  }

  @Test
  void aThinTemplateLeavesTheBearingInTheAirInTheFirstPasses() {
    Setup setup = setup(bit(1, BearingSeat.SHANK, 0.5), 0.75, 0.625);
    assertFalse(setup.template().serves());
    // On it from 1 + 1/8 - 5/8 = 1/2 in deep: three passes in the air, three on the template.
    assertEquals(
        List.of(false, false, false, true, true, true),
        setup.passes().stream().map(SetupPass::held).toList());
    assertTrue(words(setup).contains("above it until the cut is 1/2 in deep"), words(setup));
    assertTrue(words(setup).contains("no longer than 5/8 in"), words(setup));
    Setup never = setup(bit(1, BearingSeat.SHANK, 0.5), 0.75, 0.25);
    // 1 + 1/8 - 1/4 = 7/8 in deep, 1/8 in more than the work is thick.
    assertTrue(words(never).contains("above it until the bit is 7/8 in deep"), words(never));
    assertTrue(words(never).contains("stands out of the work by 1/8 in"), words(never));
  }

  /** WOOD and Woodsmith make templates of 1/4 in: thinner than that is no help. */
  @Test
  void aThinTemplateIsOfferedOnlyWhereAThickOneIsAskedFor() {
    String thick = words(setup(bit(1, BearingSeat.SHANK, 0.5), 0.75, 0));
    assertTrue(thick.contains("A thinner one does"), thick);
    String thin = words(setup(bit(0.25, BearingSeat.SHANK, 0.5), 0.25, 0));
    assertTrue(thin.contains("at least 1/4 in thick"), thin);
    assertFalse(thin.contains("A thinner one does"), thin);
  }

  /** Nobody saws a recess to within an eighth: there a bearing in the air is no way at all. */
  @Test
  void overABlindCutTheBearingMustBeOnTheTemplate() {
    SetupRequest recess =
        new SetupRequest(
            "pull",
            bit(1, BearingSeat.SHANK, 0.5),
            Face.A,
            IN / 4,
            false,
            OptionalDouble.of(0.75 * IN),
            NONE);
    String said = words(Setup.of(recess, Units.INCH));
    // 1 + 1/8 - 3/4 = 3/8 in deep, and the recess is 1/4 in.
    assertTrue(said.contains("never comes onto it"), said);
    assertFalse(said.contains("sawn"), said);
  }

  /** The bearing's height cut into slices: those between the template's faces are counted. */
  @ParameterizedTest
  @CsvSource({"0.5", "0.625", "0.75", "0.875", "1", "1.25"})
  void heldAgreesWithSlicesOfTheBearing(double template) {
    for (double length : new double[] {0.5, 0.75, 1, 1.25}) {
      Setup setup = setup(bit(length, BearingSeat.SHANK, 0.5), 0.5, template);
      for (SetupPass pass : setup.passes()) {
        int on = 0;
        for (int slice = 0; slice < 1000; slice++) {
          double height = length - pass.depth() / IN + (slice + 0.5) / 1000 * 0.25;
          on += height > 0 && height < template ? 1 : 0;
        }
        if (Math.abs(on - 500) > 2) {
          assertEquals(on > 500, pass.held(), length + " in edge, pass " + pass);
        } else {
          assertTrue(pass.held(), "just half counts");
        }
      }
    }
  }

  /** WOOD, October 2019, p. 60: nearly full depth on the template, then on the routed edge. */
  @Test
  void stockThickerThanTheBitGoesOnAlongTheEdgeAlreadyCut() {
    Setup setup = setup(bit(1, BearingSeat.SHANK, 0.5), 1.5, 1.25);
    assertEquals(12, setup.passes().size());
    for (SetupPass pass : setup.passes()) {
      assertEquals(pass.depth() <= IN + 1e-9 ? Riding.TEMPLATE : Riding.ROUTED_EDGE, pass.rides());
      assertTrue(pass.taken() <= IN / 8 + 1e-9);
      assertTrue(pass.held());
    }
    assertEquals(0, setup.passes().get(7).spacer(), 1e-9, "the last on the template");
    assertEquals(0.375 * IN, setup.passes().get(8).spacer(), 1e-9, "9/8 of 12/8");
    assertTrue(words(setup).contains("the last 1/2 in follow the edge already cut"), words(setup));
  }

  @Test
  void aBitWithBothBearingsIsUsedFromBothFaces() {
    Setup setup = setup(bit(1, BearingSeat.BOTH, 0.5), 1.5, 1.25);
    SetupPass last = setup.passes().get(setup.passes().size() - 1);
    assertEquals(Riding.ROUTED_EDGE_TURNED, last.rides());
    assertEquals((0.5 + 1.0 / 32) * IN, last.depth(), 1e-9, "the rest and 1/32 of overlap");
    assertTrue(words(setup).contains("from face B"), words(setup));
  }

  @Test
  void tipBearingCutsAtOneDepth() {
    Setup setup = setup(bit(1, BearingSeat.TIP, 0.5), 0.75, 0.5);
    assertEquals(1, setup.passes().size());
    assertEquals((0.75 + 1.0 / 32) * IN, setup.passes().get(0).depth(), 1e-9);
    assertEquals((1.0 / 8 + 1.0 / 32) * IN, setup.template().least().orElseThrow(), 1e-9);
    assertTrue(words(setup).contains("lay the template on face B"), words(setup));
    assertFalse(setup(bit(1, BearingSeat.TIP, 0.5), 0.75, 0.125).passes().get(0).held());
  }

  @Test
  void tipBearingRefusesADepthBeyondItsEdgeAndBlindCuts() {
    String deep = refusal(ask(bit(0.75, BearingSeat.TIP, 0.5), 0.75, 0.5));
    assertTrue(deep.contains("deeper than its cutting edge"), deep);
    SetupRequest blind =
        new SetupRequest("recess", bit(1, BearingSeat.TIP, 0.5), Face.A, 6, false, NONE, NONE);
    assertTrue(refusal(blind).contains("stops inside the wood"));
  }

  /** A rebate: the narrow bearing runs on the edge below it, so depth goes by passes. */
  @Test
  void aRebateGoesByPassesOnTheEdgeBelow() {
    SetupRequest rebate =
        new SetupRequest(
            "rebate", bit(0.5, BearingSeat.TIP, 0.25), Face.A, 0.375 * IN, false, NONE, NONE);
    Setup setup = Setup.of(rebate, Units.INCH);
    assertEquals(List.of(0.25, 0.125, 0.0), inches(setup, SetupPass::spacer));
    assertTrue(setup.passes().stream().allMatch(p -> p.rides() == Riding.ROUTED_EDGE));
  }

  @Test
  void aNarrowBearingKeepsTheCutterBelowTheTemplate() {
    Setup setup = setup(bit(0.25, BearingSeat.SHANK, 0.375), 0.375, 0.5);
    assertEquals(List.of(0.25, 0.375), inches(setup, SetupPass::depth));
    String high = refusal(ask(bit(1, BearingSeat.SHANK, 0.375), 0.75, 1));
    assertTrue(high.contains("reaches up into the template"), high);
    String low = refusal(ask(bit(0.25, BearingSeat.SHANK, 0.375), 0.75, 1));
    assertTrue(low.contains("cut no deeper than 3/8 in"), low);
  }

  @Test
  void aWideBearingCannotFollowBelowTheTemplate() {
    assertTrue(
        refusal(ask(bit(0.5, BearingSeat.SHANK, 0.625), 0.75, 1)).contains("wider than the bit"));
  }

  @Test
  void aCollarNeedsATemplateThickerThanItsTube() {
    Setup setup = setup(collar(0.5), 0.5, 0.75);
    assertEquals(4, setup.passes().size());
    assertEquals((0.5 + 1.0 / 32) * IN, setup.template().least().orElseThrow(), 1e-9);
    assertTrue(words(setup).contains("the bit stands 1-1/4 in below the base"), words(setup));
    for (double thin : new double[] {0.5, 0.25}) {
      String words = refusal(ask(collar(0.5), 0.5, thin));
      assertTrue(words.contains("no thicker than the collar's tube"), words);
      assertTrue(words.contains("17/32 in"), words);
    }
  }

  @Test
  void anUnknownTubeIsToBeMeasured() {
    SetupTool tool =
        new SetupTool(
            new Cutter(IN / 4), NONE, new Follower.Collar(IN / 2), BearingSeat.NONE, NONE, NONE);
    Setup setup = setup(tool, 0.5, 0.5);
    // Router Magic: tubes are typically 9/16 in long.
    assertTrue(words(setup).contains("often 9/16 in long"), words(setup));
    assertTrue(words(setup).contains("too thin for that one"), words(setup));
    assertTrue(setup.template().least().isEmpty());
  }

  @Test
  void passesDeeperThanTheCutterIsLongAreRefused() {
    for (BearingSeat seat : List.of(BearingSeat.SHANK, BearingSeat.TIP, BearingSeat.BOTH)) {
      SetupRequest greedy =
          new SetupRequest(
              "edge", bit(0.5, seat, 0.5), Face.A, IN, true, NONE, OptionalDouble.of(0.75 * IN));
      String words = refusal(greedy);
      assertTrue(words.contains("deeper than the cutting edge of 1/2 in"), words);
    }
    SetupRequest collar =
        new SetupRequest("edge", collar(0.5), Face.A, 40, true, NONE, OptionalDouble.of(1.5 * IN));
    assertTrue(refusal(collar).contains("deeper than the cutting edge"));
  }

  @Test
  void aPassIsNeverDeeperThanAShortCutterIsLong() {
    Setup setup = setup(bit(1.0 / 16, BearingSeat.SHANK, 0.5), 0.125, 0.5);
    assertTrue(setup.passes().stream().allMatch(p -> p.taken() <= IN / 16 + 1e-9));
  }

  /** Speeds: the lower of two published tables, see the kit's table of speeds. */
  @ParameterizedTest
  @CsvSource({"0.5, 24000", "1.5, 18000", "2.25, 16000", "3, 12000", "5, 0"})
  void speedHasItsCeiling(double inches, int ceiling) {
    SetupTool tool =
        new SetupTool(
            new Cutter(inches * IN),
            OptionalDouble.of(IN),
            new Follower.Bearing(inches * IN),
            BearingSeat.SHANK,
            NONE,
            NONE);
    Setup setup = setup(tool, 0.5, 1);
    assertEquals(
        ceiling == 0 ? OptionalInt.empty() : OptionalInt.of(ceiling), setup.speedCeiling());
    assertEquals(inches > 1, words(setup).contains("router table only"));
  }

  @Test
  void figuresThatCannotBeAreRefused() {
    SetupTool tool = bit(1, BearingSeat.SHANK, 0.5);
    for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(
          Problem.class, () -> new SetupRequest("edge", tool, Face.A, bad, true, NONE, NONE));
      assertThrows(
          Problem.class,
          () -> new SetupRequest("edge", tool, Face.A, 9, true, OptionalDouble.of(bad), NONE));
      assertThrows(
          Problem.class,
          () -> new SetupRequest("edge", tool, Face.A, 9, true, NONE, OptionalDouble.of(bad)));
      assertThrows(Problem.class, () -> ClampSettings.usual().withBase(bad));
      assertThrows(Problem.class, () -> PieceHold.of(bad, 10, Units.MM));
    }
    SetupRequest endless =
        new SetupRequest("edge", tool, Face.A, 20000, true, NONE, OptionalDouble.of(0.01));
    assertTrue(refusal(endless).contains("over 200 passes"));
    SetupTool bare =
        new SetupTool(new Cutter(12), NONE, new Follower.Bearing(12), BearingSeat.NONE, NONE, NONE);
    assertTrue(refusal(ask(bare, 0.5, 0.5)).contains("carries no bearing"));
  }

  @Test
  void wordsAreInTheReadersUnits() {
    SetupRequest request = ask(bit(1, BearingSeat.SHANK, 0.5), 1.5, 0.75);
    assertFalse(String.join(" ", Setup.of(request, Units.INCH).sentences()).contains("mm"));
    assertFalse(String.join(" ", Setup.of(request, Units.MM).sentences()).contains(" in,"));
  }

  /** School-shop practice: 12 in; a forum: 4 by 2 in is too small to hold. */
  @Test
  void aSmallPieceIsNotHeldByHand() {
    assertTrue(PieceHold.of(300, 305, Units.MM).safe());
    assertFalse(PieceHold.of(304, 80, Units.INCH).safe());
    // A metric shop says 300 mm.
    assertTrue(PieceHold.of(300, 80, Units.MM).safe());
    assertFalse(PieceHold.of(299, 80, Units.MM).safe());
    assertTrue(PieceHold.of(50, 100, Units.INCH).sentence().contains("too small for hands"));
    assertEquals(100, PieceHold.of(50, 100, Units.INCH).length());
  }
}
