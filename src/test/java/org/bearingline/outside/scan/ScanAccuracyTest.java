package org.bearingline.outside.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.job.CornerMarksJob;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.clean.Cleaning;
import org.bearingline.outside.clean.CleaningSettings;
import org.bearingline.shape.ShapeLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photographs known templates with a script apart and compares what is traced. */
class ScanAccuracyTest {

  /** Shared, so that what stands in several scenes is drawn once. */
  @TempDir static Path folder;

  static Outline rail(Map<String, String> measures) {
    return ShapeLibrary.builtIn()
        .find("cloud-lift-rail")
        .measured(measures, Optional.empty())
        .part()
        .outline();
  }

  @ParameterizedTest
  @CsvSource({
    "150, 0.7, 3.7, 0.05, 0.2",
    "300, 0.7, 3.7, 0.02, 0.1",
    "600, 0.8, 3.7, 0.02, 0.1",
    "300, 1.5, 33, 0.02, 0.1",
  })
  void aFlatbedScanIsTrue(double dpi, double blur, double turn, double most, double radius) {
    Outline rail = rail(Map.of("length", "8in", "width", "2in", "end", "1in", "tenon", "0in"));
    Outline laid = rail.transformed(Similarity.rotation(turn, Point.ORIGIN));
    double x = 8 - laid.bounds().minX();
    double y = 8 - laid.bounds().minY();
    Scene scene =
        new Scene(folder, 0.8)
            .template(rail, 0.1, x, y, turn, 2 * Math.max(300, dpi))
            .wish("blur", blur)
            .wish("noise", 2)
            .wish("lamp", 0.15)
            .wish("quality", 90);
    byte[] picture =
        scene.flatbed("flatbed.jpg", dpi, laid.bounds().width() + 16, laid.bounds().height() + 16);
    Scan scan = ScanReader.read("flatbed.jpg", picture, ScanSettings.usual());
    List<Point> points = Truth.points(scan.sketch());
    Truth.Errors errors = Truth.errors(points, laid.transformed(Similarity.translation(x, y)));
    assertTrue(errors.most() < most, errors::toString);
    assertRadii(scan, radius);
  }

  /** Two lifts of two arcs of 5/8 in, the shape's own measure, and six straight lines. */
  private static void assertRadii(Scan scan, double within) {
    CleanedOutline clean =
        Cleaning.clean(
                scan.sketch(),
                CleaningSettings.usual().withTolerance(ScanSettings.DEFAULT_TOLERANCE))
            .sound();
    List<Primitive> pieces = clean.outlines().get(0).outer().primitives();
    List<Arc> arcs = pieces.stream().filter(Arc.class::isInstance).map(Arc.class::cast).toList();
    assertEquals(4, arcs.size(), pieces::toString);
    arcs.forEach(arc -> assertEquals(15.875, arc.radius(), within));
    assertEquals(6, pieces.size() - arcs.size(), pieces::toString);
  }

  private byte[] sheet(String paper) throws IOException {
    CornerMarksJob.run(paper, Optional.empty(), folder);
    return Files.readAllBytes(folder.resolve("corner-marks.pdf"));
  }

