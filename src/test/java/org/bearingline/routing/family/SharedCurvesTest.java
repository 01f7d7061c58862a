package org.bearingline.routing.family;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingResult;
import org.junit.jupiter.api.Test;

class SharedCurvesTest {

  private static Part twoSteps(String name, double tread) {
    return Rails.part(
        name,
        "cloud-lift-rail",
        "length",
        "900mm",
        "width",
        "150mm",
        "end",
        "100mm",
        "rise",
        "16mm",
        "radius",
        "16mm",
        "outer_radius",
        "16mm",
        "steps",
        "2",
        "tread",
        tread + "mm");
  }

  private static List<SharedCurve> curves(RoutingResult... parts) {
    List<RoutingResult> all = List.of(parts);
    return SharedCurves.of(all, Families.of(all, Units.MM), Units.MM);
  }

  @Test
  void oneLiftServesRailsOfOneStepAndOfTwo() {
    RoutingResult one = Rails.routed(Rails.lift("one", 600, 80, 100));
    RoutingResult two = Rails.routed(twoSteps("two", 50));
    List<SharedCurve> found = curves(one, two);
    assertEquals(1, found.size());
    SharedCurve lift = found.get(0);
    // A lift at each side of the one, two at each side of the other.
    assertEquals(6, lift.uses().size());
    assertEquals(100, lift.uses().get(0).fromEnd(), 1e-6);
    assertEquals(80, lift.uses().get(0).fromBack(), 1e-6);
    everyArcIsServedOnce(lift, one, two);
  }

  /** Each arc of each part, laid in one of its uses, lies on the short template's edge. */
  private static void everyArcIsServedOnce(SharedCurve lift, RoutingResult... parts) {
    Loop edge = lift.plate().outer();
    for (RoutingResult part : parts) {
      for (Primitive piece : part.part().contour().loop().primitives()) {
        if (piece instanceof Arc) {
          List<SharedCurve.Use> serving = new ArrayList<>();
          for (SharedCurve.Use use : lift.uses()) {
            Point at = use.setting().intoTemplate().apply(piece.middle());
            if (use.part().equals(part.part().name()) && edge.distanceTo(at) < 1e-6) {
              serving.add(use);
            }
          }
          assertEquals(1, serving.size(), part.part().name() + " " + piece);
        }
      }
    }
  }

  @Test
  void aFamilyIsNotToldTwice() {
    assertTrue(
        curves(
                Rails.routed(Rails.lift("a", 600, 80, 100)),
                Rails.routed(Rails.lift("b", 500, 80, 100)))
            .isEmpty());
  }

  @Test
  void aTreadTooShortToStopOnIsNotOffered() {
    assertTrue(
        curves(Rails.routed(Rails.lift("one", 600, 80, 100)), Rails.routed(twoSteps("two", 7)))
            .isEmpty());
  }

  @Test
  void theShortTemplateStopsWithinTheShortestTread() {
    SharedCurve lift =
        curves(Rails.routed(Rails.lift("one", 600, 80, 100)), Rails.routed(twoSteps("two", 24)))
            .get(0);
    double begins = lift.registration().get(0).from().x();
    double ends = lift.registration().get(1).from().x();
    assertEquals(begins - 12, lift.registration().get(2).from().x(), 1e-6);
    assertEquals(ends + 12, lift.registration().get(3).from().x(), 1e-6);
  }
}
