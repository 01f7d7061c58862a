package org.bearingline.outside.scan;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.plugins.tiff.BaselineTIFFTagSet;
import javax.imageio.plugins.tiff.ExifParentTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Reads what a picture's file says about it. A file that says nothing, or nonsense, says nothing:
 * what was said wrongly is no reason to refuse the picture itself.
 */
final class FactsReader {

  private static final double MM_PER_INCH = 25.4;
  private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};

  /** Dpi outside this are no scanner's. */
  private static final double LEAST_DPI = 20;

  private static final double MOST_DPI = 10_000;

  private OptionalDouble dpiX = OptionalDouble.empty();
  private OptionalDouble dpiY = OptionalDouble.empty();
  private int orientation = 1;
  private boolean camera;

  private FactsReader() {}

  /** The facts of the first picture of {@code reader}'s input. */
  static ImageFacts read(ImageReader reader, ImageKind kind, boolean holdsMore) {
    FactsReader facts = new FactsReader();
    try {
      IIOMetadata metadata = reader.getImageMetadata(0);
      switch (kind) {
        case PNG -> facts.png(metadata);
        case JPEG -> facts.jpeg(metadata);
        case TIFF -> facts.tiff(TIFFDirectory.createFromMetadata(metadata));
      }
    } catch (IOException | RuntimeException nothingSaid) {
      return new ImageFacts(OptionalDouble.empty(), OptionalDouble.empty(), 1, false, holdsMore);
    }
    return new ImageFacts(facts.dpiX, facts.dpiY, facts.orientation, facts.camera, holdsMore);
  }

  private void dpi(double x, double y) {
    if (x >= LEAST_DPI && x <= MOST_DPI && y >= LEAST_DPI && y <= MOST_DPI) {
      dpiX = OptionalDouble.of(x);
      dpiY = OptionalDouble.of(y);
    }
  }

  /** PNG, chunk pHYs: pixels per metre (ISO/IEC 15948:2004, 11.3.5.3). */
  private void png(IIOMetadata metadata) {
    Node root = metadata.getAsTree("javax_imageio_png_1.0");
    IIOMetadataNode size = first(root, "pHYs");
    if (size != null && size.getAttribute("unitSpecifier").equals("meter")) {
      double perInch = MM_PER_INCH / 1000;
      dpi(
          number(size, "pixelsPerUnitXAxis") * perInch,
          number(size, "pixelsPerUnitYAxis") * perInch);
    }
  }

  /** JPEG: the density of its JFIF segment (ITU-T T.871, 10.1), and Exif for the rest. */
  private void jpeg(IIOMetadata metadata) throws IOException {
    Node root = metadata.getAsTree("javax_imageio_jpeg_image_1.0");
    IIOMetadataNode jfif = first(root, "app0JFIF");
    if (jfif != null) {
      double inches =
          switch (jfif.getAttribute("resUnits")) {
            case "1" -> 1;
            case "2" -> 2.54;
            default -> Double.NaN;
          };
      dpi(number(jfif, "Xdensity") * inches, number(jfif, "Ydensity") * inches);
    }
    NodeList segments = ((IIOMetadataNode) root).getElementsByTagName("unknown");
    for (int i = 0; i < segments.getLength(); i++) {
      IIOMetadataNode segment = (IIOMetadataNode) segments.item(i);
      if (segment.getUserObject() instanceof byte[] data
          && data.length > EXIF.length
          && Arrays.equals(EXIF, Arrays.copyOf(data, EXIF.length))) {
        exif(Arrays.copyOfRange(data, EXIF.length, data.length));
      }
    }
  }

  /** Exif is a TIFF file of its own inside a segment. */
  private void exif(byte[] data) throws IOException {
    boolean known = dpiX.isPresent();
    OptionalDouble x = dpiX;
    OptionalDouble y = dpiY;
    ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(data))) {
      reader.setInput(in, false, false);
      tiff(TIFFDirectory.createFromMetadata(reader.getImageMetadata(0)));
    } finally {
      reader.dispose();
    }
    if (known) {
      dpiX = x;
      dpiY = y;
    }
  }

  private void tiff(TIFFDirectory directory) {
    TIFFField turned = directory.getTIFFField(BaselineTIFFTagSet.TAG_ORIENTATION);
    if (turned != null && turned.getAsInt(0) >= 1 && turned.getAsInt(0) <= 8) {
      orientation = turned.getAsInt(0);
    }
    TIFFField x = directory.getTIFFField(BaselineTIFFTagSet.TAG_X_RESOLUTION);
    TIFFField y = directory.getTIFFField(BaselineTIFFTagSet.TAG_Y_RESOLUTION);
    TIFFField unit = directory.getTIFFField(BaselineTIFFTagSet.TAG_RESOLUTION_UNIT);
    int unitCode = unit == null ? BaselineTIFFTagSet.RESOLUTION_UNIT_INCH : unit.getAsInt(0);
    if (x != null && y != null && unitCode != BaselineTIFFTagSet.RESOLUTION_UNIT_NONE) {
      double inches = unitCode == BaselineTIFFTagSet.RESOLUTION_UNIT_CENTIMETER ? 2.54 : 1;
      dpi(x.getAsDouble(0) * inches, y.getAsDouble(0) * inches);
    }
    // Scanners write no exposure; a folder of Exif facts is a camera's.
    camera |= directory.getTIFFField(ExifParentTIFFTagSet.TAG_EXIF_IFD_POINTER) != null;
  }

  private static IIOMetadataNode first(Node root, String name) {
    NodeList found = ((IIOMetadataNode) root).getElementsByTagName(name);
    return found.getLength() == 0 ? null : (IIOMetadataNode) found.item(0);
  }

  private static double number(IIOMetadataNode node, String attribute) {
    return Double.parseDouble(node.getAttribute(attribute));
  }
}
