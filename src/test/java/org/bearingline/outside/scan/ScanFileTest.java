package org.bearingline.outside.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outline.Bounds;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of picture file gives the same plate; files that want to do harm give a sentence. */
class ScanFileTest {

  /** A pixel is a tenth of a millimetre. */
  private static final ScanSettings DPI = ScanSettings.usual().withDpi(254);

  @TempDir Path folder;

  record Kind(String name, Supplier<byte[]> file) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Kind> kinds() {
    BufferedImage rgb = Pictures.plate(BufferedImage.TYPE_3BYTE_BGR);
    return Stream.of(
        new Kind("png of colours", () -> Pictures.file(rgb, "png")),
        new Kind(
            "png of greys",
            () -> Pictures.file(Pictures.plate(BufferedImage.TYPE_BYTE_GRAY), "png")),
        new Kind(
            "png of 16 bits",
            () -> Pictures.file(Pictures.plate(BufferedImage.TYPE_USHORT_GRAY), "png")),
        new Kind(
            "png of a palette",
            () -> Pictures.file(Pictures.plate(BufferedImage.TYPE_BYTE_INDEXED), "png")),
        new Kind(
            "png of black and white",
            () -> Pictures.file(Pictures.plate(BufferedImage.TYPE_BYTE_BINARY), "png")),
        new Kind("png seen through", () -> Pictures.file(seenThrough(), "png")),
        new Kind("jpeg", () -> Pictures.file(rgb, "jpeg")),
        new Kind("jpeg, progressive", () -> Pictures.progressiveJpeg(rgb)),
        new Kind(
            "jpeg of greys",
            () -> Pictures.file(Pictures.plate(BufferedImage.TYPE_BYTE_GRAY), "jpeg")),
        new Kind("tiff", () -> Pictures.file(rgb, "tiff")),
        new Kind(
            "tiff of 16 bits",
            () -> Pictures.file(Pictures.plate(BufferedImage.TYPE_USHORT_GRAY), "tiff")),
        new Kind("tiff in tiles", () -> Pictures.tiledTiff(rgb)));
  }

  /** The plate is black, all round it there is nothing. */
  private static BufferedImage seenThrough() {
    BufferedImage solid = Pictures.plate(BufferedImage.TYPE_INT_RGB);
    BufferedImage image =
        new BufferedImage(Pictures.WIDTH, Pictures.HEIGHT, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < Pictures.HEIGHT; y++) {
      for (int x = 0; x < Pictures.WIDTH; x++) {
        image.setRGB(x, y, 255 - (solid.getRGB(x, y) & 0xff) << 24);
      }
    }
    return image;
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyKindGivesThePlateAndItsHole(Kind kind) {
    Scan scan = ScanReader.read(kind.name(), kind.file().get(), DPI);
    assertPlate(scan, new Bounds(6, 5, 24, 15), 0.08);
  }

  private static void assertPlate(Scan scan, Bounds plate, double within) {
    assertEquals(2, scan.sketch().figures().size(), () -> scan.notes().toString());
    Bounds box = box(scan);
    assertEquals(plate.minX(), box.minX(), within);
    assertEquals(plate.minY(), box.minY(), within);
    assertEquals(plate.maxX(), box.maxX(), within);
    assertEquals(plate.maxY(), box.maxY(), within);
  }

  @Test
  void theFirstOfSeveralPagesIsTakenAndSaid() {
    BufferedImage plate = Pictures.plate(BufferedImage.TYPE_BYTE_GRAY);
    BufferedImage other = new BufferedImage(50, 50, BufferedImage.TYPE_BYTE_GRAY);
    Scan scan = ScanReader.read("two.tif", Pictures.tiffOf(plate, other), DPI);
    assertPlate(scan, new Bounds(6, 5, 24, 15), 0.08);
    assertTrue(scan.notes().contains("the file holds several pictures; the first was taken"));
  }

  /**
   * A plate off the middle, so that each of the eight ways to lie (Exif 2.32, tag 274) puts it
   * elsewhere; written by Pillow, which also turns the picture upright for the comparison.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void aTurnedPictureIsSetUpright(int orientation) throws Exception {
    BufferedImage image = Pictures.plate(BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.BLACK);
    pen.fillRect(60, 149, 40, 26);
    pen.dispose();
    Path plain = folder.resolve("plain.png");
    Path turned = folder.resolve("turned.jpg");
    Path upright = folder.resolve("upright.png");
    Files.write(plain, Pictures.file(image, "png"));
    ExternalProgram.pythonWith("PIL")
        .run(
            "-c",
            """
            from PIL import Image, ImageOps
            image = Image.open('%s')
            exif = image.getexif()
            exif[274] = %d
            image.save('%s', quality=95, exif=exif.tobytes())
            ImageOps.exif_transpose(Image.open('%s')).save('%s')
            """
                .formatted(plain, orientation, turned, turned, upright));
    Scan one = ScanReader.read("turned.jpg", Files.readAllBytes(turned), DPI);
    Scan other = ScanReader.read("upright.png", Files.readAllBytes(upright), DPI);
    assertPlate(one, box(other), 0.05);
  }

  private static Bounds box(Scan scan) {
    return Truth.points(scan.sketch()).stream().map(Bounds::of).reduce(Bounds::union).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"png, 300", "jpg, 600", "tif, 150"})
  void theDpiOfTheFileCount(String kind, int dpi) throws Exception {
    Path plain = folder.resolve("plain.png");
    Path said = folder.resolve("said." + kind);
    Files.write(plain, Pictures.file(Pictures.plate(BufferedImage.TYPE_INT_RGB), "png"));
    ExternalProgram.pythonWith("PIL")
        .run(
            "-c",
            "from PIL import Image; Image.open('%s').save('%s', dpi=(%d, %d))"
                .formatted(plain, said, dpi, dpi));
    Scan scan = ScanReader.read("said", Files.readAllBytes(said), ScanSettings.usual());
    assertEquals(25.4 / dpi, scan.pixel(), 1e-5);
  }

  @Test
  void withoutMarksOrDpiTheSizeIsNotKnown() {
    byte[] file = Pictures.file(Pictures.plate(BufferedImage.TYPE_INT_RGB), "png");
    assertSentence("nothing tells how large it is", file, ScanSettings.usual());
  }

  @Test
  void anEmptyPictureHasNoTemplate() {
    BufferedImage white = new BufferedImage(400, 300, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = white.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, 400, 300);
    pen.dispose();
    assertSentence("no template stands out", Pictures.file(white, "png"), DPI);
  }

  @Test
  void aPlateThatReachesTheEndOfThePictureIsWarnedOf() {
    BufferedImage image = Pictures.plate(BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.BLACK);
    pen.fillRect(200, 80, 100, 30);
    pen.dispose();
    Scan scan = ScanReader.read("cut", Pictures.file(image, "png"), DPI);
    assertTrue(scan.warnings().stream().anyMatch(w -> w.contains("reaches the end")));
  }

  @Test
  void dustIsLeftOutAndCounted() {
    BufferedImage image = Pictures.plate(BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 7; i++) {
      for (int dx = 0; dx < 3; dx++) {
        image.setRGB(20 + 30 * i + dx, 20, Color.BLACK.getRGB());
        image.setRGB(20 + 30 * i + dx, 21, Color.BLACK.getRGB());
        image.setRGB(20 + 30 * i + dx, 22, Color.BLACK.getRGB());
      }
    }
    Scan scan = ScanReader.read("dust", Pictures.file(image, "png"), DPI);
    assertPlate(scan, new Bounds(6, 5, 24, 15), 0.08);
    assertEquals(List.of("7 specks"), scan.sketch().ignored());
  }

  /** ISO/IEC 15948:2004, 11.2.2: a header may claim two thousand million pixels each way. */
  @Test
  void aPictureOfTenThousandMillionPixelsIsRefusedByItsHeader() {
    byte[] head =
        pngChunk(
            "IHDR",
            ByteBuffer.allocate(13)
                .putInt(100_000)
                .putInt(100_000)
                .put(new byte[] {8, 2, 0, 0, 0})
                .array());
    byte[] file = joined(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}, head);
    assertSentence("100000 × 100000 pixels", file, DPI);
  }

