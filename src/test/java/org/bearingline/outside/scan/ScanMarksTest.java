package org.bearingline.outside.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.bearingline.job.CornerMarksJob;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Corner marks turned, mirrored, hidden, laid or measured wrongly; seen straight from above. */
class ScanMarksTest {

  private static final double DPI = 150;

  /** mm of the crosses of the A4 sheet from its lower left corner, and of the paper round each. */
  private static final double TOP = 297 - 6.35 - 24 * (0.5 + 1 / 7.0);

  private static final double[][] CROSSES = {
    {25, TOP}, {185, TOP}, {185, TOP - 205}, {25, TOP - 205}
  };
  private static final double QUARTER = 16.51;

  private static final Map<String, byte[]> LOOSE = new HashMap<>();

  @TempDir static Path folder;
  private static byte[] sheet;
  private static BufferedImage photo;
  private static Outline rail;

  @BeforeAll
  static void photograph() throws IOException {
    CornerMarksJob.run("A4", Optional.empty(), folder);
    sheet = Files.readAllBytes(folder.resolve("corner-marks.pdf"));
    rail =
        ScanAccuracyTest.rail(Map.of("length", "8in", "width", "2in", "end", "1in", "tenon", "0in"))
            .transformed(Similarity.scaling(0.7));
    byte[] png =
        new Scene(folder, 0.3)
            .page(sheet, 0, 0, 0, 600)
            .template(rail, 0.25, 34, 150, 4, 600)
            .wish("blur", 0.8)
            .wish("noise", 2)
            .flatbed("sheet.png", DPI, 210, 297);
    photo = ImageIO.read(new ByteArrayInputStream(png));
  }

  private static byte[] file(BufferedImage image) {
    return Pictures.file(image, "png");
  }

  private static BufferedImage turned(int quarters, boolean mirrored) {
    boolean level = quarters % 2 == 1;
    int width = level ? photo.getHeight() : photo.getWidth();
    int height = level ? photo.getWidth() : photo.getHeight();
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    AffineTransform way = AffineTransform.getTranslateInstance(width / 2.0, height / 2.0);
    way.quadrantRotate(quarters);
    way.scale(mirrored ? -1 : 1, 1);
    way.translate(-photo.getWidth() / 2.0, -photo.getHeight() / 2.0);
    Graphics2D pen = image.createGraphics();
    pen.drawImage(photo, way, null);
    pen.dispose();
    return image;
  }

  private static void assertSentence(String words, byte[] picture, ScanSettings settings) {
    Problem problem =
        assertThrows(Problem.class, () -> ScanReader.read("photo.png", picture, settings));
    assertTrue(problem.spoken().contains(words), problem::spoken);
  }

  @ParameterizedTest
  @CsvSource({"0", "1", "2", "3"})
  void howeverThePhotoIsTurnedTheTemplateIsTheSame(int quarters) {
    Scan scan = ScanReader.read("photo.png", file(turned(quarters, false)), ScanSettings.usual());
    Outline truth =
        rail.transformed(
            Similarity.rotation(4, Point.ORIGIN)
                .then(Similarity.translation(34 - CROSSES[0][0], 150 - CROSSES[0][1])));
    Truth.Errors errors = Truth.errorsWhereverItLies(Truth.points(scan.sketch()), truth);
    assertTrue(errors.most() < 0.06, errors::toString);
  }

  @ParameterizedTest
  @CsvSource({"0", "1"})
  void aMirroredPhotoIsRefused(int quarters) {
    assertSentence("the picture is mirrored", file(turned(quarters, true)), ScanSettings.usual());
  }

  @Test
  void aMarkHalfCoveredIsMissed() {
    BufferedImage image = turned(0, false);
    Graphics2D pen = image.createGraphics();
    pen.setColor(new Color(150, 120, 100));
    pen.fillRect(0, 0, (int) (CROSSES[0][0] * DPI / 25.4), 250);
    pen.dispose();
    assertSentence("of the four corner marks A is not seen", file(image), ScanSettings.usual());
  }

  /** Four quarters of the sheet, laid in an order of ours. */
  private static byte[] loose(int... order) {
    return LOOSE.computeIfAbsent(Arrays.toString(order), key -> laid(order));
  }

  private static byte[] laid(int... order) {
    double[][] places = {{30, 220}, {280, 225}, {275, 30}, {35, 28}};
    Scene scene = new Scene(folder, 0.08);
    for (int i = 0; i < 4; i++) {
      double[] cross = CROSSES[order[i]];
      Bounds part = Bounds.of(new Point(cross[0], cross[1])).grown(QUARTER);
      scene.card(sheet, 600, part, 297, places[i][0] - QUARTER, places[i][1] - QUARTER, 0);
    }
    return scene
        .template(rail, 0.5, 80, 100, 0, 600)
        .wish("blur", 0.8)
        .wish("noise", 2)
        .flatbed("loose.png", DPI, 310, 255);
  }

  private static ScanSettings apart(double ab, double bc) {
    return ScanSettings.usual().withApart(MarksApart.rectangle(ab, bc));
  }

  @Test
  void marksLaidInAnotherOrderAreRefused() {
    double ab = Math.hypot(250, 5);
    double bc = Math.hypot(5, 195);
    Scan scan = ScanReader.read("loose.png", loose(0, 1, 2, 3), apart(ab, bc));
    assertEquals(List.of(), scan.warnings());
    assertSentence("do not lie A, B, C, D as a clock's hand", loose(0, 1, 3, 2), apart(ab, bc));
    assertSentence("do not lie A, B, C, D as a clock's hand", loose(0, 3, 2, 1), apart(ab, bc));
  }

  /** A diagonal that is a hand too long does not fit the two sides. */
  @Test
  void aDistanceThatContradictsTheOthersIsRefused() {
    List<MarksApart.Distance> distances =
        List.of(
            new MarksApart.Distance(MarkLetter.A, MarkLetter.B, 250),
            new MarksApart.Distance(MarkLetter.B, MarkLetter.C, 195),
            new MarksApart.Distance(MarkLetter.A, MarkLetter.C, 330));
    assertSentence(
        "contradict the picture by",
        loose(0, 1, 2, 3),
        ScanSettings.usual().withApart(new MarksApart(distances)));
  }

  @ParameterizedTest
  @CsvSource({
    "195, 250, the marks would be",
    "25.5, 20, and they are printed 24.0 mm square",
    "250, 210, the marks would be",
  })
  void distancesThatCannotBeAreRefused(double ab, double bc, String words) {
    byte[] picture = loose(0, 1, 2, 3);
    assertSentence(words, picture, apart(ab, bc));
  }
}
