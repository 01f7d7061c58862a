package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.junit.jupiter.api.Test;

/** Each step of an outline against figures worked by hand; all in mm. */
class StepsTest {

  private static Part part(String outline) {
    String text = "name: x\nabout: x\nunits: mm\noutline:\n" + outline.indent(2);
    return ShapeFixtures.part(ShapeReader.read("x.yaml", text), Map.of());
  }

  private static Loop loop(String outline) {
    return part(outline).contour().loop();
  }

  private static Arc arc(Loop loop) {
    return loop.primitives().stream()
        .filter(piece -> piece.curvature() != 0)
        .findFirst()
        .orElseThrow()
        .match(
            line -> {
              throw new AssertionError();
            },
            a -> a);
  }

  private static double distance(Loop loop, double x, double y) {
    return loop.distanceTo(new Point(x, y));
  }

  @Test
  void linesInAllWays() {
    // The square 0..100 with one corner cut off at 45°.
    Loop loop =
        loop(
            """
            - start: [0, 0]
            - line: {right: 100}
            - line: {by: [0, 40]}
            - line: {by: 60}
            - line: {to: [50, 100]}
            - line: {until: {x: 0}, along: 225deg}
            - close: sawn
            """);
    assertEquals(100 * 100 - 50 * 50 / 2.0, loop.signedArea(), 1e-9);
    assertEquals(6, loop.size());
  }

  @Test
  void edgeKindsStayWithTheirSteps() {
    Part part =
        part(
            """
            - start: [0, 0]
            - line: {right: 100, edge: sawn}
            - line: {up: 50}
            - round: 10
            - line: {left: 100, edge: sawn}
            - close: routed
            """);
    assertEquals(
        List.of(EdgeKind.SAWN, EdgeKind.ROUTED, EdgeKind.ROUTED, EdgeKind.SAWN, EdgeKind.ROUTED),
        part.contour().kinds());
  }

  // Machinery's Handbook, 31st ed., p. 79: chord 16, rise 6 gives r = 8 1/3.
  @Test
  void arcByRiseHasTheHandbookRadiusOnTheAskedSide() {
    Loop proud =
        loop("- start: [0, 0]\n- arc: {to: [16, 0], rise: 6, turn: left}\n- close: routed\n");
    assertEquals(25 / 3.0, arc(proud).radius(), 1e-12);
    assertEquals(-6, proud.bounds().minY(), 1e-12);
    Loop hollow =
        loop(
            """
            - start: [0, 0]
            - arc: {to: [16, 0], rise: 6, turn: right}
            - line: {up: 20}
            - line: {left: 16}
            - close: sawn
            """);
    assertEquals(0, distance(hollow, 8, 6), 1e-12);
  }

  @Test
  void arcThroughAPointPassesIt() {
    // The circle of radius 5 about (3, 4) passes the origin, (6, 0) and (3, -1).
    Loop loop = loop("- start: [0, 0]\n- arc: {to: [6, 0], through: [3, -1]}\n- close: routed\n");
    assertEquals(5, arc(loop).radius(), 1e-12);
    assertEquals(0, arc(loop).center().distanceTo(new Point(3, 4)), 1e-12);
  }

  @Test
  void arcOfARadiusTakesTheShorterOrTheLongerWay() {
    String text =
        "- start: [0, 0]\n- arc: {to: [6, 0], radius: 5, turn: left%s}\n- close: routed\n";
    // Segment of half angle asin(3/5): r² (θ − sin θ) / 2 with θ = 2 asin(0.6).
    double theta = 2 * Math.asin(0.6);
    double small = 25 * (theta - Math.sin(theta)) / 2;
    assertEquals(small, loop(text.formatted("")).signedArea(), 1e-9);
    assertEquals(25 * Math.PI - small, loop(text.formatted(", long: yes")).signedArea(), 1e-9);
  }

  @Test
  void arcsGoOnSmoothly() {
    Loop loop =
        loop(
            """
            - start: [0, 0]
            - line: {right: 100}
            - arc: {radius: 20, turn: left, angle: 90deg}
            - line: {by: 30}
            - arc: {by: [-120, 0]}
            - line: {until: {y: 0}}
            - close: routed
            """);
    Bounds box = loop.bounds();
    assertEquals(120, box.maxX(), 1e-9);
    assertEquals(50 + 60, box.maxY(), 1e-9, "a half circle of radius 60 over the upright");
  }

  // 3-4-5: rise 2, run 6 and equal radii give R = 5 and a turn of 36.8699°.
  @Test
  void aLiftByRiseAndRun() {
    Loop loop =
        loop(
            """
            - start: [0, 0]
            - line: {right: 10}
            - lift: {rise: 2, run: 6, side: left}
            - line: {by: 10}
            - line: {up: 8}
            - line: {left: 26}
            - close: sawn
            """);
    assertEquals(5, arc(loop).radius(), 1e-9);
    assertEquals(Math.toDegrees(Math.atan2(3, 4)), arc(loop).sweep(), 1e-9);
    assertEquals(0, distance(loop, 13, 1), 1e-9, "the arcs meet half way");
    assertEquals(26 * 10 - (6 * 1 + 10 * 2), loop.signedArea(), 1e-9, "an S halves its box");
  }

