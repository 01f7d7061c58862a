package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A scan of a template, from the command to a layout at another length. */
class KeepPictureTest {

  @TempDir Path folder;

  /** At 254 dpi, a tenth of a millimetre a pixel: 120 mm × 40 mm with a hollow of radius 20 mm. */
  private String scan(double turn) throws IOException {
    BufferedImage image = new BufferedImage(1600, 900, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.setColor(Color.LIGHT_GRAY);
    pen.fillRect(0, 0, 1600, 900);
    pen.rotate(Math.toRadians(turn), 800, 450);
    Area rail = new Area(new Rectangle2D.Double(200, 250, 1200, 400));
    rail.subtract(new Area(new Ellipse2D.Double(600, 450, 400, 400)));
    pen.setColor(Color.DARK_GRAY);
    pen.fill(rail);
    pen.dispose();
    Path file = folder.resolve("old-rail.png");
    ImageIO.write(image, "png", file.toFile());
    return file.toString();
  }

  @Test
  void aScanIsKeptAndLaidOutLonger() throws IOException {
    Path kept = folder.resolve("kept");
    CommandRun keep =
        CommandRun.of(
            "keep",
            scan(3),
            "--dpi",
            "254",
            "--units",
            "mm",
            "--symmetric",
            "left-right",
            "--into",
            kept.toString());
    assertEquals(0, keep.status(), keep::err);
    assertTrue(keep.out().contains("turned by 3.0°"), keep::out);
    assertTrue(Files.exists(kept.resolve("old-rail-preview.png")));
    String shape = kept.resolve("old-rail.yaml").toString();
    Path out = folder.resolve("out");
    CommandRun layout =
        CommandRun.of("layout", shape, "--set", "length=200mm", "--into", out.toString());
    assertEquals(0, layout.status(), layout::err);
    Path report = out.resolve("report.json");
    assertEquals(200, number(report, "width"), 1e-6);
    assertEquals(40, number(report, "height"), 0.03);
    assertEquals(20, number(report, "smallestInsideRadius"), 0.1);
  }

  /** The first number of that name in a report. */
  private static double number(Path report, String name) throws IOException {
    try (JsonParser json = new JsonFactory().createParser(report.toFile())) {
      for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
        if (token == JsonToken.FIELD_NAME && json.currentName().equals(name)) {
          json.nextToken();
          return json.getDoubleValue();
        }
      }
    }
    throw new AssertionError("no " + name + " in " + report);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--dpi|three hundred|--dpi: “three hundred” is no number",
        "--dpi|3|--dpi: a scan has 20 to 10000 dpi",
        "--marks-apart|600mm|--marks-apart: give two distances or more",
        "--marks-apart|600mm,300mm,671mm|does not say between which marks",
        "--marks-apart|A-B=600mm,B-A=600mm|is given twice",
        "--marks-apart|600mm,300mm|of the four corner marks A, B, C, D are not seen",
        "--face-above|6mm|--camera-above: give both",
        "--layer|edge|--layer: this is for a drawing",
      })
  void whatIsSaidWronglyIsOneSentence(String option, String value, String sentence)
      throws IOException {
    Path into = folder.resolve("nothing");
    CommandRun run = CommandRun.of("keep", scan(0), option, value, "--into", into.toString());
    assertEquals(2, run.status());
    assertTrue(run.err().contains(sentence), run::err);
    assertEquals(1, run.err().lines().count());
    assertFalse(Files.exists(into));
  }
}
