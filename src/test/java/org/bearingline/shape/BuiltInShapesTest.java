package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shapes that come with the program, against closed formulas and published figures. */
class BuiltInShapesTest {

  private static Part part(String name, Map<String, String> settings) {
    return ShapeFixtures.part(ShapeFixtures.builtIn(name), settings);
  }

  private static List<Arc> arcs(Loop loop) {
    return loop.primitives().stream()
        .filter(piece -> piece.curvature() != 0)
        .map(piece -> piece.<Arc>match(line -> null, arc -> arc))
        .toList();
  }

  @Test
  void theLibraryListsTheFolder() {
    List<String> files =
        ShapeFixtures.in(ShapeFixtures.SHAPES).stream()
            .map(file -> file.getFileName().toString().replace(".yaml", ""))
            .toList();
    assertEquals(files, ShapeLibrary.builtIn().names());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "cloud-lift-rial | did you mean cloud-lift-rail?",
        "cloudlift       | did you mean cloud-lift-rail?",
        "Apron           | did you mean serpentine-apron?",
        "door            | did you mean arched-door-panel or arched-door-rail?",
        "xx              | “bearingline shapes” lists them all",
        "../problem/x    | “bearingline shapes” lists them all",
      })
  void anUnknownNameIsToldTheNearest(String name, String advice) {
    Problem problem = assertThrows(Problem.class, () -> ShapeFixtures.builtIn(name));
    assertEquals("there is no shape named “" + name + "”; " + advice, problem.spoken());
  }

  // Machinery's Handbook, 31st ed., p. 79: chord 16, rise 6 gives r = 8 1/3.
  @Test
  void theArchHasTheHandbookRadius() {
    Part part =
        part("arched-rail", Map.of("length", "20in", "end", "2in", "rise", "6in", "width", "10in"));
    List<Arc> arcs = arcs(part.contour().loop());
    assertEquals(1, arcs.size());
    assertEquals(25 / 3.0 * 25.4, arcs.get(0).radius(), 1e-9);
    assertTrue(arcs.get(0).sweep() < 0, "hollow");
  }

  // A straight taper of one face: tan α = (top − foot) / length; 1-1/2 to 3/4 over 24 in is 1.790°.
  @Test
  void theTaperHasThePublishedAngle() {
    Part part =
        part(
            "tapered-leg",
            Map.of("top", "1-1/2in", "foot", "3/4in", "length", "29in", "block", "5in"));
    Primitive taper =
        part.contour().loop().primitives().stream()
            .filter(piece -> piece.tangentAt(0).degrees() % 90 != 0)
            .findFirst()
            .orElseThrow();
    assertEquals(1.790, taper.tangentAt(0).degrees(), 0.0005);
  }

  @Test
  void fourSidesTaperAlike() {
    Map<String, String> four = Map.of("sides", "four", "taper", "curved");
    Loop loop = part("tapered-leg", four).contour().loop();
    double top = 1.75 * 25.4;
    for (Arc arc : arcs(loop)) {
      Point twin = new Point(arc.center().x(), top - arc.center().y());
      assertTrue(arcs(loop).stream().anyMatch(other -> other.center().distanceTo(twin) < 1e-9));
    }
    assertEquals(6, loop.size(), "two ends, two blocks, two tapers, no seam");
  }

  @Test
  void thePlateOpeningTakesMetricMeasures() {
    Map<String, String> plate =
        Map.of("plate_length", "100mm", "plate_width", "60mm", "radius", "10mm", "ledge", "0in");
    Part part = part("drop-in-plate", plate);
    Cavity opening = part.cavities().get(0);
    assertEquals(1, part.cavities().size());
    assertEquals(-(6000 - (4 - Math.PI) * 100), opening.contour().loop().signedArea(), 1e-9);
    assertEquals(100, opening.contour().loop().bounds().width(), 1e-9);
    assertEquals(60, opening.contour().loop().bounds().height(), 1e-9);
    arcs(opening.contour().loop()).forEach(arc -> assertEquals(10, arc.radius(), 1e-12));
  }

  @Test
  void theLedgeIsAsWideAsAsked() {
    Part part = part("drop-in-plate", Map.of());
    Loop opening = part.cavities().get(0).contour().loop();
    Loop ledge = part.cavities().get(1).contour().loop();
    for (Primitive piece : opening.primitives()) {
      if (piece instanceof Line) {
        assertEquals(12.7, ledge.distanceTo(piece.middle()), 1e-9);
      }
    }
  }

  @Test
  void theOvalIsAnEllipse() {
    Loop loop = part("oval-top", Map.of("length", "1000mm", "width", "700mm")).contour().loop();
    assertEquals(Math.PI * 500 * 350, loop.signedArea(), 0.02 * loop.length());
    for (int i = 0; i < 360; i++) {
      double t = Math.toRadians(i);
      Point on = new Point(500 + 500 * Math.cos(t), 350 + 350 * Math.sin(t));
      assertTrue(loop.distanceTo(on) <= 0.02 + 1e-6, () -> "off the ellipse at " + on);
    }
  }

  /** The panel stands off the opening by what goes into the groove, everywhere. */
  @Test
  void thePanelFollowsTheRailOfTheSameMeasures() {
    Map<String, String> door = Map.of("opening", "15in", "rise", "2-1/4in", "flat", "1-1/2in");
    Loop rail = part("arched-door-rail", door).contour().loop();
    Loop panel = part("arched-door-panel", door).contour().loop();
    double grip = (3 / 8.0 - 1 / 16.0) * 25.4;
    Arc arch = arcs(rail).get(0);
    Arc edge = arcs(panel).get(0);
    assertEquals(arch.radius() + grip, edge.radius(), 1e-9, "concentric arches");
    // The panel lies down: its x is the door's height, side above the opening's foot plus grip.
    double side = 18 * 25.4;
    double archCentre = side + arch.center().y();
    assertEquals(archCentre + grip, edge.center().x(), 1e-9);
    assertEquals(15 * 25.4 + 2 * grip, panel.bounds().height(), 1e-9);
    // The shelf beside the arch keeps the same distance from the rail's flat.
    double shelf =
        panel.primitives().stream()
            .filter(p -> p instanceof Line && p.start().x() == p.end().x() && p.start().x() > 100)
            .mapToDouble(p -> p.start().x())
            .findFirst()
            .orElseThrow();
    assertEquals(side + 2 * grip, shelf, 1e-9);
  }

  @Test
  void mortisesAreAsManyAndAsLargeAsAsked() {
    Part part =
        part(
            "mortise-guide",
            Map.of(
                "count", "3", "spacing", "4in", "mortise_length", "2in", "mortise_width", "1/2in"));
    assertEquals(3, part.cavities().size());
    double w = 12.7;
    double area = (2 * 25.4 - w) * w + Math.PI * w * w / 4;
    for (Cavity cavity : part.cavities()) {
      assertEquals(-area, cavity.contour().loop().signedArea(), 1e-9);
    }
    assertEquals(
        part.contour().loop().bounds().center().x(),
        part.cavities().get(1).contour().loop().bounds().center().x(),
        1e-9);
  }

  /** Area of the union of a circle and a slot across it, from their closed formulas. */
  @Test
  void thePullIsARoundWithASlotAcross() {
    Part part =
        part(
            "recessed-pull",
            Map.of("diameter", "60mm", "slot_length", "100mm", "slot_width", "20mm"));
    Cavity pull = part.cavities().get(0);
    double r = 30;
    double h = 10;
    double shared = 2 * (h * Math.sqrt(r * r - h * h) + r * r * Math.asin(h / r));
    double area = Math.PI * r * r + 80 * 20 + Math.PI * h * h - shared;
    assertEquals(-area, pull.contour().loop().signedArea(), 1e-6);
    assertEquals(Cavity.Kind.RECESS, pull.kind());
    assertEquals(3 / 8.0 * 25.4, pull.depth().orElseThrow(), 1e-9);
  }
}
