package org.bearingline.outside.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a maker is warned of, and that a good scan is not warned of at all. */
class ScanWarningTest {

  private static BufferedImage plate(int ground, int wood) {
    BufferedImage image = new BufferedImage(1000, 700, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(new Color(ground, ground, ground));
    pen.fillRect(0, 0, 1000, 700);
    pen.setColor(new Color(wood, wood, wood));
    pen.rotate(0.05, 500, 350);
    pen.fill(new Rectangle2D.Double(200, 200, 600, 300));
    pen.dispose();
    return image;
  }

  private static List<String> warnings(BufferedImage image, double dpi) {
    return ScanReader.read(
            "scan.png", Pictures.file(image, "png"), ScanSettings.usual().withDpi(dpi))
        .warnings();
  }

  private static void assertOnly(String words, List<String> warnings) {
    assertEquals(1, warnings.size(), warnings::toString);
    assertTrue(warnings.get(0).contains(words), warnings::toString);
  }

  @Test
  void aGoodScanIsNotWarnedOf() {
    assertEquals(List.of(), warnings(plate(220, 60), 300));
    assertEquals(List.of(), warnings(plate(60, 200), 300));
  }

  @Test
  void aBlurredPicture() {
    int reach = 15;
    float[] disc = new float[reach * reach];
    Arrays.fill(disc, 1f / disc.length);
    BufferedImage sharp = plate(220, 60);
    BufferedImage blurred =
        new ConvolveOp(new Kernel(reach, reach, disc), ConvolveOp.EDGE_NO_OP, null)
            .filter(sharp, null);
    assertOnly("is blurred", warnings(blurred, 600));
  }

  @Test
  void groundAndTemplateNearlyAlike() {
    assertOnly("nearly alike", warnings(plate(200, 175), 300));
  }

  @Test
  void aScanTooCoarseForTheTolerance() {
    assertOnly("too coarse", warnings(plate(220, 60), 72));
  }

  /** A soft shadow under the lower edge of a plate that lies level. */
  @Test
  void aShadow() {
    BufferedImage image = new BufferedImage(1000, 700, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = image.createGraphics();
    pen.setColor(new Color(220, 220, 220));
    pen.fillRect(0, 0, 1000, 700);
    pen.setPaint(
        new GradientPaint(0, 500, new Color(70, 70, 70), 0, 520, new Color(220, 220, 220)));
    pen.fillRect(200, 500, 600, 20);
    pen.setPaint(new Color(60, 60, 60));
    pen.fillRect(200, 200, 600, 300);
    pen.dispose();
    assertOnly("soft on the lower side of the picture", warnings(image, 600));
  }

  /** Pale wood on white paper: alike in lightness, but wood throws back little blue. */
  @Test
  void paleWoodOnPaperIsReadInItsBlue() {
    BufferedImage image = new BufferedImage(1000, 700, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(new Color(236, 236, 234));
    pen.fillRect(0, 0, 1000, 700);
    pen.setColor(new Color(226, 204, 150));
    pen.fillRect(200, 200, 600, 300);
    pen.dispose();
    Scan scan =
        ScanReader.read(
            "birch.png", Pictures.file(image, "png"), ScanSettings.usual().withDpi(300));
    assertEquals(List.of(), scan.warnings());
    assertTrue(scan.notes().get(0).contains("read in its blue"), scan.notes()::toString);
  }
}
