package org.bearingline.web;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** A scan of a plain board, for the page to trace. */
final class ScannedBoard {

  private ScannedBoard() {}

  /** Writes a dark board of 700 by 400 dots with round ends on light ground, as a PNG. */
  static Path write(Path file) throws IOException {
    BufferedImage picture = new BufferedImage(900, 600, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = picture.createGraphics();
    pen.setColor(new Color(0xf4, 0xf4, 0xf4));
    pen.fillRect(0, 0, 900, 600);
    pen.setColor(new Color(0x30, 0x30, 0x30));
    pen.fillRoundRect(100, 100, 700, 400, 200, 200);
    pen.dispose();
    ImageIO.write(picture, "png", file.toFile());
    return file;
  }
}
