package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.junit.jupiter.api.Test;

/** Where a maker's rule would lie, worked by hand on a board of 600 × 400 mm. */
class OpeningSizesTest {

  private static final Loop BOARD = Loop.rectangle(new Bounds(0, 0, 600, 400));

  private static Cavity opening(String name, Bounds at) {
    return new Cavity(
        name,
        Cavity.Kind.RECESS,
        Contour.routed(Loop.rectangle(at)).clockwise(),
        OptionalDouble.of(6));
  }

  private static List<Double> measured(Contour around, List<Mark> marks, Cavity... cavities) {
    Part part = new Part("board", "", around, List.of(cavities), marks, List.of());
    return OpeningSizes.of(part, 5).stream().map(dimension -> dimension.value()).toList();
  }

  /** 100 × 50 mm, its lower left corner 380 mm from the left and 90 mm from the bottom. */
  private static final Cavity OFF_CENTRE = opening("a", new Bounds(380, 90, 480, 140));

  @Test
  void fromTheNearerEdges() {
    assertEquals(
        List.of(100.0, 50.0, 120.0, 90.0), measured(Contour.routed(BOARD), List.of(), OFF_CENTRE));
  }

  /** Only the left edge (the fourth of the rectangle) is sawn, so it is the reference. */
  @Test
  void fromTheSawnEdgeThoughItIsFarther() {
    Contour around =
        new Contour(
            BOARD, List.of(EdgeKind.ROUTED, EdgeKind.ROUTED, EdgeKind.ROUTED, EdgeKind.SAWN));
    assertEquals(List.of(100.0, 50.0, 380.0, 90.0), measured(around, List.of(), OFF_CENTRE));
  }

  @Test
  void notWhereACentreLineMarksThePlace() {
    Mark upright = new Mark.CentreLine(new Point(430, 0), new Point(430, 400), "");
    assertEquals(
        List.of(100.0, 50.0, 90.0), measured(Contour.routed(BOARD), List.of(upright), OFF_CENTRE));
  }

  @Test
  void aLedgeAndItsOpeningArePlacedOnceAndTwinsMeasuredOnce() {
    Cavity inner = opening("b", new Bounds(390, 100, 470, 130));
    assertEquals(
        List.of(100.0, 50.0, 120.0, 90.0, 80.0, 30.0),
        measured(Contour.routed(BOARD), List.of(), OFF_CENTRE, inner));
    Cavity twin = opening("c", new Bounds(50, 90, 150, 140));
    assertEquals(
        List.of(100.0, 50.0, 120.0, 90.0, 50.0, 90.0),
        measured(Contour.routed(BOARD), List.of(), OFF_CENTRE, twin));
  }

  /** A compass is set at the centre: 80 mm across, 90 from the left edge, 70 from the bottom. */
  @Test
  void aCircleHasItsDiameterAndIsPlacedByItsCentre() {
    Cavity round =
        new Cavity(
            "r",
            Cavity.Kind.THROUGH,
            Contour.routed(Loop.of(Arc.circle(new Point(90, 70), 40))).clockwise(),
            OptionalDouble.empty());
    Part part = new Part("board", "", Contour.routed(BOARD), List.of(round), List.of(), List.of());
    assertEquals(
        List.of("Ø 80.0", "90.0", "70.0"),
        OpeningSizes.of(part, 5).stream().map(d -> d.prefix() + d.value()).toList());
  }
}
