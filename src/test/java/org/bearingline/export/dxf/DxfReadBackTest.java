package org.bearingline.export.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.export.DemoDrawing;
import org.bearingline.export.Script;
import org.bearingline.external.ExternalProgram;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** DXF files read by ezdxf and by GDAL, two readers that share nothing with the writer. */
class DxfReadBackTest {

  @TempDir Path folder;

  private List<String> read(Drawing drawing) {
    byte[] file = DxfWriter.write(drawing, Units.INCH);
    return Script.run("read_dxf.py", file, folder, "ezdxf");
  }

  private static Drawing template(Loop... loops) {
    List<Item> items = new ArrayList<>();
    for (Loop loop : loops) {
      items.add(new Item.Stroke(org.bearingline.outline.Path.of(loop)));
    }
    return new Drawing(
        "loops", List.of(new Layer(LayerName.TEMPLATE, Role.CUT, "template", items)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 1, 12})
  void ezdxfFindsNothingToMend(double size) {
    List<String> lines = read(DemoDrawing.of(size, 1));
    assertTrue(lines.contains("errors 0"), () -> String.join("\n", lines));
    assertTrue(lines.contains("version AC1015"));
    // DXF Reference, header variables: $INSUNITS 4 is millimetres, $MEASUREMENT 1 is metric.
    assertTrue(lines.contains("units 4 1"));
  }

  @Test
  void everyLayerIsThereWithItsLineTypeAndWeight() {
    List<String[]> layers = Script.facts(read(DemoDrawing.of(1, 1)), "layer");
    List<String> names = layers.stream().map(l -> l[0]).toList();
    for (LayerName name : LayerName.values()) {
      assertTrue(names.contains(name.dxf()), name.dxf());
    }
    String[] template = layers.get(names.indexOf("TEMPLATE"));
    assertEquals("Continuous", template[1]);
    assertEquals("25", template[2], "hundredths of a millimetre");
    assertEquals("ROUGH_LINE_DASHES", layers.get(names.indexOf("ROUGH_LINE"))[1]);
  }

  @Test
  void arcsOfTheTemplateComeBackAsDesigned() {
    List<Loop> designed =
        List.of(
            DemoDrawing.plate(12),
            DemoDrawing.keyhole(new Point(2500.3, 17.1), 9.525),
            DemoDrawing.slot(new Point(-40, 1e-3), 63.5, 4.7625),
            nearlyFull(359.9),
            nearlyFull(181),
            shortArc(1e-3),
            shortArc(1e-6));
    List<String> lines = read(template(designed.toArray(Loop[]::new)));
    List<Double> radii =
        Script.facts(lines, "arc").stream().map(fact -> Double.valueOf(fact[1])).toList();
    List<Arc> arcs =
        designed.stream()
            .flatMap(loop -> loop.primitives().stream())
            .filter(Arc.class::isInstance)
            .map(Arc.class::cast)
            .toList();
    assertEquals(arcs.size(), radii.size(), "as many arcs as designed");
    for (int i = 0; i < arcs.size(); i++) {
      assertEquals(arcs.get(i).radius(), radii.get(i), 1e-6);
    }
    assertTrue(
        lines.stream().filter(l -> l.startsWith("closed")).allMatch(l -> l.endsWith("True")));
  }

  @Test
  void arcsOfAllRadiiAndAnglesKeepTheirRadius() {
    List<Loop> loops = new ArrayList<>();
    List<Double> radii = new ArrayList<>();
    // Low-discrepancy steps by the golden ratio: every size and angle is met, the same each time.
    for (int i = 1; i <= 600; i++) {
      double share = i * 0.6180339887498949 % 1;
      double other = i * 0.7548776662466927 % 1;
      double radius = 0.5 * Math.pow(6000, share);
      Point center = new Point(3000 * other - 1500, 700 * share);
      Arc arc = Arc.around(center, radius, 360 * share, (other - 0.5) * 719);
      loops.add(Loop.of(arc, new Line(arc.end(), arc.start())));
      radii.add(radius);
    }
    List<String[]> arcs = Script.facts(read(template(loops.toArray(Loop[]::new))), "arc");
    assertEquals(600, arcs.size());
    for (int i = 0; i < 600; i++) {
      assertEquals(radii.get(i), Double.parseDouble(arcs.get(i)[1]), 1e-6);
      Arc arc = (Arc) loops.get(i).primitives().get(0);
      assertEquals(Math.signum(arc.sweep()), Math.signum(Double.parseDouble(arcs.get(i)[2])));
    }
  }

  /** A ring with a straight cut across its opening. */
  private static Loop nearlyFull(double sweep) {
    Arc arc = Arc.around(new Point(1234.567, -89.01), 31.75, 10, sweep);
    return Loop.of(arc, new Line(arc.end(), arc.start()));
  }

  /** A long thin piece with one corner rounded by a very short arc. */
  private static Loop shortArc(double length) {
    Point center = new Point(2900.123, 700.456);
    Arc arc = Arc.around(center, 12.7, 33, Math.toDegrees(length / 12.7));
    Point back = arc.end().plus(arc.tangentAt(1).times(50));
    return Loop.of(
        arc, new Line(arc.end(), back), new Line(back, center), new Line(center, arc.start()));
  }

  @Test
  void bulgeIsTheTangentOfAQuarterOfTheAngle() {
    // DXF Reference, LWPOLYLINE, group 42. Quarter turn: tan 22.5° = √2 − 1; half turn: 1.
    Arc quarter = Arc.around(new Point(3, 4), 10, 0, 90);
    assertEquals(Math.sqrt(2) - 1, Bulges.of(quarter), 1e-12);
    assertEquals(-(Math.sqrt(2) - 1), Bulges.of(quarter.reversed()), 1e-12);
    assertEquals(1, Bulges.of(Arc.around(new Point(3, 4), 10, 0, 180)), 1e-12);
    assertEquals(
        Math.tan(Math.toRadians(75)), Bulges.of(Arc.around(Point.ORIGIN, 10, 0, 300)), 1e-9);
  }

  @Test
  void radiusOfAShortArcOutlivesAnEndMovedByAWeld() {
    // A reader's radius is chord (1 + b²) / 4b: over a chord of 1e-3 mm, 1e-9 mm is a millionth.
    Arc arc = Arc.around(new Point(3, 4), 12.7, 0, Math.toDegrees(1e-3 / 12.7));
    Arc welded = arc.withEnds(arc.start(), arc.end().plus(new Point(0, 1e-9)));
    double chord = welded.start().distanceTo(welded.end());
    double bulge = Bulges.of(welded);
    assertEquals(12.7, chord * (1 + bulge * bulge) / (4 * bulge), 1e-7);
    double naive = welded.bulge();
    assertTrue(Math.abs(chord * (1 + naive * naive) / (4 * naive) - 12.7) > 1e-6);
  }

  @Test
  void fullCirclesAreCirclesAndSinglePiecesStaySingle() {
    Arc clockwise = Arc.around(new Point(10, 20), 30, 100, -200);
    Layer layer =
        new Layer(
            LayerName.MARKS,
            Role.MARK,
            "marks",
            List.of(
                new Item.Drill(new Point(5, 6), 8),
                new Item.Stroke(org.bearingline.outline.Path.of(clockwise)),
                new Item.Stroke(
                    org.bearingline.outline.Path.of(new Line(Point.ORIGIN, new Point(1, 2))))));
    List<String> lines = read(new Drawing("single", List.of(layer)));
    String kinds =
        Script.facts(lines, "entity").stream()
            .map(e -> e[1])
            .sorted()
            .collect(Collectors.joining(" "));
    assertEquals("ARC CIRCLE LINE LINE LINE", kinds);
    assertEquals("MARKS 4.0 5.0 6.0", String.join(" ", Script.facts(lines, "circle").get(0)));
    // A DXF arc runs counter-clockwise, so this one starts where the drawing's ends.
    String[] arc = Script.facts(lines, "single").get(0);
    assertEquals(30, Double.parseDouble(arc[1]), 1e-9);
    assertNear(clockwise.end(), arc[2], arc[3]);
    assertNear(clockwise.start(), arc[4], arc[5]);
  }

  private static void assertNear(Point expected, String x, String y) {
    assertEquals(expected.x(), Double.parseDouble(x), 1e-9);
    assertEquals(expected.y(), Double.parseDouble(y), 1e-9);
  }

  @Test
  void wordsComeBackWithTheirSigns() {
    Item words =
        new Item.Text(Point.ORIGIN, "Ø 5/16″ × 1½″ ± 2° ≈ é ^ x →", 4, 0, Item.Text.Anchor.START);
    Layer layer = new Layer(LayerName.LABELS, Role.NOTE, "words", List.of(words));
    String text =
        read(new Drawing("words", List.of(layer))).stream()
            .filter(line -> line.startsWith("text"))
            .findFirst()
            .orElseThrow();
    assertTrue(text.endsWith("Ø 5/16\" × 1½\" ± 2° ~ é ^ x →"), text);
  }

  @Test
  void gdalReadsTheSignsToo() throws Exception {
    Item words = new Item.Text(Point.ORIGIN, "Ø 5/16″ ≈ é", 4, 0, Item.Text.Anchor.START);
    Layer layer = new Layer(LayerName.LABELS, Role.NOTE, "words", List.of(words));
    Path file = folder.resolve("words.dxf");
    Files.write(file, DxfWriter.write(new Drawing("words", List.of(layer)), Units.MM));
    String all = ExternalProgram.named("ogrinfo").run("-al", file);
    assertTrue(all.contains("Ø 5/16\" ~ é"), all);
  }

  @Test
  void linesComeBackToTheLastBit() {
    Loop odd =
        Loop.polygon(
            List.of(new Point(0.1, 1 / 3.0), new Point(1e-7, 3000.0000001), new Point(-7e3, 2.5)));
    List<String[]> lines = Script.facts(read(template(odd)), "line");
    assertEquals(3, lines.size());
    for (int i = 0; i < 3; i++) {
      Primitive piece = odd.primitives().get(i);
      assertEquals(piece.start().x(), Double.parseDouble(lines.get(i)[1]));
      assertEquals(piece.start().y(), Double.parseDouble(lines.get(i)[2]));
    }
  }

  @Test
  void gdalReadsEveryEntityAndTheExtent() throws Exception {
    ExternalProgram ogrinfo = ExternalProgram.named("ogrinfo");
    Loop plate = DemoDrawing.plate(1);
    Path file = folder.resolve("plate.dxf");
    Files.write(
        file,
        DxfWriter.write(template(plate, DemoDrawing.keyhole(new Point(60, 30), 9)), Units.MM));
    String summary = ogrinfo.run("-so", "-al", file);
    assertTrue(summary.contains("Feature Count: 2"), summary);
    // GDAL flattens arcs in steps of 4°: a chord misses its arc by r (1 − cos 2°), 0.02 mm here.
    String extent = summary.lines().filter(l -> l.startsWith("Extent:")).findFirst().orElseThrow();
    String[] figures = extent.replaceAll("[^0-9.\\- ]", " ").trim().split("[ ]+");
    double slack = 30 * (1 - Math.cos(Math.toRadians(2)));
    assertEquals(0, Double.parseDouble(figures[0]), 1e-6);
    assertEquals(0, Double.parseDouble(figures[1]), 1e-6);
    assertEquals(230, Double.parseDouble(figures[3]), slack);
    assertEquals(60, Double.parseDouble(figures[4]), 1e-6);
  }
}
