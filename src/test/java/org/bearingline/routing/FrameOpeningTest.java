package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.construct.CircleSegment;
import org.bearingline.part.Contour;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The hole in a frame, put together from rails as they are drawn. */
class FrameOpeningTest {

  private static final double WIDE = 14 * Frames.INCH;
  private static final double HIGH = 18 * Frames.INCH;
  private static final double RISE = 1.75 * Frames.INCH;

  /** Over the arch of 12 in span: the area of a circle's segment by the handbook formula. */
  private static final double SEGMENT = CircleSegment.ofChordAndRise(12 * Frames.INCH, RISE).area();

  private static final Part RAIL = Frames.shape("arched-door-rail");

  private static FrameOpening of(Optional<Part> top, Optional<Part> bottom) {
    return FrameOpening.of(WIDE, HIGH, top, bottom, Units.MM);
  }

  @Test
  void straightRailsLeaveARectangle() {
    Loop loop = of(Optional.empty(), Optional.empty()).loop();
    assertEquals(WIDE * HIGH, loop.signedArea(), 1e-9);
    assertEquals(4, loop.size());
  }

  @Test
  void archedTopAddsItsSegment() {
    FrameOpening opening = of(Optional.of(RAIL), Optional.empty());
    assertEquals(WIDE * HIGH + SEGMENT, opening.loop().signedArea(), 1e-6);
    assertTrue(opening.top().shaped());
    assertFalse(opening.bottom().shaped());
    Bounds box = opening.loop().bounds();
    assertEquals(HIGH + RISE, box.maxY(), 1e-9);
    assertEquals(0, box.minX(), 1e-9);
    assertEquals(WIDE, box.maxX(), 1e-9);
    // The tenons, 1-1/4 in long, carry the edge on.
    assertEquals(-1.25 * Frames.INCH, opening.top().whole().start().x(), 1e-9);
  }

  /** The same rail serves below: it is turned by half a turn. */
  @Test
  void archedBothEnds() {
    FrameOpening opening = of(Optional.of(RAIL), Optional.of(RAIL));
    assertEquals(WIDE * HIGH + 2 * SEGMENT, opening.loop().signedArea(), 1e-6);
    assertEquals(-RISE, opening.loop().bounds().minY(), 1e-9);
  }

  /** However the rail lies on its drawing, it comes into the frame the same way round. */
  @ParameterizedTest
  @ValueSource(doubles = {37, 90, 180, -120})
  void aTurnedDrawingIsTheSameRail(double degrees) {
    Similarity turn = Similarity.rotation(degrees, new Point(70, -20));
    Part turned =
        new Part(
            RAIL.name(),
            RAIL.about(),
            RAIL.contour().transformed(turn),
            RAIL.cavities(),
            RAIL.marks().stream().map(mark -> mark.transformed(turn)).toList(),
            RAIL.notes());
    Loop expected = of(Optional.of(RAIL), Optional.empty()).loop();
    Loop loop = of(Optional.of(turned), Optional.empty()).loop();
    assertEquals(expected.size(), loop.size());
    for (int i = 0; i < loop.size(); i++) {
      Point middle = expected.primitives().get(i).middle();
      assertEquals(0, loop.primitives().get(i).middle().distanceTo(middle), 1e-6);
    }
  }

  @Test
  void aRailWithoutShouldersIsTakenFromEndToEnd() {
    Part rail = Parts.liftRail(60);
    FrameOpening opening = FrameOpening.of(600, 400, Optional.of(rail), Optional.empty(), Units.MM);
    assertEquals(0, opening.top().inner().start().distanceTo(new Point(0, 400)), 1e-9);
    assertEquals(460, opening.loop().bounds().maxY(), 1e-9);
  }

  @Test
  void aSlopingRailMakesTheRightSideHigher() {
    Part rail = Walk.from(0, 0, 0).to(300, 40).sawn().to(300, 120).to(0, 120).part("sloping");
    Part marked =
        new Part(
            rail.name(),
            "",
            rail.contour(),
            rail.cavities(),
            java.util.List.of(
                new Mark.ShoulderLine(new Point(30, 0), new Point(30, 120), "shoulder"),
                new Mark.ShoulderLine(new Point(270, 0), new Point(270, 120), "shoulder")),
            rail.notes());
    FrameOpening opening =
        FrameOpening.of(240, 200, Optional.of(marked), Optional.empty(), Units.MM);
    assertTrue(opening.top().shaped());
    assertEquals(240 * 200 + 240 * 32 / 2.0, opening.loop().signedArea(), 1e-6);
  }

  @Test
  void refusals() {
    Problem length =
        assertThrows(
            Problem.class,
            () -> FrameOpening.of(400, HIGH, Optional.of(RAIL), Optional.empty(), Units.MM));
    assertTrue(length.getMessage().contains("between its shoulders"), length.getMessage());
    Part both =
        Walk.from(0, 0, 0)
            .ahead(300)
            .sawn()
            .turn(90)
            .ahead(90)
            .routed()
            .turn(90)
            .ahead(300)
            .sawn()
            .to(0, 0)
            .part("both");
    Problem two =
        assertThrows(
            Problem.class,
            () -> FrameOpening.of(300, HIGH, Optional.of(both), Optional.empty(), Units.MM));
    assertTrue(two.getMessage().contains("one routed edge"), two.getMessage());
    Part sawn = Walk.part("sawn", Contour.sawn(both.contour().loop()));
    assertThrows(
        Problem.class,
        () -> FrameOpening.of(300, HIGH, Optional.of(sawn), Optional.empty(), Units.MM));
    Problem height = assertThrows(Problem.class, () -> Frames.plain(300, 0));
    assertTrue(height.getMessage().contains("height"), height.getMessage());
  }

  /** A rail that hangs down meets the bottom rail in a low opening. */
  @Test
  void railsThatMeetAreRefused() {
    Part belly =
        Walk.from(0, 60, 0)
            .to(100, 60)
            .to(150, 0)
            .to(200, 60)
            .to(300, 60)
            .sawn()
            .to(300, 120)
            .to(0, 120)
            .part("belly");
    Problem problem = assertThrows(Problem.class, () -> Frames.under(300, 50, belly));
    assertTrue(problem.getMessage().contains("meet"), problem.getMessage());
    assertEquals(70, Frames.under(300, 70, belly).height());
  }
}
