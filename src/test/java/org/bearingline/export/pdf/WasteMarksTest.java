package org.bearingline.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.export.Plot;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;

/** Crosses about a plate of 300 × 200 mm: 22 of them, for 1000 mm of edge at about 45 mm. */
class WasteMarksTest {

  private static List<Point> crosses(Item... words) {
    Path plate = Path.of(Loop.rectangle(new Bounds(0, 0, 300, 200)));
    List<Layer> layers = new ArrayList<>();
    layers.add(new Layer(LayerName.TEMPLATE, Role.CUT, "edge", List.of(new Item.Stroke(plate))));
    layers.add(new Layer(LayerName.LABELS, Role.NOTE, "words", List.of(words)));
    Drawing drawing = new Drawing("plate", layers);
    return new WasteMarks(drawing, Plot.of(drawing, Units.MM, Typeface.REGULAR::width)).crosses();
  }

  @Test
  void allStandInTheWasteOutsideThePlate() {
    List<Point> crosses = crosses();
    assertEquals(22, crosses.size());
    Bounds plate = new Bounds(0, 0, 300, 200);
    assertTrue(crosses.stream().noneMatch(plate::contains));
  }

  /** A word over the first cross: it moves along the edge, out of the word, and none is lost. */
  @Test
  void aCrossMakesRoomForAWord() {
    Point first = crosses().get(0);
    Item word = new Item.Text(first, "4-1/2", 4, 0, Item.Text.Anchor.MIDDLE);
    double half = Typeface.REGULAR.width("4-1/2", 4) / 2 + 1.1;
    Bounds box = new Bounds(first.x() - half, first.y() - 2.5, first.x() + half, first.y() + 2.5);
    List<Point> crosses = crosses(word);
    assertEquals(22, crosses.size());
    assertTrue(crosses.stream().noneMatch(box::contains), crosses.toString());
  }

  /** A dimension's line along the whole of the left side, as far away as crosses stand. */
  @Test
  void noCrossStandsOnADimension() {
    Item size = new Item.Dimension(new Point(0, 0), new Point(0, 200), 3.5, "", 200);
    List<Point> crosses = crosses(size);
    assertTrue(
        crosses.stream()
            .filter(at -> at.y() > 0 && at.y() < 200)
            .noneMatch(at -> at.x() > -6 && at.x() < 0),
        crosses.toString());
    assertTrue(crosses.size() >= 16, crosses.toString());
  }
}
