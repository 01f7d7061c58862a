package org.bearingline.outside.scan;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Decodes a picture within limits: its size is read from its header and judged before a pixel is
 * decoded.
 */
final class ImageDecoder {

  /** A side a scanner or camera gives, in pixels. */
  private static final int LEAST_SIDE = 32;

  private static final int LONGEST_SIDE = 40_000;

  /** A sheet of A3 at 600 dpi has 70 million pixels. */
  private static final long MOST_PIXELS = 120_000_000;

  /** Bytes of memory a pixel takes while it is decoded and read, with room to spare. */
  private static final long BYTES_PER_PIXEL = 9;

  private final String file;

  /**
   * @param facts what the file says
   * @param grey the channel in which template and ground differ most
   * @param channel its name
   */
  record Decoded(ImageFacts facts, GreyImage grey, String channel) {}

  ImageDecoder(String file) {
    this.file = file;
  }

  Decoded decode(byte[] content) {
    ImageKind kind =
        ImageKind.of(content)
            .orElseThrow(() -> problem("is no PNG, JPEG or TIFF picture; save the scan as one"));
    Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(kind.format());
    ImageReader reader = readers.next();
    byte[] bare = kind == ImageKind.PNG ? PngChunks.withoutWords(content) : content;
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bare))) {
      reader.setInput(in, false, false);
      judge(reader.getWidth(0), reader.getHeight(0), content.length);
      ImageFacts facts = FactsReader.read(reader, kind, holdsMore(reader, kind));
      return pixels(reader, facts);
    } catch (IOException | RuntimeException | StackOverflowError broken) {
      if (broken instanceof Problem told) {
        throw told;
      }
      // Readers of broken files throw whatever they stumble over.
      throw new Problem(
          Place.file(file),
          "the picture is damaged, cut short or of a kind that cannot be read; scan or save it"
              + " again as PNG or JPEG",
          broken);
    } catch (OutOfMemoryError tooLarge) {
      throw new Problem(Place.file(file), TOO_LARGE_FOR_MEMORY, tooLarge);
    } finally {
      reader.dispose();
    }
  }

  /**
   * Whether a second picture follows; how many would mean to follow a chain that may have no end.
   */
  private static boolean holdsMore(ImageReader reader, ImageKind kind) throws IOException {
    if (kind != ImageKind.TIFF) {
      return false;
    }
    try {
      return reader.getWidth(1) > 0;
    } catch (IndexOutOfBoundsException none) {
      return false;
    }
  }

  private static final String TOO_LARGE_FOR_MEMORY =
      "the picture needs more memory than there is; scan at a lower dpi or cut away what is not"
          + " needed";

  private void judge(int width, int height, long bytes) {
    long pixels = (long) width * height;
    if (width > LONGEST_SIDE || height > LONGEST_SIDE || pixels > MOST_PIXELS) {
      throw problem(
          "the picture says it is "
              + width
              + " × "
              + height
              + " pixels, more than the 120 million that are read; scan at a lower dpi or cut away"
              + " what is not needed");
    }
    if (width < LEAST_SIDE || height < LEAST_SIDE) {
      throw problem(
          "the picture is only "
              + width
              + " × "
              + height
              + " pixels; a template needs some hundred each way");
    }
    if (pixels * BYTES_PER_PIXEL + 2 * bytes > Runtime.getRuntime().maxMemory()) {
      throw problem(TOO_LARGE_FOR_MEMORY);
    }
  }

  private Decoded pixels(ImageReader reader, ImageFacts facts) throws IOException {
    BufferedImage image;
    try {
      image = reader.read(0);
    } catch (IIOException notRgb) {
      // Pictures in four inks are not turned into colours by the platform, but their inks are read.
      if (!reader.canReadRaster()) {
        throw notRgb;
      }
      Raster inks = reader.readRaster(0, null);
      if (inks.getNumBands() != 4) {
        throw notRgb;
      }
      return new Decoded(facts, Inks.grey(inks), "light");
    }
    if (image == null) {
      throw new IOException("no picture");
    }
    GreyChannel.Choice choice = GreyChannel.choose(image);
    return new Decoded(facts, choice.grey(), choice.name());
  }

  private Problem problem(String sentence) {
    return new Problem(Place.file(file), sentence);
  }
}
