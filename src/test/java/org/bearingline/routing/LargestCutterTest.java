package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LargestCutterTest {

  private static final double EXACT = 1e-9;

  @Test
  void aRoundedOpeningTakesTwiceItsCornerRadius() {
    LargestCutter largest = LargestCutter.of(Parts.boardWith(Parts.roundedRectangle(100, 60, 10)));
    assertEquals(10, largest.smallestInsideRadius().orElseThrow(), EXACT);
    assertEquals(60, largest.narrowestNeck().orElseThrow(), EXACT);
    assertEquals(20, largest.diameter().orElseThrow(), EXACT);
    assertTrue(largest.allows(20));
    assertTrue(!largest.allows(20.001));
  }

  @Test
  void aSharpOpeningTakesNone() {
    LargestCutter largest = LargestCutter.of(Parts.boardWith(Parts.rectangle(100, 60)));
    assertEquals(0, largest.diameter().orElseThrow());
  }

  @Test
  void aBarWithoutHollowsTakesAny() {
    LargestCutter largest = LargestCutter.of(Walk.part("bar", Parts.roundedRectangle(200, 30, 8)));
    assertTrue(largest.diameter().isEmpty());
    assertTrue(largest.narrowestNeck().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(doubles = {12.7, 15.875, 31.2})
  void aLiftTakesTwiceItsRadius(double radius) {
    LargestCutter largest = LargestCutter.of(Parts.liftRail(radius));
    assertEquals(2 * radius, largest.diameter().orElseThrow(), EXACT);
  }

  @Test
  void aRoundHoleTakesItsOwnDiameter() {
    Contour hole = Contour.routed(Loop.of(Arc.circle(new Point(3, 4), 17)));
    LargestCutter largest = LargestCutter.of(Parts.boardWith(hole));
    assertEquals(34, largest.diameter().orElseThrow(), EXACT);
    assertEquals(34, largest.narrowestNeck().orElseThrow(), EXACT);
  }

  /** An hour-glass: two bulges of the wood, radius 40, come near each other between two lobes. */
  private static Contour waisted() {
    double half = 55 * Math.sin(Math.toRadians(70));
    return Walk.from(-90, -40, 0)
        .ahead(90 - half)
        .arc(15, 70)
        .arc(40, -140)
        .arc(15, 70)
        .to(90, -40)
        .arc(40, 180)
        .ahead(90 - half)
        .arc(15, 70)
        .arc(40, -140)
        .arc(15, 70)
        .to(-90, 40)
        .arc(40, 180)
        .close();
  }

  @Test
  void theWaistOfAnHourGlassIsFound() {
    double top = -40 + 55 * (1 - Math.cos(Math.toRadians(70)));
    LargestCutter largest = LargestCutter.of(Parts.boardWith(waisted()));
    assertEquals(-2 * top, largest.narrowestNeck().orElseThrow(), EXACT);
    assertEquals(15, largest.smallestInsideRadius().orElseThrow(), EXACT);
  }

  @Test
  void outsideCornersFaceEachOther() {
    // Two teeth of the wood point at each other across a slot, tips 9 mm apart.
    Contour slot =
        Walk.from(-60, -20, 0)
            .to(-15.5, -20)
            .to(0, -4.5)
            .to(15.5, -20)
            .to(60, -20)
            .arc(20, 180)
            .to(15.5, 20)
            .to(0, 4.5)
            .to(-15.5, 20)
            .to(-60, 20)
            .arc(20, 180)
            .close();
    assertEquals(9, LargestCutter.of(Parts.boardWith(slot)).narrowestNeck().orElseThrow(), EXACT);
  }

  @Test
  void twoLegsFaceEachOtherAcrossAnArch() {
    Part foot =
        Walk.from(0, 0, 0)
            .sawn()
            .to(40, 0)
            .routed()
            .to(40, 60)
            .arc(10, -90)
            .ahead(100)
            .arc(10, -90)
            .to(160, 0)
            .sawn()
            .to(200, 0)
            .to(200, 120)
            .to(0, 120)
            .part("foot");
    LargestCutter largest = LargestCutter.of(foot);
    assertEquals(120, largest.narrowestNeck().orElseThrow(), EXACT);
    assertEquals(10, largest.smallestInsideRadius().orElseThrow(), EXACT);
  }

  @Test
  void anOpenSlotIsAsWideAsItIs() {
    Contour slot =
        Walk.from(150, -6, 180).ahead(80).arc(6, -180).to(150, 6).sawn().to(150, -6).close();
    LargestCutter largest =
        LargestCutter.of(Walk.part("board", Parts.board(300, 200), Walk.through("slot", slot)));
    assertEquals(12, largest.diameter().orElseThrow(), EXACT);
  }

  /**
   * The definition itself, by closings: a disc a thousandth of a millimetre smaller leaves the area
   * as it is, one as much larger does not.
   */
  @Test
  void theDefinitionHoldsToAThousandth() {
    for (Contour contour :
        new Contour[] {
          waisted(), Parts.roundedRectangle(100, 60, 10), Parts.roundedRectangle(100, 24, 12)
        }) {
      double radius = LargestCutter.of(Parts.boardWith(contour)).diameter().orElseThrow() / 2;
      assertTrue(radius > 0);
      Region waste = Region.of(Outline.of(contour.loop()));
      double area = waste.area();
      assertEquals(area, Morphology.open(waste, radius - 0.0005).region().area(), 1e-6);
      assertTrue(Morphology.open(waste, radius + 0.0005).region().area() < area - 1e-6);
    }
    Part rail = Parts.liftRail(12.7);
    Region wood = Region.of(Outline.of(rail.contour().loop()));
    assertEquals(wood.area(), Morphology.close(wood, 12.6995).region().area(), 1e-6);
    assertTrue(Morphology.close(wood, 12.7005).region().area() > wood.area() + 1e-6);
  }
}
