package org.bearingline.export.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.batik.parser.AWTPathProducer;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.junit.jupiter.api.Test;

/** Path data for a screen, read back by Batik. */
class ScreenDrawingTest {

  private static ScreenDrawing of(Item... items) {
    Layer layer = new Layer(LayerName.PART, Role.NOTE, "part", List.of(items));
    return ScreenDrawing.of(new Drawing("x", List.of(layer)), Units.MM);
  }

  private static Rectangle2D box(ScreenDrawing.ScreenFigure figure) throws IOException {
    String d = ((ScreenDrawing.Drawn) figure).d();
    return AWTPathProducer.createShape(new StringReader(d), 1).getBounds2D();
  }

  @Test
  void itsOriginIsTheDrawingsAndYRunsDown() throws IOException {
    ScreenDrawing drawing =
        of(new Item.Stroke(Path.of(new Line(new Point(10, 20), new Point(110, 70)))));
    Rectangle2D box = box(drawing.layers().get(0).figures().get(0));
    assertEquals(new Rectangle2D.Double(10, -70, 100, 50), box);
    ScreenDrawing.Box view = drawing.view();
    assertTrue(view.x() < 10 && view.y() < -70);
    assertTrue(view.x() + view.width() > 110 && view.y() + view.height() > -20);
  }

  @Test
  void arcsBulgeToTheSideTheyAreDrawnOn() throws IOException {
    // The upper half of a circle about (0, 0), from right to left.
    Arc upper = Arc.circle(Point.ORIGIN, 30).part(0, 0.5);
    Rectangle2D box = box(of(new Item.Stroke(Path.of(upper))).layers().get(0).figures().get(0));
    assertEquals(-30, box.getMinY(), 0.01);
    assertEquals(0, box.getMaxY(), 0.01);
    assertEquals(60, box.getWidth(), 0.01);
  }

  @Test
  void wordsStandOnTheirBaseLine() {
    ScreenDrawing drawing =
        of(new Item.Text(new Point(5, 40), "R 1/2 in", 10, 90, Item.Text.Anchor.MIDDLE));
    ScreenDrawing.Written words = (ScreenDrawing.Written) drawing.layers().get(0).figures().get(0);
    assertEquals("middle", words.anchor());
    assertEquals(-90, words.turn());
    // Open Sans has capitals 1462 units high in an em of 2048 (its OS/2 table, sCapHeight).
    assertEquals(5 + 10 * 1462.0 / 2048 / 2, words.x(), 0.01);
    assertEquals(-40, words.y(), 0.01);
  }

  @Test
  void aSimilarityIsUndoneByItsInverse() {
    Point p = new Point(3, -7);
    for (Similarity map :
        List.of(
            Similarity.rotation(33, new Point(1, 2)).then(Similarity.scaling(2.5)),
            Similarity.mirror(new Point(1, 5), new Point(-3, 2))
                .then(Similarity.translation(4, 9))
                .then(Similarity.scaling(0.3)))) {
      Point back = map.then(map.inverse()).apply(p);
      assertEquals(0, back.distanceTo(p), 1e-9);
      assertEquals(0, map.inverse().apply(map.apply(p)).distanceTo(p), 1e-9);
    }
  }
}