  /** A megabyte of packed words that unfold to a thousand. */
  @Test
  void packedWordsAreNotUnfolded() throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    byte[] million = new byte[1_000_000];
    try (DeflaterOutputStream deflating =
        new DeflaterOutputStream(packed, new Deflater(Deflater.BEST_COMPRESSION))) {
      for (int i = 0; i < 1_000; i++) {
        deflating.write(million);
      }
    }
    byte[] words = joined(new byte[] {'a', 0, 0}, packed.toByteArray());
    byte[] png = Pictures.file(Pictures.plate(BufferedImage.TYPE_INT_RGB), "png");
    byte[] file =
        joined(
            Arrays.copyOf(png, 33),
            pngChunk("zTXt", words),
            pngChunk("iCCP", words),
            Arrays.copyOfRange(png, 33, png.length));
    assertTimeoutPreemptively(
        Duration.ofMinutes(3),
        () -> assertPlate(ScanReader.read("bomb", file, DPI), new Bounds(6, 5, 24, 15), 0.08));
  }

  @Test
  void otherFilesAreNoPictures() {
    assertSentence("is no PNG, JPEG or TIFF picture", "GIF89a".getBytes(), DPI);
    assertSentence("is no PNG, JPEG or TIFF picture", new byte[0], DPI);
  }

  private static void assertSentence(String words, byte[] file, ScanSettings settings) {
    Problem problem = assertThrows(Problem.class, () -> ScanReader.read("a.png", file, settings));
    assertTrue(problem.spoken().startsWith("a.png: "), problem::spoken);
    assertTrue(problem.getMessage().contains(words), problem::spoken);
  }

  private static byte[] pngChunk(String name, byte[] data) {
    ByteBuffer chunk = ByteBuffer.allocate(data.length + 12);
    chunk.putInt(data.length).put(name.getBytes()).put(data);
    CRC32 sum = new CRC32();
    sum.update(chunk.array(), 4, data.length + 4);
    return chunk.putInt((int) sum.getValue()).array();
  }

  private static byte[] joined(byte[]... parts) {
    ByteBuffer all = ByteBuffer.allocate(Arrays.stream(parts).mapToInt(p -> p.length).sum());
    Arrays.stream(parts).forEach(all::put);
    return all.array();
  }
}
