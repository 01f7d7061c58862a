package org.bearingline.routing.family;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.length.Units;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.routing.RoutingResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HalfTemplateTest {

  /** The half laid down twice, once turned over on its centre line, is the whole template. */
  private static void twoHalvesMakeTheWhole(RoutingResult result) {
    HalfTemplate half = HalfTemplate.of(result, Units.MM);
    Outline whole = result.templates().get(0).plate();
    Similarity turn = Similarity.mirror(half.axisFrom(), half.axisTo());
    Region both = Overlay.union(Region.of(half.plate()), Region.of(half.plate().transformed(turn)));
    assertEquals(whole.area(), both.area(), 1e-6 * whole.area());
    assertTrue(Overlay.difference(both, Region.of(whole)).area() <= 1e-6 * whole.area());
    assertTrue(half.plate().area() < 0.75 * whole.area());
    assertTrue(half.plate().area() > 0.5 * whole.area());
  }

  @ParameterizedTest
  @ValueSource(strings = {"cloud-lift-rail", "arched-rail", "oval-top", "serpentine-apron"})
  void turnedOverItMakesTheOtherHalf(String shape) {
    twoHalvesMakeTheWhole(Rails.routed(Rails.part("part", shape)));
    twoHalvesMakeTheWhole(Rails.routed(Rails.part("part", shape), 19.05));
  }

  @Test
  void aPartThatStandsOnItsEndIsHalvedAcross() {
    Part rail = Rails.lift("rail", 600, 80, 100);
    Part standing = Rails.moved(rail, Similarity.rotation(90, Point.ORIGIN));
    HalfTemplate half = HalfTemplate.of(Rails.routed(standing), Units.MM);
    assertEquals(300, half.axisFrom().y(), 1e-6);
    twoHalvesMakeTheWhole(Rails.routed(standing));
  }

  @Test
  void theLinesAreTheCentreTheEndAndTheStop() {
    HalfTemplate half = HalfTemplate.of(Rails.routed(Rails.lift("rail", 600, 80, 100)), Units.MM);
    assertEquals(40, half.pastCentre(), 1e-9);
    assertEquals(300, half.registration().get(0).from().x(), 1e-9);
    assertEquals(0, half.registration().get(1).from().x(), 1e-9);
    assertEquals(320, half.registration().get(2).from().x(), 1e-9);
  }

  @Test
  void withoutACentreLineItIsRefused() {
    RoutingResult foot = Rails.routed(Rails.part("foot", "bracket-foot"));
    Problem problem = assertThrows(Problem.class, () -> HalfTemplate.of(foot, Units.MM));
    assertTrue(problem.spoken().startsWith("foot: this part has no centre line"));
    RoutingResult plate = Rails.routed(Rails.part("plate", "drop-in-plate"));
    assertThrows(Problem.class, () -> HalfTemplate.of(plate, Units.MM));
  }
}
