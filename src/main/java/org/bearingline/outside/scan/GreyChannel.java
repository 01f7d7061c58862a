package org.bearingline.outside.scan;

import boofcv.alg.filter.binary.GThresholdImageOps;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.util.stream.IntStream;

/**
 * Makes one channel of a colour picture. Plain light serves most; light wood on white paper, or on
 * a coloured cloth, stands out better in red or blue alone, and what was cut out of its ground by a
 * program in how opaque it is.
 */
final class GreyChannel {

  /** Another channel must show this much more contrast to be taken, for it is the grainier. */
  private static final double CLEARLY_MORE = 1.5;

  private static final String[] NAMES = {"light", "red", "green", "blue", "transparency"};

  private static final int TRANSPARENCY = 4;

  private static final int[] SHARE =
      IntStream.range(0, 256).map(alpha -> levelOf(alpha / 255.0)).toArray();

  private GreyChannel() {}

  record Choice(GreyImage grey, String name) {}

  static Choice choose(BufferedImage image) {
    int width = image.getWidth();
    int height = image.getHeight();
    boolean plain = isPlainGrey(image);
    int channel = plain ? 0 : best(image);
    byte[] levels = new byte[width * height];
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      row(image, y, row, plain);
      for (int x = 0; x < width; x++) {
        levels[y * width + x] = (byte) level(row[x], channel);
      }
    }
    return new Choice(new GreyImage(width, height, levels), NAMES[channel]);
  }

  private static boolean isPlainGrey(BufferedImage image) {
    ColorModel model = image.getColorModel();
    return image.getRaster().getNumBands() == 1
        && model.getNumComponents() == 1
        && !(model instanceof java.awt.image.IndexColorModel);
  }

  /**
   * A row as RGB laid on white, with how opaque it was in the highest byte. Samples of a grey
   * picture are taken as they are: the platform would turn them into another curve.
   */
  private static void row(BufferedImage image, int y, int[] into, boolean plain) {
    if (plain) {
      Raster raster = image.getRaster();
      int bits = image.getColorModel().getComponentSize(0);
      raster.getSamples(0, y, into.length, 1, 0, into);
      boolean wide = raster.getTransferType() == DataBuffer.TYPE_USHORT;
      double scale = 255.0 / ((1L << Math.min(bits, wide ? 16 : 8)) - 1);
      for (int x = 0; x < into.length; x++) {
        int grey = (int) Math.round(Math.max(0, Math.min(255, into[x] * scale)));
        into[x] = 0xff << 24 | grey << 16 | grey << 8 | grey;
      }
      return;
    }
    image.getRGB(0, y, into.length, 1, into, 0, into.length);
    for (int x = 0; x < into.length; x++) {
      into[x] = onWhite(into[x]);
    }
  }

  private static int onWhite(int argb) {
    int alpha = argb >>> 24;
    if (alpha == 255) {
      return argb;
    }
    int white = 255 - alpha;
    int red = ((argb >> 16 & 0xff) * alpha + 255 * white) / 255;
    int green = ((argb >> 8 & 0xff) * alpha + 255 * white) / 255;
    int blue = ((argb & 0xff) * alpha + 255 * white) / 255;
    return alpha << 24 | red << 16 | green << 8 | blue;
  }

  /** The level at which a share of a pixel that is covered has that share of the light. */
  private static int levelOf(double share) {
    double level = share <= 0.0031308 ? share * 12.92 : 1.055 * Math.pow(share, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * level);
  }

  private static int level(int rgb, int channel) {
    int red = rgb >> 16 & 0xff;
    int green = rgb >> 8 & 0xff;
    int blue = rgb & 0xff;
    return switch (channel) {
      case 1 -> red;
      case 2 -> green;
      case 3 -> blue;
      case TRANSPARENCY -> SHARE[rgb >>> 24];
      // Weights of ITU-R BT.601, as in JPEG.
      default -> (299 * red + 587 * green + 114 * blue + 500) / 1000;
    };
  }

  private static int best(BufferedImage image) {
    int step = Math.max(1, Math.max(image.getWidth(), image.getHeight()) / 500);
    int[][] histograms = new int[NAMES.length][256];
    int[] row = new int[image.getWidth()];
    for (int y = 0; y < image.getHeight(); y += step) {
      row(image, y, row, false);
      for (int x = 0; x < row.length; x += step) {
        for (int channel = 0; channel < NAMES.length; channel++) {
          histograms[channel][level(row[x], channel)]++;
        }
      }
    }
    int best = 0;
    double most = contrast(histograms[0]) * CLEARLY_MORE;
    for (int channel = 1; channel < NAMES.length; channel++) {
      double contrast = contrast(histograms[channel]);
      if (contrast > most) {
        most = contrast;
        best = channel;
      }
    }
    return best;
  }

  /** Levels between the means of the dark and of the light half, parted by Otsu's threshold. */
  private static double contrast(int[] histogram) {
    int total = 0;
    for (int count : histogram) {
      total += count;
    }
    int threshold = GThresholdImageOps.computeOtsu(histogram, histogram.length, total);
    double[] sum = new double[2];
    double[] count = new double[2];
    for (int level = 0; level < histogram.length; level++) {
      int half = level <= threshold ? 0 : 1;
      sum[half] += (double) level * histogram[level];
      count[half] += histogram[level];
    }
    return count[0] == 0 || count[1] == 0 ? 0 : sum[1] / count[1] - sum[0] / count[0];
  }
}
