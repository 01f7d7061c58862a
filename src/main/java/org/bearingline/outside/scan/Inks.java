package org.bearingline.outside.scan;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;

/** The colours that four printing inks leave on white paper. */
final class Inks {

  private Inks() {}

  /** How a file writes the inks of cyan, magenta, yellow and black. */
  enum Writing {
    /** 255 is no ink, as programs write them into JPEG. */
    LIGHT,
    /**
     * Black so, the others as light and two differences of colour (ITU-T T.871, 7) of their
     * amounts.
     */
    TURNED,
    /** 255 is all ink, as in TIFF 6.0, section 16. */
    AMOUNT
  }

  /** The light that is left of red, green and blue: what a colour's ink and black let through. */
  static BufferedImage colours(Raster inks, Writing writing) {
    int width = inks.getWidth();
    int height = inks.getHeight();
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    int[] row = new int[width * 4];
    int[] colours = new int[width];
    for (int y = 0; y < height; y++) {
      inks.getPixels(inks.getMinX(), inks.getMinY() + y, width, 1, row);
      for (int x = 0; x < width; x++) {
        colours[x] = colour(row[4 * x], row[4 * x + 1], row[4 * x + 2], row[4 * x + 3], writing);
      }
      image.setRGB(0, y, width, 1, colours, 0, width);
    }
    return image;
  }

  private static int colour(int one, int two, int three, int black, Writing writing) {
    return switch (writing) {
      case LIGHT -> light(one, black) << 16 | light(two, black) << 8 | light(three, black);
      case AMOUNT -> colour(255 - one, 255 - two, 255 - three, 255 - black, Writing.LIGHT);
      case TURNED -> {
        double blueOff = two - 128.0;
        double redOff = three - 128.0;
        yield light(255 - (one + 1.402 * redOff), black) << 16
            | light(255 - (one - 0.344136 * blueOff - 0.714136 * redOff), black) << 8
            | light(255 - (one + 1.772 * blueOff), black);
      }
    };
  }

  private static int light(double throughColour, int throughBlack) {
    return (int) Math.round(Math.max(0, Math.min(255, throughColour)) * throughBlack / 255);
  }
}
