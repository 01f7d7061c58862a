package org.bearingline.drawing.labels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.bearingline.Seed;
import org.bearingline.drawing.DimensionLayout;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.TextWidth;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Where words stand, checked by walking along every line in short steps. */
class LabelPlacerTest {

  private static final TextWidth WIDTH = (text, height) -> 0.6 * height * text.length();
  private static final double HEIGHT = 4;
  private static final double STEP = 0.05;

  @Provide
  Arbitrary<Primitive> pieces() {
    Arbitrary<Double> place = Arbitraries.doubles().between(-100, 100);
    Arbitrary<Primitive> lines =
        Combinators.combine(place, place, place, place)
            .as((a, b, c, d) -> new Line(new Point(a, b), new Point(c, d + 1e-3)));
    Arbitrary<Primitive> arcs =
        Combinators.combine(
                place,
                place,
                Arbitraries.doubles().between(0.1, 80),
                Arbitraries.doubles().between(-180, 180),
                Arbitraries.doubles().between(1, 360))
            .as((x, y, r, from, sweep) -> Arc.around(new Point(x, y), r, from, sweep));
    return Arbitraries.oneOf(lines, arcs);
  }

  private static boolean walksInto(Primitive piece, Bounds box) {
    int steps = (int) Math.ceil(piece.length() / STEP);
    for (int i = 0; i <= steps; i++) {
      if (box.contains(piece.pointAt((double) i / steps))) {
        return true;
      }
    }
    return false;
  }

  @Property(tries = 500, seed = Seed.FIXED)
  void touchingAgreesWithWalkingAlong(
      @ForAll("pieces") Primitive piece, @ForAll("pieces") Primitive other) {
    Bounds box = other.bounds();
    if (Touching.touches(piece, box)) {
      assertTrue(walksInto(piece, box.grown(STEP)));
    } else {
      assertFalse(walksInto(piece, box));
    }
  }

  private static Bounds boxOf(Item.Text text) {
    double wide = WIDTH.of(text.text(), text.height());
    // The capitals' middle stands on the anchor; 0.5 em up and down holds the letters.
    return new Bounds(
        text.at().x() - wide / 2,
        text.at().y() - text.height() / 2,
        text.at().x() + wide / 2,
        text.at().y() + text.height() / 2);
  }

  @Property(tries = 60, seed = Seed.FIXED)
  void wordsStandClearOfLinesAndOfEachOther(@ForAll("drawings") List<Primitive> pieces) {
    LabelPlacer placer = new LabelPlacer(WIDTH, 1);
    pieces.forEach(piece -> placer.avoid(Path.of(piece)));
    List<Bounds> boxes = new ArrayList<>();
    List<Primitive> lines = new ArrayList<>(pieces);
    for (int i = 0; i < pieces.size(); i++) {
      Wish wish = Wish.at(pieces.get(i).middle(), "label " + i, HEIGHT);
      List<Item> placed = placer.place(wish);
      Bounds box = boxOf((Item.Text) placed.get(0));
      for (Primitive line : lines) {
        assertFalse(walksInto(line, box), () -> "a line runs through the words at " + box);
      }
      boxes.forEach(other -> assertFalse(other.intersects(box), "words upon words"));
      boxes.add(box);
      if (placed.size() > 1) {
        Path leader = ((Item.Arrow) placed.get(1)).path();
        assertEquals(wish.target(), leader.end());
        lines.addAll(leader.primitives());
      }
    }
  }

  @Provide
  Arbitrary<List<Primitive>> drawings() {
    return pieces().list().ofMinSize(1).ofMaxSize(25);
  }

