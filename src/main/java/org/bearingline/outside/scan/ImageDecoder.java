package org.bearingline.outside.scan;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
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
    ImageKind kind = ImageKind.of(content).orElseThrow(() -> problem(ImageKind.unread(content)));
    Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(kind.format());
    ImageReader reader = readers.next();
    PngChunks.Parted parted =
        kind == ImageKind.PNG
            ? PngChunks.parted(content)
            : new PngChunks.Parted(content, Optional.empty());
    ReadingTroubles troubles = new ReadingTroubles();
    try (ImageInputStream in =
        new MemoryCacheImageInputStream(new ByteArrayInputStream(parted.needed()))) {
      reader.setInput(in, false, false);
      judge(reader.getWidth(0), reader.getHeight(0), content.length);
      ImageFacts facts = FactsReader.read(reader, kind, parted.exif(), holdsMore(reader, kind));
      reader.addIIOReadWarningListener(troubles);
      Decoded decoded = pixels(reader, facts);
      if (troubles.isCutShort()) {
        throw problem(
            "the picture is cut short: the file ends before the picture does; copy it again whole,"
                + " or scan it again");
      }
      if (troubles.isDamaged()) {
        throw problem(
            "the picture is damaged, so a part of it is not what was photographed; copy it again,"
                + " or scan it again");
      }
      return decoded;
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
    GreyChannel.Choice choice = GreyChannel.choose(picture(reader, facts));
    // Corner marks are not to be read in a mirror.
    return facts.isMirrored()
        ? new Decoded(facts.ofMirrored(), choice.grey().mirrored(), choice.name())
        : new Decoded(facts, choice.grey(), choice.name());
  }

  private BufferedImage picture(ImageReader reader, ImageFacts facts) throws IOException {
    Optional<IIOException> notRgb = Optional.empty();
    try {
      BufferedImage image = reader.read(0);
      if (image == null) {
        throw new IOException("no picture");
      }
      judgeSamples(image);
      if (image.getColorModel().getColorSpace().getType() != ColorSpace.TYPE_CMYK) {
        return image;
      }
      if (!reader.canReadRaster()) {
        return Inks.colours(image.getRaster(), Inks.Writing.AMOUNT);
      }
    } catch (IIOException unread) {
      notRgb = Optional.of(unread);
    }
    // Some platforms do not turn four inks into colours, others into colours of their own.
    if (!reader.canReadRaster()) {
      throw notRgb.orElseThrow();
    }
    Raster inks = reader.readRaster(0, null);
    if (inks.getNumBands() != 4) {
      throw notRgb.orElseGet(() -> new IIOException("not four inks"));
    }
    return Inks.colours(inks, facts.inksAsColours() ? Inks.Writing.TURNED : Inks.Writing.LIGHT);
  }

  private void judgeSamples(BufferedImage image) {
    int type = image.getRaster().getTransferType();
    boolean usual =
        type == DataBuffer.TYPE_BYTE
            || type == DataBuffer.TYPE_USHORT
            || type == DataBuffer.TYPE_INT && image.getRaster().getNumBands() > 1;
    if (!usual) {
      throw problem(
          "the picture keeps its light in 32 bits or as fractions; save it with 8 or 16 bits a"
              + " colour");
    }
  }

  private Problem problem(String sentence) {
    return new Problem(Place.file(file), sentence);
  }
}
