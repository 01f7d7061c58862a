package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A scan is looked over before it is taken: what to mind, what was cut off, the line on the trace.
 */
class PageScanTest {

  @TempDir Path folder;

  /**
   * A dark board of 140 mm by 80 mm at 127 dpi, five dots a millimetre, with a hole of 3 mm and a
   * hair that stands off its upper edge.
   */
  private Path scan() throws IOException {
    BufferedImage picture = new BufferedImage(900, 600, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(
        java.awt.RenderingHints.KEY_ANTIALIASING, java.awt.RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(new Color(0xf4, 0xf4, 0xf4));
    pen.fillRect(0, 0, 900, 600);
    pen.setColor(new Color(0x30, 0x30, 0x30));
    pen.fill(new RoundRectangle2D.Double(100, 100, 700, 400, 200, 200));
    pen.setStroke(new BasicStroke(2.5f));
    pen.draw(new Line2D.Double(400, 102, 430, 60));
    pen.setColor(new Color(0xf4, 0xf4, 0xf4));
    pen.fill(new Ellipse2D.Double(300, 250, 15, 15));
    pen.dispose();
    Path file = folder.resolve("board.png");
    ImageIO.write(picture, "png", file.toFile());
    return file;
  }

  @Test
  void whatWasFoundIsReadBeforeItIsTakenAndStaysWithThePart() throws IOException {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.hand(scan());
      browser.await("document.getElementById('scan-dialog').open");
      bench.type("#scan-dpi", "five").click("#scan-trace");
      bench.awaitText("#scan-refusal", "“five” is no number");
      assertFalse(bench.text("#scan-refusal").contains("--"));
      assertEquals("true", bench.run("return document.activeElement.getAttribute('aria-invalid')"));
      bench.type("#scan-dpi", "127").click("#scan-trace");
      browser.await("document.getElementById('scan-take').checkVisibility()");
      bench.awaitText("#scan-words", "on the edge");
      bench.awaitText("#scan-words", "leave them out with “Dust and grain” 4mm");
      assertTrue(bench.is("document.querySelectorAll('.seen-template path').length === 2"));
      browser.picture("scan-found");
      assertEquals(List.of(), browser.barriers());
      // What is smaller than a speck is dust: the hole goes.
      bench.click("#scan-edge summary").type("#scan-speck", "4mm").click("#scan-trace");
      browser.await("document.querySelectorAll('.seen-template path').length === 1");
      // A wish that belongs to a photo is refused at its field, which is opened.
      bench.click("#scan-photo summary").type("#scan-face-above", "6mm").click("#scan-trace");
      bench.awaitText("#scan-refusal", "“Face above the marks” 6mm “Camera above the marks”");
      assertTrue(bench.is("document.activeElement.id === 'scan-camera-above'"));
      bench.type("#scan-face-above", "").click("#scan-trace");
      browser.await("document.getElementById('scan-take').checkVisibility()");
      String words = bench.text("#scan-words");
      bench.click("#scan-take").awaitDrawing();
      browser.await("!document.getElementById('traced-box').hidden");
      assertEquals(words, bench.text("#traced-words"));
      assertEquals("Traced from board.png", bench.text("#traced-head"));
      browser.picture("scan-taken");
      assertEquals(List.of(), browser.barriers());
      assertEquals(List.of(), server.defects());
    }
  }
}
