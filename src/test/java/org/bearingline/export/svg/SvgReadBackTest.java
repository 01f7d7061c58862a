package org.bearingline.export.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.export.DemoDrawing;
import org.bearingline.export.Script;
import org.bearingline.external.ExternalProgram;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** SVG files read by a parser and by renderers that share nothing with the writer. */
class SvgReadBackTest {

  /** CSS Values and Units (W3C): an inch is 96 px and 25.4 mm. */
  private static final double PIXELS_PER_MM = 96 / 25.4;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 1, 12})
  void everyStrokeLiesOnTheDesignAndIsAsLong(double size) {
    Drawing drawing = DemoDrawing.of(size, 1);
    Bounds page = SvgDocument.plot(drawing, Units.MM).page();
    List<String> lines = Script.run("read_svg.py", SvgWriter.write(drawing, Units.MM), folder);
    for (Layer layer : drawing.layers()) {
      List<org.bearingline.outline.Path> strokes =
          layer.items().stream()
              .filter(Item.Stroke.class::isInstance)
              .map(item -> ((Item.Stroke) item).path())
              .toList();
      if (layer.name() == LayerName.LABELS || strokes.isEmpty()) {
        continue;
      }
      List<String[]> traces =
          Script.facts(lines, "trace").stream()
              .filter(fact -> fact[0].equals(layer.name().id()))
              .toList();
      for (int i = 0; i < strokes.size(); i++) {
        check(strokes.get(i), traces.get(i), page);
      }
    }
  }

  private static void check(org.bearingline.outline.Path design, String[] trace, Bounds page) {
    double most = 0;
    for (int i = 2; i < trace.length; i += 2) {
      Point at =
          new Point(
              Double.parseDouble(trace[i]) + page.minX(),
              page.maxY() - Double.parseDouble(trace[i + 1]));
      double least =
          design.primitives().stream().mapToDouble(p -> p.distanceTo(at)).min().orElseThrow();
      most = Math.max(most, least);
    }
    // Ends are rounded to 1e-9 mm; an arc of up to 150° magnifies that by 1 / cos 75°, about 4.
    assertEquals(0, most, 1e-8);
    assertEquals(design.length(), Double.parseDouble(trace[1]), 1e-6);
  }

  @Test
  void sizeIsInMillimetresAndTheViewBoxToo() {
    Drawing drawing = DemoDrawing.of(1, 1);
    Bounds page = SvgDocument.plot(drawing, Units.MM).page();
    List<String> lines = Script.run("read_svg.py", SvgWriter.write(drawing, Units.MM), folder);
    String[] size = Script.facts(lines, "size").get(0);
    assertEquals(page.width(), Double.parseDouble(size[0].replace("mm", "")), 1e-9);
    assertEquals(page.height(), Double.parseDouble(size[1].replace("mm", "")), 1e-9);
    assertTrue(size[0].endsWith("mm") && size[1].endsWith("mm"));
    assertEquals("0 0", size[2] + " " + size[3]);
    assertEquals(page.width(), Double.parseDouble(size[4]), 1e-9);
  }

  @Test
  void oneGroupForEachLayerWithItsTitleAndSpokenWords() {
    List<String> lines =
        Script.run("read_svg.py", SvgWriter.write(DemoDrawing.of(1, 1), Units.INCH), folder);
    List<String> ids = Script.facts(lines, "group").stream().map(g -> g[0]).toList();
    assertEquals(
        List.of(
            "stock",
            "holding",
            "leftover",
            "groove",
            "panel",
            "recess",
            "part",
            "rough-line",
            "cutter-centre",
            "template",
            "marks",
            "feed",
            "labels"),
        ids);
    assertTrue(lines.contains("group template the template of it"));
    assertTrue(lines.contains("words labels réglé à 90° <&> \"words\""));
    assertTrue(lines.contains("words labels ≈ 9-1/16 in"), () -> String.join("\n", lines));
  }

  @Test
  void unitsChangeTheWordsOfDimensionsAlone() {
    String inch = text(SvgWriter.write(DemoDrawing.of(1, 1), Units.INCH));
    String metric = text(SvgWriter.write(DemoDrawing.of(1, 1), Units.MM));
    String template = "<g stroke-dasharray=\"none\" id=\"template\"";
    assertTrue(metric.contains("230 mm"));
    assertFalse(inch.contains("230 mm"));
    assertEquals(
        metric
            .substring(metric.indexOf("<path", metric.indexOf("id=\"template\"")))
            .lines()
            .findFirst(),
        inch.substring(inch.indexOf("<path", inch.indexOf("id=\"template\""))).lines().findFirst(),
        template);
  }

  @Test
  void wordsThatXmlCannotHoldAreReplaced() {
    Item words =
        new Item.Text(Point.ORIGIN, "a\u0001b\ufffec\ud800d", 4, 0, Item.Text.Anchor.START);
    Layer layer = new Layer(LayerName.LABELS, Role.NOTE, "\u0000", List.of(words));
    byte[] file = SvgWriter.write(new Drawing("]]>\"", List.of(layer)), Units.MM);
    List<String> lines = Script.run("read_svg.py", file, folder);
    assertTrue(lines.contains("words labels a\ufffdb\ufffdc\ufffdd"), () -> lines.toString());
  }

  @Test
  void librsvgPaintsItAtFullSize() throws Exception {
    byte[] file = SvgWriter.write(DemoDrawing.of(1, 1), Units.MM);
    Bounds page = SvgDocument.plot(DemoDrawing.of(1, 1), Units.MM).page();
    BufferedImage image = librsvg(file);
    assertEquals(page.width() * PIXELS_PER_MM, image.getWidth(), 1);
    assertEquals(page.height() * PIXELS_PER_MM, image.getHeight(), 1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.2, 1, 12})
  void librsvgAndBatikPaintTheSamePicture(double size) throws Exception {
    byte[] file = SvgWriter.write(DemoDrawing.of(size), Units.INCH);
    int width = 1500;
    BufferedImage one = librsvg(file, "-w", Integer.toString(width));
    BufferedImage other = batik(file, width);
    assertEquals(one.getWidth(), other.getWidth());
    assertEquals(one.getHeight(), other.getHeight(), 1);
    assertEquals(0, inkWithoutMatch(one, other), "ink of librsvg where Batik has none near");
    assertEquals(0, inkWithoutMatch(other, one), "ink of Batik where librsvg has none near");
  }

  /**
   * Pixels with strong ink that have no ink at all within two pixels in the other picture. The same
   * curve lands in the same pixel or the next one, a square end of a dash or a joint's corner one
   * further: more would be another curve.
   */
  private static int inkWithoutMatch(BufferedImage from, BufferedImage in) {
    int count = 0;
    for (int y = 0; y < Math.min(from.getHeight(), in.getHeight()); y++) {
      for (int x = 0; x < from.getWidth(); x++) {
        if (lightness(from, x, y) < 110 && !inkNear(in, x, y)) {
          count++;
        }
      }
    }
    return count;
  }

  private static boolean inkNear(BufferedImage image, int x, int y) {
    for (int j = Math.max(0, y - 2); j <= Math.min(image.getHeight() - 1, y + 2); j++) {
      for (int i = Math.max(0, x - 2); i <= Math.min(image.getWidth() - 1, x + 2); i++) {
        if (lightness(image, i, j) < 240) {
          return true;
        }
      }
    }
    return false;
  }

  private static int lightness(BufferedImage image, int x, int y) {
    int rgb = image.getRGB(x, y);
    return ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 3;
  }

  private BufferedImage librsvg(byte[] file, String... size) throws Exception {
    ExternalProgram rsvg = ExternalProgram.named("rsvg-convert");
    Path in = Files.write(folder.resolve("drawing.svg"), file);
    Path out = folder.resolve("drawing.png");
    if (size.length == 0) {
      rsvg.run("-b", "white", "-d", "96", "-p", "96", "-o", out, in);
    } else {
      rsvg.run("-b", "white", size[0], size[1], "-o", out, in);
    }
    return ImageIO.read(out.toFile());
  }

  private static BufferedImage batik(byte[] file, int width) throws Exception {
    PNGTranscoder painter = new PNGTranscoder();
    painter.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) width);
    painter.addTranscodingHint(PNGTranscoder.KEY_BACKGROUND_COLOR, java.awt.Color.WHITE);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    painter.transcode(
        new TranscoderInput(new ByteArrayInputStream(file)), new TranscoderOutput(out));
    return ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
  }

  private static String text(byte[] file) {
    return new String(file, StandardCharsets.UTF_8);
  }
}
