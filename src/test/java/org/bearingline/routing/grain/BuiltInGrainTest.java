package org.bearingline.routing.grain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bearingline.length.Units;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.shape.ShapeLibrary;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shape that comes with the program, with fibres along and across. */
class BuiltInGrainTest {

  static Stream<String> shapes() {
    return ShapeLibrary.builtIn().names().stream();
  }

  private static Part part(String shape) {
    return ShapeLibrary.builtIn().find(shape).measured(Map.of(), Optional.empty()).part();
  }

  private static double routed(List<GrainEdge> edges) {
    double sum = 0;
    for (GrainEdge edge : edges) {
      Contour contour = edge.contour();
      for (int i = 0; i < contour.loop().size(); i++) {
        if (contour.kinds().get(i) == EdgeKind.ROUTED) {
          sum += contour.loop().primitives().get(i).length();
        }
      }
    }
    return sum;
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void theStepsRoutEveryStretchOnce(String shape) {
    List<GrainEdge> edges = GrainEdge.of(part(shape));
    for (double fibres : new double[] {0, 37, 90}) {
      GrainSettings settings = GrainSettings.usual().withFibres(fibres);
      FeedPlan plan = FeedPlan.of(edges, settings, Approach.usual(), Units.INCH);
      double steps = plan.steps().stream().mapToDouble(FeedStep::length).sum();
      assertEquals(routed(edges), steps, 1e-6);
      List<Integer> numbers = new ArrayList<>();
      plan.steps().forEach(step -> numbers.add(step.number()));
      for (int i = 0; i < numbers.size(); i++) {
        assertEquals(i + 1, numbers.get(i));
      }
      plan.steps().forEach(step -> assertFalse(step.sentence().contains("  "), step.sentence()));
    }
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void stretchesAreChains(String shape) {
    FeedPlan plan =
        FeedPlan.of(GrainEdge.of(part(shape)), GrainSettings.usual(), Approach.usual(), Units.INCH);
    for (FeedStep step : plan.steps()) {
      for (GrainStretch stretch : step.stretches()) {
        Primitive before = null;
        for (Primitive piece : stretch.path().primitives()) {
          if (before != null) {
            assertTrue(before.end().distanceTo(piece.start()) < 1e-9);
          }
          before = piece;
        }
      }
    }
  }
}
