package org.bearingline.shape.kept;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.shape.CheckedShape;
import org.bearingline.shape.ShapeLibrary;
import org.bearingline.shape.ShapeReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A kept shape gives its part back, and grows where it is straight alone. */
class KeptShapeTest {

  private static Part library(String name) {
    Part part = ShapeLibrary.builtIn().find(name).measured(Map.of(), Optional.empty()).part();
    return new Part(part.name(), part.about(), part.contour(), through(part), List.of(), List.of());
  }

  private static List<Cavity> through(Part part) {
    return part.cavities().stream().filter(c -> c.kind() == Cavity.Kind.THROUGH).toList();
  }

  private static CheckedShape kept(Part part) {
    return ShapeReader.read(part.name() + ".yaml", KeptShape.yaml(part, List.of("kept")));
  }

  private static Part measured(CheckedShape shape, Map<String, String> settings) {
    return shape.measured(settings, Optional.empty()).part();
  }

  @ParameterizedTest
  @ValueSource(strings = {"cloud-lift-rail", "oval-top", "arched-door-panel", "drop-in-plate"})
  void givesThePartBack(String name) {
    Part part = library(name);
    Outline back = measured(kept(part), Map.of()).outline();
    assertEquals(part.outline().loops().size(), back.loops().size());
    assertNear(part.outline(), back, 1e-6);
    assertNear(back, part.outline(), 1e-6);
  }

  private static void assertNear(Outline one, Outline other, double limit) {
    for (Loop loop : one.loops()) {
      for (Primitive piece : loop.primitives()) {
        for (int i = 0; i < 8; i++) {
          assertTrue(other.distanceTo(piece.pointAt(i / 8.0)) < limit);
        }
      }
    }
  }

  @Test
  void liftsStayAndStraightsStretch() {
    Part part = library("cloud-lift-rail");
    double length = part.contour().loop().bounds().width();
    Part longer = measured(kept(part), Map.of("length", (length + 100) + "mm"));
    Loop before = part.contour().loop();
    Loop after = longer.contour().loop();
    assertEquals(length + 100, after.bounds().width(), 1e-6);
    assertEquals(before.bounds().height(), after.bounds().height(), 1e-6);
    assertEquals(before.size(), after.size());
    // Two straights run along the rail, so it grows by twice 100 mm of edge and no more.
    assertEquals(before.length() + 200, after.length(), 1e-5);
    double middle = (after.bounds().minX() + after.bounds().maxX()) / 2;
    for (int i = 0; i < before.size(); i++) {
      if (before.primitives().get(i) instanceof Arc arc) {
        Arc same = (Arc) after.primitives().get(i);
        assertEquals(arc.radius(), same.radius(), 1e-6);
        assertEquals(arc.sweep(), same.sweep(), 1e-5);
      }
      // A rail that is its own mirror image grows to one that is.
      Point start = after.primitives().get(i).start();
      assertTrue(after.distanceTo(new Point(2 * middle - start.x(), start.y())) < 1e-6);
    }
  }

  @Test
  void holesAndOpeningsKeepTheirShape() {
    Loop edge = Loop.rectangle(new Bounds(0, 0, 300, 80));
    Part part =
        new Part(
            "board",
            "Drawn in “a: b”.svg",
            Contour.routed(edge),
            List.of(
                new Cavity(
                    "opening",
                    Cavity.Kind.THROUGH,
                    Contour.routed(new Loop(List.of(Arc.circle(new Point(60, 40), 15)))),
                    OptionalDouble.empty())),
            List.of(new Mark.DrillCentre(new Point(280, 40), 8, "hole")),
            List.of());
    Part longer = measured(kept(part), Map.of("length", "500mm"));
    Arc opening = (Arc) longer.cavities().get(0).contour().loop().primitives().get(0);
    assertEquals(15, opening.radius(), 1e-9);
    Mark.DrillCentre hole = (Mark.DrillCentre) longer.marks().get(0);
    assertEquals(480, hole.at().x(), 1e-9);
    Problem tooShort =
        assertThrows(Problem.class, () -> measured(kept(part), Map.of("length", "80mm")));
    assertTrue(tooShort.getMessage().contains("straights that give way would vanish"));
  }
}
