package org.bearingline.outside.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Consumer;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;

/** What else lies on a scanner's glass beside a template of 600 by 300 pixels, at 300 dpi. */
class ScanClutterTest {

  private static final double PIXEL = 25.4 / 300;
  private static final Color PAPER = new Color(230, 230, 226);
  private static final Color WOOD = new Color(70, 55, 45);
  private static final Rectangle2D TEMPLATE = new Rectangle2D.Double(200, 200, 600, 300);

  private static Scan scan(Consumer<Graphics2D> clutter) {
    BufferedImage image = new BufferedImage(1000, 700, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.setColor(PAPER);
    pen.fillRect(0, 0, 1000, 700);
    pen.setColor(WOOD);
    pen.fill(TEMPLATE);
    clutter.accept(pen);
    pen.dispose();
    return ScanReader.read(
        "glass.png", Pictures.file(image, "png"), ScanSettings.usual().withDpi(300));
  }

  private static void assertTemplate(Scan scan) {
    List<Point> points = Truth.points(scan.sketch());
    Bounds box = points.stream().map(Bounds::of).reduce(Bounds::union).orElseThrow();
    assertEquals(200 * PIXEL, box.minX(), 0.02);
    assertEquals(800 * PIXEL, box.maxX(), 0.02);
    assertEquals(200 * PIXEL, box.minY(), 0.02);
    assertEquals(500 * PIXEL, box.maxY(), 0.02);
  }

  private static void assertWarned(String words, Scan scan) {
    assertEquals(1, scan.warnings().size(), scan.warnings()::toString);
    assertTrue(scan.warnings().get(0).contains(words), scan.warnings()::toString);
  }

  @Test
  void pencilLinesAndHairsOutOverThePaper() {
    Scan scan =
        scan(
            pen -> {
              pen.setStroke(new BasicStroke(5));
              pen.draw(new Line2D.Double(500, 350, 940, 330));
              pen.draw(new Line2D.Double(400, 350, 430, 60));
            });
    assertTemplate(scan);
    assertEquals(List.of("2 hairs, lines or crumbs on the edge"), scan.sketch().ignored());
    assertEquals(List.of(), scan.warnings());
  }

  @Test
  void dustOnTheEdge() {
    Scan scan =
        scan(
            pen -> {
              pen.fill(new Ellipse2D.Double(300, 194, 8, 10));
              pen.setColor(PAPER);
              pen.fill(new Ellipse2D.Double(600, 495, 8, 10));
            });
    assertTemplate(scan);
    assertEquals(List.of("2 hairs, lines or crumbs on the edge"), scan.sketch().ignored());
  }

  /** A notch of 3 mm is wood filed away, not dirt. */
  @Test
  void aNotchStays() {
    Scan scan =
        scan(
            pen -> {
              pen.setColor(PAPER);
              pen.fill(new Rectangle2D.Double(400, 190, 36, 40));
            });
    assertTemplate(scan);
    assertEquals(List.of(), scan.sketch().ignored());
    assertTrue(
        Truth.points(scan.sketch()).stream()
            .anyMatch(p -> p.distanceTo(new Point(418 * PIXEL, 470 * PIXEL)) < 0.1));
  }

  @Test
  void aThumbOnTheEdge() {
    Scan scan =
        scan(
            pen -> {
              pen.setColor(new Color(178, 130, 110));
              pen.fill(new Rectangle2D.Double(0, 300, 260, 90));
            });
    assertTrue(
        scan.warnings().stream()
            .anyMatch(w -> w.contains("neither template nor ground") && w.contains("left part")),
        scan.warnings()::toString);
  }

  @Test
  void aSecondTemplateIsAskedAbout() {
    Problem problem =
        assertThrows(
            Problem.class, () -> scan(pen -> pen.fill(new Rectangle2D.Double(200, 520, 600, 160))));
    assertTrue(problem.spoken().contains("two pieces are seen, one 51 × 25 mm and one 51 × 14 mm"));
  }

  @Test
  void anOffcutIsWarnedOf() {
    Scan scan = scan(pen -> pen.fill(new Rectangle2D.Double(300, 550, 200, 100)));
    assertTemplate(scan);
    assertWarned("a second piece of 17 × 8 mm", scan);
  }

  /** The white sheet does not cover the glass, and the open lid is dark. */
  @Test
  void theDarkBesideTheSheet() {
    Scan scan =
        scan(
            pen -> {
              pen.setColor(new Color(15, 15, 15));
              pen.fillRect(0, 0, 1000, 60);
              pen.fillRect(930, 0, 70, 700);
            });
    assertTemplate(scan);
    assertWarned("a scanner's lid", scan);
  }
}
