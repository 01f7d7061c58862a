package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import org.bearingline.part.Cavity;
import org.bearingline.part.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures of openings against their closed formulas; all in mm. */
class FiguresTest {

  private static Part part(String openings) {
    String text =
        """
        name: x
        about: x
        units: mm
        outline:
          - start: [-200, -200]
          - line: {right: 400, edge: sawn}
          - line: {up: 400, edge: sawn}
          - line: {left: 400, edge: sawn}
          - close: sawn
        openings:
        """
            + openings.indent(2);
    return ShapeFixtures.part(ShapeReader.read("x.yaml", text), Map.of());
  }

  private static double area(Cavity cavity) {
    return -cavity.contour().loop().signedArea();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rectangle: {centre: [5, 5], size: [100, 60]} | 6000",
        "rectangle: {centre: [5, 5], size: [100, 60], radius: 10} | 5914.159265358979",
        "rectangle: {centre: [5, 5], size: [100, 60], radius: 30} | 5227.433388230814",
        "rectangle: {centre: [5, 5], size: [100, 60], radius: 10, tilt: 33deg} | 5914.159265358979",
        "circle: {centre: [5, 5], diameter: 50} | 1963.4954084936207",
        "slot: {from: [-20, 0], to: [20, 0], width: 10} | 478.53981633974485",
        "steps: [start: [0, 0], line: {right: 10}, line: {up: 10}, close: routed] | 50",
        // Two slots 60 and 40 over all, 10 wide: both areas less the common square.
        "cross: {centre: [0, 0], size: [60, 40], width: 10} | 857.0796326794897",
        "cross: {centre: [0, 0], size: [60, 40], width: 10, tilt: 20deg} | 857.0796326794897",
        // A circle of diameter 20 and a slot of 100 over all, 10 wide:
        // less what both share, 2 (h √(r² − h²) + r² asin(h / r)) with r = 10, h = 5.
        "union: [circle: {centre: [0, 0], diameter: 20}, slot: {from: [-45, 0], to: [45, 0], width: 10}]"
            + " | 1101.3767862006207",
      })
  void areas(String figure, double area) {
    Cavity cavity = part("- through: hole\n  " + figure).cavities().get(0);
    assertEquals(area, area(cavity), 1e-6);
    assertFalse(cavity.contour().loop().isCounterClockwise());
  }

  @Test
  void anEllipseWithinItsTolerance() {
    Cavity cavity =
        part("- through: hole\n  ellipse: {centre: [0, 0], size: [120, 70]}").cavities().get(0);
    assertEquals(Math.PI * 60 * 35, area(cavity), 0.02 * cavity.contour().loop().length());
  }

  @Test
  void aLedgeFollowsItsOpening() {
    Part part =
        part(
            """
            - through: hole
              rectangle: {centre: [0, 0], size: [100, 60], radius: 10}
            - ledge: rim
              around: hole
              width: 8
              depth: 4
            """);
    Cavity rim = part.cavities().get(1);
    // Steiner: A + L d + π d², with L = 2 · 80 + 2 · 40 + 20 π.
    double hole = 6000 - (4 - Math.PI) * 100;
    double length = 240 + 20 * Math.PI;
    assertEquals(hole + length * 8 + Math.PI * 64, area(rim), 1e-6);
    assertEquals(Cavity.Kind.LEDGE, rim.kind());
    assertEquals(4, rim.depth().orElseThrow());
    assertEquals(8, rim.contour().loop().size(), "four sides and four corners");
  }

  @Test
  void aRepeatedOpeningTakesANumber() {
    Part part =
        part(
            """
            - repeat:
                times: 3
                counter: i
                openings:
                  - through: hole
                    circle: {centre: [i * 30mm, 0], diameter: 20}
            """);
    assertEquals(
        List.of("hole", "hole-2", "hole-3"), part.cavities().stream().map(Cavity::name).toList());
  }
}