  /** The rail at seven tenths fits between the crosses of A4. */
  private static Outline smallRail() {
    return rail(Map.of("length", "8in", "width", "2in", "end", "1in", "tenon", "0in"))
        .transformed(Similarity.scaling(0.7));
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 0, 0, 0, 1", "7, -5, 31, 0.02, 0, 2", "-6, 9, 183, -0.03, 6, 3"})
  void aPhotoOnTheWholeSheetIsTrue(
      double nod, double lean, double roll, double lens, double above, long seed)
      throws IOException {
    Camera camera = new Camera(2800, 3300, 4400, 0, 0, 500, nod, lean, roll).lookingAt(105, 165);
    double nearer = camera.z() / (camera.z() - above);
    Outline rail = smallRail();
    // Nearer the lens it looks larger, seen from the place under the lens.
    double x = camera.x() + (34 - camera.x()) * nearer;
    double y = camera.y() + (150 - camera.y()) * nearer;
    Scene scene =
        new Scene(folder, 0.3)
            .page(sheet("A4"), 0, 0, 0, 600)
            .template(rail.transformed(Similarity.scaling(nearer)), 0.25, x, y, 4, 600)
            .wish("lens", lens)
            .wish("blur", 1)
            .wish("noise", 2)
            .wish("lamp", 0.3)
            .wish("seed", seed)
            .wish("quality", 92);
    byte[] picture = scene.photograph("photo.jpg", camera.width(), camera.height(), camera.back());
    ScanSettings settings = ScanSettings.usual();
    if (above > 0) {
      settings = settings.withRaised(new RaisedFace(above, camera.z()));
    }
    Scan scan = ScanReader.read("photo.jpg", picture, settings);
    List<Point> points = Truth.points(scan.sketch());
    // The frame begins at A; where the page was printed on the paper does not matter.
    Outline start =
        rail.transformed(
            Similarity.rotation(4, Point.ORIGIN).then(Similarity.translation(34 - 25, 150 - 275)));
    Truth.Errors errors = Truth.errorsWhereverItLies(points, start);
    assertTrue(errors.most() < 0.1, errors::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "6, 0, 4, -3, 0, '20, -7, 95, 3'",
    "2, 0.02, 4, -3, 1, '20, -7, 95, 3'",
    "2, -0.03, -6, 4, 2, '2, -7, -2, -3'",
    "3, 0.01, 1, 6, 3, '1, 92, 178, -88'",
  })
  void aPhotoBetweenLooseMarksIsTrue(
      int measured, double lens, double nod, double lean, long seed, String turned)
      throws IOException {
    Camera camera = new Camera(4000, 2300, 5200, 0, 0, 735, nod, lean, 0).lookingAt(246, 60);
    Outline rail = rail(Map.of("length", "16in", "width", "3in", "tenon", "0in"));
    byte[] sheet = sheet("A4");
    Scene scene = new Scene(folder, 0.06);
    // Each quarter of the page with its cross at this place of it, mm; laid as they come to lie.
    double top = 297 - 6.35 - 24 * (0.5 + 1 / 7.0);
    double[][] crosses = {{25, top}, {185, top}, {185, top - 205}, {25, top - 205}};
    double[][] places = {{10, 172}, {490, 180}, {482, -55}, {2, -62}};
    double[] turns = Arrays.stream(turned.split(",")).mapToDouble(Double::parseDouble).toArray();
    for (int i = 0; i < 4; i++) {
      Bounds part = Bounds.of(new Point(crosses[i][0], crosses[i][1])).grown(16.51);
      double c = Math.cos(Math.toRadians(turns[i]));
      double s = Math.sin(Math.toRadians(turns[i]));
      double dx = crosses[i][0] - part.minX();
      double dy = crosses[i][1] - part.minY();
      scene.card(
          sheet,
          600,
          part,
          297,
          places[i][0] - c * dx + s * dy,
          places[i][1] - s * dx - c * dy,
          turns[i]);
    }
    scene
        .template(rail, 0.5, 40, 20, 2, 600)
        .wish("lens", lens)
        .wish("blur", 0.9)
        .wish("seed", seed)
        .wish("noise", 2)
        .wish("lamp", 0.3)
        .wish("quality", 92);
    byte[] picture = scene.photograph("loose.jpg", camera.width(), camera.height(), camera.back());
    List<MarksApart.Distance> distances = new ArrayList<>();
    int[][] pairs = {{0, 1}, {1, 2}, {0, 2}, {2, 3}, {3, 0}, {1, 3}};
    for (int[] pair : Arrays.copyOf(pairs, measured)) {
      double[] a = places[pair[0]];
      double[] b = places[pair[1]];
      distances.add(
          new MarksApart.Distance(
              MarkLetter.values()[pair[0]],
              MarkLetter.values()[pair[1]],
              Math.hypot(a[0] - b[0], a[1] - b[1])));
    }
    Scan scan =
        ScanReader.read(
            "loose.jpg", picture, ScanSettings.usual().withApart(new MarksApart(distances)));
    Outline start =
        rail.transformed(
            Similarity.rotation(2 - Math.toDegrees(Math.atan2(8, 480)), Point.ORIGIN)
                .then(Similarity.translation(30, -152)));
    Truth.Errors errors = Truth.errorsWhereverItLies(Truth.points(scan.sketch()), start);
    assertTrue(errors.most() < 0.05, errors::toString);
  }

  /** The default rail's ends, a foot long, at 300 dpi: the check that must show. */
  @Test
  void theScannedRailGivesItsRadiiBack() {
    Outline rail = rail(Map.of("length", "12in", "end", "1in", "tenon", "0in"));
    Outline laid = rail.transformed(Similarity.rotation(1.7, Point.ORIGIN));
    double x = 8 - laid.bounds().minX();
    double y = 8 - laid.bounds().minY();
    byte[] picture =
        new Scene(folder, 0.8)
            .template(rail, 0.1, x, y, 1.7, 600)
            .wish("blur", 0.8)
            .wish("noise", 2)
            .wish("lamp", 0.2)
            .wish("quality", 90)
            .flatbed("rail.jpg", 300, laid.bounds().width() + 16, laid.bounds().height() + 16);
    Scan scan = ScanReader.read("rail.jpg", picture, ScanSettings.usual());
    assertRadii(scan, 0.1);
  }
}