  @Example
  void aHundredWordsForOnePlaceAllFindRoom() {
    LabelPlacer placer = new LabelPlacer(WIDTH, 1);
    List<Bounds> boxes = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      Bounds box =
          boxOf((Item.Text) placer.place(Wish.at(Point.ORIGIN, "number " + i, HEIGHT)).get(0));
      boxes.forEach(other -> assertFalse(other.intersects(box)));
      boxes.add(box);
    }
  }

  @Example
  void numberOfASpeckGetsALeaderThatPointsAtIt() {
    LabelPlacer placer = new LabelPlacer(WIDTH, 1);
    // A narrow slot with a speck of 0.2 mm at its end: no room for the number inside.
    placer.avoid(Path.of(new Line(new Point(0, 0), new Point(60, 0))));
    placer.avoid(Path.of(new Line(new Point(0, 2), new Point(60, 2))));
    placer.avoid(Path.of(Arc.circle(new Point(30, 1), 0.1)));
    List<Item> placed = placer.place(Wish.at(new Point(30, 1), "7", HEIGHT));
    assertEquals(2, placed.size());
    Item.Arrow leader = (Item.Arrow) placed.get(1);
    assertEquals(new Point(30, 1), leader.path().end());
    assertTrue(leader.path().length() < 3 * HEIGHT, "near by: " + leader.path().length());
  }

  @Example
  void firstPreferredSpotThatIsClearIsTakenWithoutALeader() {
    LabelPlacer placer = new LabelPlacer(WIDTH, 1);
    placer.avoid(new Bounds(-50, -5, 50, 5));
    Point free = new Point(0, 30);
    List<Item> placed =
        placer.place(new Wish("edge", HEIGHT, Point.ORIGIN, List.of(new Point(10, 0), free)));
    assertEquals(List.of(new Item.Text(free, "edge", HEIGHT, 0, Item.Text.Anchor.MIDDLE)), placed);
  }

  @Property(tries = 60, seed = Seed.FIXED)
  void dimensionsMoveOutwardUntilTheirFiguresAreClear(
      @ForAll("drawings") List<Primitive> pieces, @ForAll boolean below) {
    LabelPlacer placer = new LabelPlacer(WIDTH, 1);
    pieces.forEach(piece -> placer.avoid(Path.of(piece)));
    double side = below ? -1 : 1;
    Item.Dimension wanted =
        new Item.Dimension(new Point(-60, 10), new Point(55, -20), side * 8, "", 119);
    Item.Dimension placed = placer.place(wanted, "119 mm", HEIGHT);
    assertTrue(placed.offset() * side >= 8, "never nearer, never on the other side");
    DimensionLayout layout = DimensionLayout.of(placed, WIDTH.of("119 mm", HEIGHT), HEIGHT);
    Line line = layout.line().orElseThrow();
    Point along = line.tangentAt(0);
    double half = WIDTH.of("119 mm", HEIGHT) / 2;
    for (Primitive piece : pieces) {
      int steps = (int) Math.ceil(piece.length() / STEP);
      for (int i = 0; i <= steps; i++) {
        Point from = piece.pointAt((double) i / steps).minus(layout.words());
        // In the figures' own directions: along the dimension line and square to it.
        boolean inside =
            Math.abs(from.dot(along)) < half && Math.abs(from.cross(along)) < HEIGHT / 2;
        assertFalse(inside, "a line runs through the figures");
      }
    }
  }

  @Example
  void radiusFiguresStandClearAndPointAtTheArc() {
    LabelPlacer placer = new LabelPlacer(WIDTH, 1);
    Arc arc = Arc.around(new Point(0, 0), 12, 0, 90);
    placer.avoid(Path.of(arc));
    Item.Dimension wanted = new Item.Dimension(arc.center(), arc.middle(), 0, "R ", 12);
    Item.Dimension placed = placer.place(wanted, "R 12 mm", HEIGHT);
    assertEquals(arc.middle(), placed.to());
    DimensionLayout layout = DimensionLayout.of(placed, WIDTH.of("R 12 mm", HEIGHT), HEIGHT);
    double wide = WIDTH.of("R 12 mm", HEIGHT);
    double left = layout.words().x() - (layout.anchor() == Item.Text.Anchor.END ? wide : 0);
    double y = layout.words().y();
    assertFalse(walksInto(arc, new Bounds(left, y - HEIGHT / 2, left + wide, y + HEIGHT / 2)));
    // The pointer starts outside its own figures.
    assertFalse(
        walksInto(
            layout.line().orElseThrow(),
            new Bounds(left, y - HEIGHT / 2, left + wide, y + HEIGHT / 2)));
  }

  @Property(tries = 20, seed = Seed.FIXED)
  void sameCallsGiveTheSamePlaces(@ForAll("drawings") List<Primitive> pieces) {
    assertEquals(places(pieces), places(pieces));
  }

  private static List<Item> places(List<Primitive> pieces) {
    LabelPlacer placer = new LabelPlacer(WIDTH, 1);
    pieces.forEach(piece -> placer.avoid(Path.of(piece)));
    List<Item> items = new ArrayList<>();
    pieces.forEach(piece -> items.addAll(placer.place(Wish.at(piece.start(), "here", HEIGHT))));
    return items;
  }
}
