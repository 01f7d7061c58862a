package org.bearingline.outside.scan;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.plugins.tiff.BaselineTIFFTagSet;
import javax.imageio.plugins.tiff.ExifParentTIFFTagSet;
import javax.imageio.plugins.tiff.ExifTIFFTagSet;
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
  private Optional<String> contradiction = Optional.empty();
  private boolean inksAsColours;

  private FactsReader() {}

  /**
   * The facts of the first picture of {@code reader}'s input.
   *
   * @param exif of a PNG file, which its reader does not look at
   */
  static ImageFacts read(
      ImageReader reader, ImageKind kind, Optional<byte[]> exif, boolean holdsMore) {
    FactsReader facts = new FactsReader();
    try {
      IIOMetadata metadata = reader.getImageMetadata(0);
      switch (kind) {
        case PNG -> {
          facts.png(metadata);
          if (exif.isPresent()) {
            facts.exif(exif.get());
          }
        }
        case JPEG -> facts.jpeg(metadata);
        case TIFF -> facts.tiff(TIFFDirectory.createFromMetadata(metadata));
      }
    } catch (IOException | RuntimeException nothingSaid) {
      facts = new FactsReader();
    }
    return new ImageFacts(
        facts.dpiX,
        facts.dpiY,
        facts.orientation,
        facts.camera,
        holdsMore,
        facts.contradiction,
        facts.inksAsColours);
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
    IIOMetadataNode adobe = first(root, "app14Adobe");
    // Adobe Technical Note 5116, 18: 2 is for inks whose first three are turned.
    inksAsColours = adobe != null && adobe.getAttribute("transform").equals("2");
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
    OptionalDouble x = dpiX;
    OptionalDouble y = dpiY;
    ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(data))) {
      reader.setInput(in, false, false);
      tiff(TIFFDirectory.createFromMetadata(reader.getImageMetadata(0)));
    } finally {
      reader.dispose();
    }
    if (x.isPresent()) {
      // Half a dot in a hundred is rounding, as of 118 dots to the cm.
      if (Math.abs(dpiX.getAsDouble() / x.getAsDouble() - 1) > 0.005) {
        contradiction =
            Optional.of(
                "%.0f dpi in one place and %.0f dpi in another"
                    .formatted(x.getAsDouble(), dpiX.getAsDouble()));
      }
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
    TIFFField more = directory.getTIFFField(ExifParentTIFFTagSet.TAG_EXIF_IFD_POINTER);
    camera |= more != null && more.hasDirectory() && isCamera(more.getDirectory());
  }

  /** Scanners have no exposure, though some write Exif too. */
  private static boolean isCamera(TIFFDirectory exif) {
    return exif.containsTIFFField(ExifTIFFTagSet.TAG_EXPOSURE_TIME)
        || exif.containsTIFFField(ExifTIFFTagSet.TAG_F_NUMBER)
        || exif.containsTIFFField(ExifTIFFTagSet.TAG_FOCAL_LENGTH);
  }

  private static IIOMetadataNode first(Node root, String name) {
    NodeList found = ((IIOMetadataNode) root).getElementsByTagName(name);
    return found.getLength() == 0 ? null : (IIOMetadataNode) found.item(0);
  }

  private static double number(IIOMetadataNode node, String attribute) {
    return Double.parseDouble(node.getAttribute(attribute));
  }
}
