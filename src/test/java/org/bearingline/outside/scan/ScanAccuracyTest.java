package org.bearingline.outside.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.drawing.sheet.PrintCorrection;
import org.bearingline.external.ExternalProgram;
import org.bearingline.job.CornerMarksJob;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.shape.ShapeLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photographs known templates with a script apart and compares what is traced. */
class ScanAccuracyTest {

  @TempDir Path folder;

  static Outline rail(Map<String, String> measures) {
    return ShapeLibrary.builtIn()
        .find("cloud-lift-rail")
        .measured(measures, Optional.empty())
        .part()
        .outline();
  }

  @ParameterizedTest
  @CsvSource({
    "150, 0.7, 3.7, 0.08",
    "300, 0.7, 3.7, 0.05",
    "600, 0.8, 3.7, 0.05",
    "300, 1.5, 33, 0.05",
    "300, 0.4, 0, 0.05",
  })
  void aFlatbedScanIsTrue(double dpi, double blur, double turn, double most) {
    Outline rail = rail(Map.of("length", "8in", "width", "2in", "end", "1in", "tenon", "0in"));
    Outline laid =
        rail.transformed(Similarity.rotation(turn, Point.ORIGIN));
    double x = 8 - laid.bounds().minX();
    double y = 8 - laid.bounds().minY();
    Scene scene =
        new Scene(folder, 0.8)
            .template(rail, 0.1, x, y, turn, 1200)
            .wish("blur", blur)
            .wish("noise", 2)
            .wish("lamp", 0.15)
            .wish("quality", 90);
    byte[] picture =
        scene.flatbed(
            "flatbed.jpg", dpi, laid.bounds().width() + 16, laid.bounds().height() + 16);
    Scan scan = ScanReader.read("flatbed.jpg", picture, ScanSettings.usual());
    List<Point> points = Truth.points(scan.sketch());
    Truth.Errors errors =
        Truth.errors(points, laid.transformed(Similarity.translation(x, y)));
    System.out.println(dpi + " dpi: " + errors + " noise " + scan.sketch().noise() + " " + scan.notes() + scan.warnings());
    assertTrue(errors.most() < most, errors::toString);
  }
}
