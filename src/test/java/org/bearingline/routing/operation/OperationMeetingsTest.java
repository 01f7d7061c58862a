package org.bearingline.routing.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.length.Units;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;

/** Which operations meet by mistake, by places worked out by hand; lengths in mm. */
class OperationMeetingsTest {

  private static final Tooling BIT = Benches.flush(8);

  private static List<String> said(Operation... operations) {
    return OperationMeetings.sentences(List.of(operations), Units.MM);
  }

  /** 60 × 20 about (100, 50), of the given depth; 0 goes through. */
  private static Mortise mortise(double depth) {
    OptionalDouble deep = depth == 0 ? OptionalDouble.empty() : OptionalDouble.of(depth);
    return new Mortise(
        Head.of("lock", Face.A), BIT, Benches.box("lock", 100, 50, 60, 20, 4), 60, 20, deep);
  }

  private static Recess recess(String name, Face face, double x, double wide, double deep) {
    return new Recess(Head.of(name, face), BIT, Benches.box(name, x, 50, wide, 40, 5), deep);
  }

  private static ThroughOpening window(double x, double wide) {
    return new ThroughOpening(
        Head.of("window", Face.A), BIT, Benches.box("window", x, 50, wide, 20, 5));
  }

  private static Drilling screw(double x, double depth) {
    OptionalDouble deep = depth == 0 ? OptionalDouble.empty() : OptionalDouble.of(depth);
    return new Drilling(
        Head.of("screws", Face.A), List.of(new Hole(new Point(x, 50), 4, deep, "screws")));
  }

  private static void met(String words, Operation... operations) {
    List<String> said = said(operations);
    assertEquals(1, said.size(), said.toString());
    assertTrue(said.get(0).contains(words), said.get(0));
  }

  @Test
  void aScrewInAMortise() {
    met(
        "A hole of screws lies in lock near 100 mm from the left, 50 mm up",
        mortise(15),
        screw(100, 0));
    met("lies in lock", screw(100, 25), mortise(15));
  }

  /** The mortise ends at x = 130: a hole of 4 mm meets it from 128 on and is free from 132 on. */
  @Test
  void aScrewBesideAMortise() {
    met("A hole of screws runs into lock", mortise(15), screw(131, 0));
    assertEquals(List.of(), said(mortise(15), screw(132.1, 0)));
  }

  @Test
  void aHoleInAnOpeningHasNoWood() {
    met("where no wood stays", window(100, 60), screw(100, 0));
  }

  @Test
  void screwsThroughTheFloorOfARecessAreMeant() {
    assertEquals(List.of(), said(recess("dish", Face.A, 100, 60, 5), screw(100, 0)));
    assertEquals(List.of(), said(recess("dish", Face.A, 100, 60, 5), screw(100, 12)));
    met("lies in dish", recess("dish", Face.A, 100, 60, 5), screw(100, 5));
  }

  @Test
  void theOpeningInALedgeIsMeant() {
    Ledge ledge = new Ledge(Head.of("ledge", Face.A), BIT, Benches.box("l", 100, 50, 90, 60, 5), 6);
    assertEquals(List.of(), said(ledge, window(100, 60)));
    assertEquals(List.of(), said(window(100, 60), ledge));
    met("run into each other", ledge, window(140, 60));
  }

  /** From 70 to 130 and from 120 to 160: both take 120 to 130, with its middle at 125. */
  @Test
  void twoRecessesThatOverlap() {
    met(
        "left and right run into each other near 125 mm from the left, 50 mm up",
        recess("left", Face.A, 100, 60, 5),
        recess("right", Face.A, 140, 40, 7));
  }

  @Test
  void aDeeperRecessInAShallowOneIsMeantAndAShallowInADeepIsNot() {
    assertEquals(
        List.of(), said(recess("wide", Face.A, 100, 60, 5), recess("deep", Face.A, 100, 40, 9)));
    met(
        "deep lies in wide",
        recess("wide", Face.A, 100, 60, 9),
        recess("deep", Face.A, 100, 40, 5));
  }

  @Test
  void stoppedCutsOfTwoFacesNeverMeetHereButAnOpeningMeetsBoth() {
    assertEquals(List.of(), said(recess("a", Face.A, 100, 60, 5), recess("b", Face.B, 110, 60, 5)));
    met("run into each other", window(150, 60), recess("b", Face.B, 110, 60, 5));
  }

  @Test
  void aCounterboreIsMeantAndHolesThatCrossAreNot() {
    Drilling bore =
        new Drilling(
            Head.of("heads", Face.A),
            List.of(new Hole(new Point(100, 50), 10, OptionalDouble.of(6), "heads")));
    assertEquals(List.of(), said(bore, screw(100, 0)));
    met("Holes of heads and screws run into each other", bore, screw(106, 0));
    assertEquals(List.of(), said(bore, screw(107, 0)));
  }
}
