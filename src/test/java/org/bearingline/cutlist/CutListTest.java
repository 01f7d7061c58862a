package org.bearingline.cutlist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.routing.Routing;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.shape.ShapeLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CutListTest {

  private static final double INCH = 25.4;

  private static Part part(String shape, Map<String, String> measures) {
    return ShapeLibrary.builtIn().find(shape).measured(measures, Optional.empty()).part();
  }

  private static RoutingResult routed(Part part, double thickness) {
    Cutter cutter = new Cutter(INCH / 2);
    RoutingSettings settings =
        RoutingSettings.usual(cutter, new Follower.Bearing(INCH / 2))
            .withAllowance(INCH / 16)
            .withThickness(thickness);
    return Routing.workOut(part, settings, Kit.usual());
  }

  @Test
  void aRailGetsItsAllowanceOnTheRoutedEdgeOnly() {
    Part rail = part("cloud-lift-rail", Map.of("length", "38-1/2in", "width", "2-3/4in"));
    CutList list =
        CutList.of(
            List.of(Ordered.of(routed(rail, 22.225), 3, Optional.of("white oak"))), Units.INCH);
    Blank blank = list.parts().get(0);
    assertEquals(38.5 * INCH, blank.length(), 1e-6);
    assertEquals((2.75 + 1.0 / 16) * INCH, blank.width(), 1e-6);
    assertEquals(3, blank.quantity());
    assertFalse(blank.mayTurn());
    assertEquals(OptionalDouble.of(22.225), blank.thickness());
    Blank plate = list.templates().get(0);
    Bounds box = routed(rail, 22.225).templates().get(0).plate().bounds();
    assertEquals(Math.ceil(box.width() / INCH * 16 - 1e-6) / 16 * INCH, plate.length(), 1e-9);
    assertEquals(Math.ceil(box.height() / INCH * 16 - 1e-6) / 16 * INCH, plate.width(), 1e-9);
    assertTrue(plate.mayTurn());
  }

  /** All routed round: the box of the part dilated by the allowance, by the offset room. */
  @ParameterizedTest
  @ValueSource(strings = {"oval-top", "handle-bar"})
  void allRoundTheBoxIsThatOfTheDilatedPart(String shape) {
    Contour contour = Contour.routed(part(shape, Map.of()).contour().loop());
    Region dilated = Morphology.dilate(Region.of(Outline.of(contour.loop())), 3).region();
    Bounds box = BlankBox.of(contour, 3);
    assertEquals(dilated.bounds().minX(), box.minX(), 1e-6);
    assertEquals(dilated.bounds().maxX(), box.maxX(), 1e-6);
    assertEquals(dilated.bounds().minY(), box.minY(), 1e-6);
    assertEquals(dilated.bounds().maxY(), box.maxY(), 1e-6);
  }

  @Test
  void aSharpCornerRoutedOnBothSidesKeepsItsAllowance() {
    // A square on its point: the box of the dilated part is its diagonal and twice the allowance.
    Contour diamond =
        Contour.routed(
            Loop.polygon(
                List.of(new Point(0, -50), new Point(50, 0), new Point(0, 50), new Point(-50, 0))));
    assertEquals(100 + 2 * 4, BlankBox.of(diamond, 4).width(), 1e-9);
  }

  @Test
  void fibresAcrossTheDrawingTurnTheBlank() {
    Part rail = part("cloud-lift-rail", Map.of("length", "20in", "width", "4in"));
    Ordered across =
        new Ordered(
            routed(rail, 20),
            1,
            90,
            true,
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty());
    Blank blank = CutList.of(List.of(across), Units.MM).parts().get(0);
    assertEquals(20 * INCH, blank.width(), 1e-6);
  }

  /** A board foot is 144 cubic inches: thickness × width in inches × length in feet / 12. */
  @ParameterizedTest
  @CsvSource({"1, 6, 8, 4.0", "2, 6, 8, 8.0", "1.75, 8, 6, 7.0", "0.75, 12, 1, 0.75"})
  void boardFeetAsTheLumberTradeCounts(double thick, double wide, double feet, double expected) {
    Blank blank =
        new Blank(
            "board",
            Purpose.PART,
            feet * 12 * INCH,
            wide * INCH,
            OptionalDouble.of(thick * INCH),
            Optional.empty(),
            1,
            false);
    Amount amount = Amount.of(List.of(blank));
    assertEquals(expected, amount.boardFeet().orElseThrow(), 1e-9);
    assertEquals(expected * Math.max(1, 1 / thick), amount.boardFeetSold().orElseThrow(), 1e-9);
    assertEquals(wide * feet / 12, amount.squareFeet(), 1e-9);
    assertEquals(
        thick * wide * feet * 12 * Math.pow(0.0254, 3), amount.cubicMetres().orElseThrow(), 1e-12);
  }

  @Test
  void theAmountIsSaidInTheReadersUnits() {
    Part rail = part("cloud-lift-rail", Map.of("length", "24in", "width", "4in"));
    List<Ordered> one = List.of(Ordered.of(routed(rail, 0.75 * INCH), 6, Optional.empty()));
    // 6 × 24 × 4 1/16 in² = 4.0625 ft², × 3/4.
    assertEquals(
        "Blanks of the parts: 6 pieces, 4.06 square feet, 3.05 board feet"
            + " (4.06 as sold, stock under 1 in counting as 1 in), before any waste.",
        CutList.of(one, Units.INCH).sentences().get(0));
    // 610 × 104 mm, up to the next millimetre: 6 × 0.06344 m² × 19.05 mm.
    assertEquals(
        "Blanks of the parts: 6 pieces, 0.381 m², 0.0073 m³, before any waste.",
        CutList.of(one, Units.MM).sentences().get(0));
  }
}
