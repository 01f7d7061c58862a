package org.bearingline.outside.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outline.Bounds;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Kinds of picture files as Pillow writes them: read rightly, or refused in one sentence. */
class ScanKindsTest {

  /** A pixel is a tenth of a millimetre. */
  private static final ScanSettings DPI = ScanSettings.usual().withDpi(254);

  @TempDir static Path folder;

  @BeforeAll
  static void write() throws IOException {
    Path script = folder.resolve("kinds.py");
    Files.copy(
        ScanKindsTest.class.getResourceAsStream("kinds.py"),
        script,
        StandardCopyOption.REPLACE_EXISTING);
    ExternalProgram.pythonWith("numpy", "PIL").run(script, folder);
  }

  private static byte[] file(String name) throws IOException {
    return Files.readAllBytes(folder.resolve(name));
  }

  private static Scan scan(String name, ScanSettings settings) throws IOException {
    return ScanReader.read(name, file(name), settings);
  }

  private static String refusal(String name, ScanSettings settings) throws IOException {
    byte[] content = file(name);
    return assertThrows(Problem.class, () -> ScanReader.read(name, content, settings), name)
        .spoken();
  }

  private static Bounds box(Scan scan) {
    return Truth.points(scan.sketch()).stream().map(Bounds::of).reduce(Bounds::union).orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cut-out.png",
        "cut-out-grey.png",
        "palette.png",
        "palette-see-through.png",
        "bilevel.png",
        "wide.png",
        "wide.tif",
        "fax.tif",
        "bilevel.tif",
        "white-is-zero.tif",
        "tiff_lzw.tif",
        "tiff_adobe_deflate.tif",
        "packbits.tif",
        "jpeg.tif",
        "palette.tif",
        "inks.jpg",
        "inks-turned.jpg",
        "inks.tif",
      })
  void thePlateAndItsHole(String name) throws IOException {
    Scan scan = scan(name, DPI);
    assertEquals(2, scan.sketch().figures().size(), () -> scan.notes().toString());
    Bounds box = box(scan);
    assertEquals(6, box.minX(), 0.02);
    assertEquals(24, box.maxX(), 0.02);
    assertEquals(5, box.minY(), 0.02);
    assertEquals(15, box.maxY(), 0.02);
    assertEquals(List.of(), scan.warnings());
  }

  /** The same pixels as Pillow, by libjpeg and libtiff, makes of four inks. */
  @ParameterizedTest
  @ValueSource(strings = {"inks.jpg", "inks-turned.jpg", "inks.tif"})
  void inksHaveTheColoursThatAnotherLibraryFinds(String name) throws IOException {
    ImageDecoder.Decoded ours = new ImageDecoder(name).decode(file(name));
    ImageDecoder.Decoded theirs = new ImageDecoder(name).decode(file(name + ".png"));
    assertEquals(theirs.channel(), ours.channel());
    for (int y = 0; y < ours.grey().height(); y++) {
      for (int x = 0; x < ours.grey().width(); x++) {
        assertEquals(theirs.grey().level(x, y), ours.grey().level(x, y), 3);
      }
    }
  }

  static Stream<String> cutShort() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      List<String> names =
          files.map(f -> f.getFileName().toString()).filter(n -> n.startsWith("cut")).toList();
      return names.stream().filter(n -> n.contains("-large")).sorted();
    }
  }

  @ParameterizedTest
  @MethodSource("cutShort")
  void aPictureCutShortIsRefused(String name) throws IOException {
    String spoken = refusal(name, DPI);
    assertTrue(spoken.startsWith(name + ": the picture is "), spoken);
    assertTrue(spoken.contains("cut short"), spoken);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"large.jpg", "large-progressive.jpg", "large.png", "large.tif", "large-lzw.tif"})
  void theSamePictureWholeIsRead(String name) throws IOException {
    assertEquals(2, scan(name, DPI).sketch().figures().size());
  }

  @ParameterizedTest
  @CsvSource({
    "inch.tif, 300",
    "cm.tif, 300",
    "exif-cm.jpg, 299.72",
    "agree.jpg, 300",
    "exif-turned.png, 300",
    "scanner.jpg, 300",
  })
  void theSizeAsTheFileSays(String name, double dpi) throws IOException {
    assertEquals(25.4 / dpi, scan(name, ScanSettings.usual()).pixel(), 1e-5);
  }

  @Test
  void exifTurnsAPngToo() throws IOException {
    Bounds box = box(scan("exif-turned.png", DPI));
    assertEquals(10, box.width(), 0.02);
    assertEquals(18, box.height(), 0.02);
  }

  @ParameterizedTest
  @CsvSource({
    "disagree.jpg, 72 dpi in one place and 300 dpi in another",
    "camera.jpg, a camera's dpi mean nothing",
    "unknowing.jpg, 72 dpi is what programs write that know of none",
    "ratio.tif, nothing tells how large it is",
  })
  void theSizeIsAskedFor(String name, String words) throws IOException {
    String spoken = refusal(name, ScanSettings.usual());
    assertTrue(spoken.contains(words), spoken);
    assertTrue(spoken.contains("give --dpi"), spoken);
  }

  @ParameterizedTest
  @CsvSource({
    "fractions.tif, in 32 bits or as fractions",
    "wide32.tif, in 32 bits or as fractions",
    "small-first.tif, of which the first was taken",
  })
  void whatIsNotReadIsSaid(String name, String words) throws IOException {
    String spoken = refusal(name, DPI);
    assertTrue(spoken.contains(words), spoken);
  }

  /** ISO/IEC 23008-12, 10: such a file begins with a box of its brand. */
  @Test
  void aPhonesOwnKindIsNamed() {
    byte[] start = "\0\0\0\030ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);
    Problem problem = assertThrows(Problem.class, () -> ScanReader.read("photo.jpg", start, DPI));
    assertTrue(problem.spoken().contains("HEIC"), problem::spoken);
  }
}
