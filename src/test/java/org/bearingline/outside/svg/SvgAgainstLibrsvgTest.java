package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outline.Point;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Sketches;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Drawings painted by librsvg, and what the reader made of them painted by librsvg as bare
 * polygons: the pictures agree. Drawings of our own use every command and every frame; those in the
 * folder {@code icons} were drawn by others, see the licence there.
 */
class SvgAgainstLibrsvgTest {

  private static final int PIXELS = 800;

  /** Of 255: half of what an edge half a pixel off would show. */
  private static final int UNLIKE = 64;

  private static final String BARE = "text { display: none }";

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> picturesAgree() throws IOException, URISyntaxException {
    ExternalProgram librsvg = ExternalProgram.named("rsvg-convert");
    Path all = Path.of(Sketches.class.getResource("svg/every-frame.svg").toURI()).getParent();
    List<Path> drawings;
    try (Stream<Path> files = Files.walk(all)) {
      drawings = files.filter(file -> file.toString().endsWith(".svg")).sorted().toList();
    }
    assertTrue(drawings.size() > 2);
    return drawings.stream()
        .map(
            drawing ->
                DynamicTest.dynamicTest(
                    drawing.getFileName().toString(), () -> compare(librsvg, drawing)));
  }

  private void compare(ExternalProgram librsvg, Path drawing) throws IOException {
    byte[] bytes = Files.readAllBytes(drawing);
    Sketch sketch = SvgReader.read(drawing.toString(), bytes, ReadingSettings.USUAL);
    Path ours =
        Files.writeString(
            folder.resolve("ours.svg"), painted(sketch, new String(bytes, StandardCharsets.UTF_8)));
    BufferedImage theirs = picture(librsvg, drawing, "theirs.png");
    BufferedImage mine = picture(librsvg, ours, "ours.png");
    assertEquals(theirs.getWidth(), mine.getWidth());
    assertEquals(theirs.getHeight(), mine.getHeight());
    int unlike = 0;
    int black = 0;
    for (int y = 0; y < theirs.getHeight(); y++) {
      for (int x = 0; x < theirs.getWidth(); x++) {
        int a = theirs.getRGB(x, y) >>> 24;
        int b = mine.getRGB(x, y) >>> 24;
        unlike += Math.abs(a - b) > UNLIKE ? 1 : 0;
        black += a > 128 ? 1 : 0;
      }
    }
    assertTrue(black > PIXELS, "librsvg painted nothing");
    assertTrue(unlike <= 3, drawing + ": " + unlike + " pixels of " + black + " differ");
  }

  private BufferedImage picture(ExternalProgram librsvg, Path drawing, String name)
      throws IOException {
    Path sheet = Files.writeString(folder.resolve("bare.css"), BARE);
    Path png = folder.resolve(name);
    librsvg.run(
        "--stylesheet", sheet, "--width", PIXELS, "--keep-aspect-ratio", "-o", png, drawing);
    return ImageIO.read(png.toFile());
  }

  /** The figures as polygons, in the frame of the drawing. */
  private static String painted(Sketch sketch, String original) {
    StringBuilder svg = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' ");
    // A drawing in mm is 10 by 5 cm here; any other is shown in its own box.
    svg.append(
        sketch.sized()
            ? "width='10cm' height='5cm' viewBox='0 0 100 50'"
            : "viewBox='" + original.replaceAll("(?s).*?viewBox=\"([^\"]*)\".*", "$1") + "'");
    svg.append(">\n");
    for (Figure figure : sketch.figures()) {
      svg.append("<path fill-rule='")
          .append(figure.rule() == FillRule.EVEN_ODD ? "evenodd" : "nonzero")
          .append("' d='");
      for (Stroke stroke : figure.strokes()) {
        char command = 'M';
        for (StrokePiece piece : stroke.pieces()) {
          for (Point p : Sketches.sampled(piece, 512)) {
            svg.append(String.format(Locale.ROOT, "%c%.9f %.9f", command, p.x(), 0 - p.y()));
            command = 'L';
          }
        }
        svg.append('Z');
      }
      svg.append("'/>\n");
    }
    return svg.append("</svg>").toString();
  }

  @Test
  void whatIsLeftOutAndWhyIsTold() throws IOException {
    byte[] bytes = Sketches.class.getResourceAsStream("svg/every-frame.svg").readAllBytes();
    Sketch sketch = SvgReader.read("frames.svg", bytes, ReadingSettings.USUAL);
    assertEquals(
        List.of(
            "1 clip",
            "1 gradient",
            "2 hidden elements",
            "1 shape without fill and stroke",
            "1 text"),
        sketch.ignored());
    assertTrue(sketch.sized());
  }
}
