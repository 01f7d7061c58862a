package org.bearingline.routing.grain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.junit.jupiter.api.Test;

/** Necks and limbs whose length along the fibres and reach across them are worked by hand. */
class ShortGrainTest {

  private static List<ShortGrain> places(Outline wood, double fibres) {
    return ShortGrainSearch.of(wood, GrainSettings.usual().withFibres(fibres), Units.MM);
  }

  private static Outline polygon(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Point(xy[i], xy[i + 1]));
    }
    return Outline.of(Loop.polygon(corners));
  }

  private static Outline board(double width, double height) {
    return Outline.of(Loop.rectangle(new Bounds(0, 0, width, height)));
  }

  @Test
  void aBoardWithFibresAcrossIsShortGrainedInTheMiddle() {
    // 50 along the fibres; from the middle 200 each way across them.
    List<ShortGrain> places = places(board(50, 400), 0);
    assertEquals(1, places.size());
    ShortGrain place = places.get(0);
    assertEquals(50, place.along(), 1e-9);
    assertEquals(200, place.across(), 1);
    assertEquals(0.25, place.ratio(), 0.005);
    assertEquals(25, place.at().x(), 1e-9);
    assertEquals(200, place.at().y(), 1.5);
    assertTrue(place.sentence().contains("50 mm"), place.sentence());
  }

  @Test
  void theSameBoardWithFibresAlongIsSound() {
    assertTrue(places(board(50, 400), 90).isEmpty());
    assertTrue(places(board(50, 400), 270).isEmpty());
  }

  @Test
  void squareAndDiscAreSound() {
    assertTrue(places(board(100, 100), 0).isEmpty());
    assertTrue(places(board(100, 100), 45).isEmpty());
    assertTrue(places(Outline.of(Loop.of(Arc.circle(Point.ORIGIN, 80))), 20).isEmpty());
  }

  @Test
  void aTabOnARailIsFoundAtItsRoot() {
    // A tab 10 wide stands 30 high on a rail 600 x 60.
    Outline rail = polygon(0, 0, 600, 0, 600, 60, 305, 60, 305, 90, 295, 90, 295, 60, 0, 60);
    List<ShortGrain> places = places(rail, 0);
    assertEquals(1, places.size());
    assertEquals(10, places.get(0).along(), 1e-9);
    assertEquals(30, places.get(0).across(), 1);
    assertEquals(60, places.get(0).at().y(), 1.5);
    assertEquals(300, places.get(0).at().x(), 1e-9);
  }

  @Test
  void aNeckBetweenTwoBroadEndsIsFoundAtItsNarrowest() {
    // An hourglass: 200 wide at both ends, 20 at the middle, 300 high.
    Outline glass = polygon(-100, 0, 100, 0, 10, 150, 100, 300, -100, 300, -10, 150);
    List<ShortGrain> places = places(glass, 0);
    assertEquals(1, places.size());
    assertEquals(20, places.get(0).along(), 2, "within one step of the waist");
    assertEquals(150, places.get(0).at().y(), 1.5);
  }

  @Test
  void aSlenderPointIsShortGrainedOverAllItsLength() {
    // Apex of 30°: at the distance h from it the chord is 2 h tan 15°, everywhere 0.536 of h.
    double half = 100 * Math.tan(Math.toRadians(15));
    Outline point = polygon(-half, 0, half, 0, 0, 100);
    assertTrue(places(point, 0).isEmpty(), "more than half is let pass");
    GrainSettings stricter = GrainSettings.usual().withShortGrain(1, 6, 0.25);
    List<ShortGrain> places = ShortGrainSearch.of(point, stricter, Units.MM);
    assertEquals(1, places.size());
    assertEquals(2 * Math.tan(Math.toRadians(15)), places.get(0).ratio(), 0.02);
  }

  @Test
  void bothStilesOfARingAreFound() {
    // A frame 300 x 400 with 30 wide sides round an opening, fibres from side to side.
    Outline ring =
        Outline.of(
            Loop.rectangle(new Bounds(0, 0, 300, 400)),
            Loop.rectangle(new Bounds(30, 30, 270, 370)));
    List<ShortGrain> places = places(ring, 0);
    assertEquals(2, places.size());
    for (ShortGrain place : places) {
      assertEquals(30, place.along(), 1e-9);
      assertEquals(200, place.across(), 1);
    }
    assertEquals(List.of(1, 2), places.stream().map(ShortGrain::number).toList());
  }

  @Test
  void turningPartAndFibresTogetherChangesNothing() {
    Outline rail = polygon(0, 0, 600, 0, 600, 60, 305, 60, 305, 90, 295, 90, 295, 60, 0, 60);
    ShortGrain before = places(rail, 0).get(0);
    Similarity turn = Similarity.rotation(33, new Point(50, 20));
    ShortGrain after = places(rail.transformed(turn), 33).get(0);
    assertEquals(before.ratio(), after.ratio(), 1e-6);
    assertEquals(0, turn.apply(before.at()).distanceTo(after.at()), 1e-6);
    assertEquals(before.along(), after.chord().length(), 1e-9);
  }

  @Test
  void anArcIsCutWhereItsCircleIs() {
    // A half disc of radius 40 on a stem 16 wide and 100 high: the stem's chord is exact.
    Arc head = Arc.around(new Point(0, 100), 40, 0, 180);
    List<Point> feet =
        List.of(
            new Point(-40, 100),
            new Point(-8, 100),
            new Point(-8, 0),
            new Point(8, 0),
            new Point(8, 100),
            new Point(40, 100));
    List<Primitive> pieces = new ArrayList<>(List.of(head));
    for (int i = 0; i + 1 < feet.size(); i++) {
      pieces.add(new Line(feet.get(i), feet.get(i + 1)));
    }
    List<ShortGrain> places = places(Outline.of(new Loop(pieces)), 0);
    assertEquals(1, places.size());
    assertEquals(16, places.get(0).along(), 1e-9);
    assertEquals(70, places.get(0).at().y(), 1.5, "as far to the foot as to the top");
    assertFalse(places.get(0).chord().start().equals(places.get(0).chord().end()));
  }

  @Test
  void aSmallNibIsLetPass() {
    Outline rail = polygon(0, 0, 600, 0, 600, 60, 302, 60, 302, 65, 298, 65, 298, 60, 0, 60);
    assertTrue(places(rail, 0).isEmpty());
  }
}