  // Field-book for railroad engineers, reversed curves: R = 675, 12 apart, tangent points 180
  // apart.
  @Test
  void liftsAgreeHoweverTheyAreGiven() {
    double run = Math.sqrt(180 * 180 - 12 * 12);
    String shape =
        """
        - start: [0, 0]
        - line: {right: 50}
        - lift: {%s, side: left}
        - line: {until: {x: 300}}
        - line: {up: 100}
        - line: {until: {x: 0}, along: 180deg}
        - close: sawn
        """;
    String angle = "angle: %.12fdeg".formatted(Math.toDegrees(Math.acos(1 - 12 / 1350.0)));
    for (String given :
        List.of(
            "rise: 12, radius: 675",
            "rise: 12, first_radius: 675, second_radius: 675",
            "rise: 12, radius: 675, straight: 0",
            "rise: 12, run: " + run,
            "rise: 12, run: " + run + ", first_radius: 675",
            "rise: 12, run: " + run + ", second_radius: 675",
            "run: " + run + ", radius: 675",
            "radius: 675, " + angle,
            "rise: 12, " + angle)) {
      Loop loop = loop(shape.formatted(given));
      assertEquals(675, arc(loop).radius(), 1e-4, given);
      assertEquals(0, distance(loop, 50 + run, 12), 1e-6, given);
    }
  }

  @Test
  void aBattenPassesItsPointsAndHoldsItsEnds() {
    Loop loop =
        loop(
            """
            - start: [0, 0]
            - line: {right: 20}
            - batten: {leaving: tangent, through: [[80, 15], [150, 5]], arriving: 0deg}
            - line: {by: 20}
            - line: {up: 60}
            - line: {until: {x: 0}, along: 180deg}
            - close: sawn
            """);
    for (Point point : List.of(new Point(20, 0), new Point(80, 15), new Point(150, 5))) {
      assertTrue(loop.distanceTo(point) <= 0.02, () -> "misses " + point);
    }
    List<Primitive> pieces = loop.primitives();
    assertEquals(0, pieces.get(1).tangentAt(0).degrees(), 1e-6, "leaves along the line");
    for (int i = 1; i < pieces.size() - 4; i++) {
      double bend = pieces.get(i).tangentAt(1).minus(pieces.get(i + 1).tangentAt(0)).norm();
      assertEquals(0, bend, 1e-6, "smooth after piece " + i);
    }
  }

  @Test
  void ellipsesAndBezierCurvesLieOnTheirCurves() {
    Loop quarter =
        loop(
            """
            - start: [0, 0]
            - line: {right: 90}
            - ellipse: {centre: [0, 0], semi_axes: [90, 40], to: [0, 40], turn: left}
            - close: sawn
            """);
    assertEquals(Math.PI * 90 * 40 / 4, quarter.signedArea(), 0.02 * quarter.length());
    assertTrue(distance(quarter, 90 * 0.6, 40 * 0.8) <= 0.02);
    Loop bezier =
        loop("- start: [0, 0]\n- bezier: {controls: [[50, -60]], to: [100, 0]}\n- close: sawn\n");
    // A parabola's segment: 2/3 of chord times sagitta, the sagitta half the control's height.
    assertEquals(100 * 30 * 2 / 3.0, bezier.signedArea(), 0.02 * bezier.length());
    assertTrue(distance(bezier, 50, -30) <= 0.02);
  }

  @Test
  void aMirroredHalfJoinsWithoutASeam() {
    Loop loop =
        loop(
            """
            - start: [50, 0]
            - line: {until: {x: 100}, along: 0deg}
            - round: 10
            - line: {up: 40}
            - arc: {to: [50, 60], through: [80, 55]}
            - mirror: {x: 50}
            """);
    assertEquals(0, loop.bounds().minX(), 1e-9);
    assertEquals(100, loop.bounds().maxX(), 1e-9);
    long level =
        loop.primitives().stream().filter(p -> p.length() > 79.9 && p.curvature() == 0).count();
    assertEquals(1, level, "the lower edge is one line from rounding to rounding");
  }

  @Test
  void aCornerOnTheMirrorLineAndAtTheStartCanBeRounded() {
    // A square on its corner, side s, all corners rounded by r: s² − (4 − π) r².
    Loop loop =
        loop(
            """
            - start: [0, -50]
            - line: {to: [50, 0]}
            - round: 5
            - line: {to: [0, 50]}
            - round: 5
            - mirror: {x: 0}
            - round: 5
            """);
    assertEquals(5000 - (4 - Math.PI) * 25, loop.signedArea(), 1e-9);
  }

  @Test
  void stepsRepeatWithACounter() {
    // A comb of 3 notches, each 10 wide, 1, 2 and 3 deep.
    Loop loop =
        loop(
            """
            - start: [0, 0]
            - repeat:
                times: 3
                counter: i
                steps:
                  - line: {right: 10}
                  - line: {up: i * 1mm + 1}
                  - line: {right: 10}
                  - line: {down: i * 1mm + 1}
            - line: {right: 10}
            - line: {up: 20}
            - line: {until: {x: 0}, along: 180deg}
            - close: sawn
            """);
    assertEquals(70 * 20 - 10 * (1 + 2 + 3), loop.signedArea(), 1e-9);
  }
}
