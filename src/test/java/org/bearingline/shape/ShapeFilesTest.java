package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every file of the folder of shapes, and the invented one beside the tests. */
class ShapeFilesTest {

  private static final int RANDOM_SETTINGS = 200;

  @TestFactory
  Stream<DynamicContainer> everyShapeFile() {
    List<Path> files = new ArrayList<>(ShapeFixtures.in(ShapeFixtures.SHAPES));
    files.addAll(ShapeFixtures.in(ShapeFixtures.TEST_FILES));
    assertTrue(files.size() >= 15, "shape files are found");
    return files.stream()
        .map(file -> DynamicContainer.dynamicContainer(file.getFileName().toString(), tests(file)));
  }

  private static Stream<DynamicTest> tests(Path file) {
    CheckedShape shape = ShapeFixtures.read(file);
    List<DynamicTest> tests = new ArrayList<>();
    tests.add(
        DynamicTest.dynamicTest(
            "is named as its file",
            () -> assertEquals(file.getFileName().toString(), shape.name() + ".yaml")));
    tests.add(
        DynamicTest.dynamicTest(
            "defaults", () -> checkPart(ShapeFixtures.part(shape, Map.of()), shape)));
    for (Measure measure : shape.measures()) {
      for (String setting : limits(measure)) {
        tests.add(
            DynamicTest.dynamicTest(
                measure.name() + "=" + setting,
                () -> drawnOrRefused(shape, Map.of(measure.name(), setting))));
      }
    }
    tests.add(DynamicTest.dynamicTest("all smallest", () -> drawnOrRefused(shape, all(shape, 0))));
    tests.add(DynamicTest.dynamicTest("all largest", () -> drawnOrRefused(shape, all(shape, 1))));
    tests.add(DynamicTest.dynamicTest("any settings", () -> randomSettings(shape)));
    return tests.stream();
  }

  private static List<String> limits(Measure measure) {
    return measure.kind() == MeasureKind.CHOICE
        ? measure.choices()
        : List.of(measure.writtenFrom(), measure.writtenTo());
  }

  private static Map<String, String> all(CheckedShape shape, int which) {
    Map<String, String> settings = new LinkedHashMap<>();
    for (Measure measure : shape.measures()) {
      settings.put(measure.name(), limits(measure).get(which));
    }
    return settings;
  }

  private static void randomSettings(CheckedShape shape) {
    Random random = new Random(20260101);
    int drawn = 0;
    for (int i = 0; i < RANDOM_SETTINGS; i++) {
      // Half of them far from the defaults, half near: the near ones are mostly drawn.
      double spread = i % 2 == 0 ? 1 : 0.15;
      Map<String, String> settings = new LinkedHashMap<>();
      for (Measure measure : shape.measures()) {
        settings.put(measure.name(), random(measure, random, spread));
      }
      drawn += drawnOrRefused(shape, settings) ? 1 : 0;
    }
    assertTrue(drawn >= RANDOM_SETTINGS / 10, "only " + drawn + " settings were drawn");
  }

  private static String random(Measure measure, Random random, double spread) {
    double share = random.nextDouble();
    double any = measure.from() + share * (measure.to() - measure.from());
    double value = measure.value() + spread * (any - measure.value());
    return switch (measure.kind()) {
      case CHOICE -> measure.choices().get(random.nextInt(measure.choices().size()));
      case COUNT -> String.valueOf(Math.round(value));
      case LENGTH -> String.format(Locale.ROOT, "%.4fmm", clamped(measure, value));
      case ANGLE -> String.format(Locale.ROOT, "%.4fdeg", clamped(measure, value));
      case NUMBER -> String.format(Locale.ROOT, "%.6f", clamped(measure, value));
    };
  }

  // Rounding to four digits must not leave the range.
  private static double clamped(Measure measure, double value) {
    return Math.max(measure.from() + 1e-4, Math.min(measure.to() - 1e-4, value));
  }

  /** Whether it was drawn; a refusal names the measure, so that a maker knows what to change. */
  private static boolean drawnOrRefused(CheckedShape shape, Map<String, String> settings) {
    try {
      checkPart(ShapeFixtures.part(shape, settings), shape);
      return true;
    } catch (Problem refused) {
      assertTrue(refused.place() instanceof Place.Field, () -> settings + ": " + refused.spoken());
      assertTrue(refused.getMessage().length() > 20, refused::spoken);
      return false;
    }
  }

  private static void checkPart(Part part, CheckedShape shape) {
    Loop edge = part.contour().loop();
    assertEquals(shape.name(), part.name());
    assertTrue(edge.isCounterClockwise());
    assertFalse(part.notes().isEmpty(), "a shape says how the fibres run");
    assertTrue(
        part.notes().stream().anyMatch(note -> note.toLowerCase(Locale.ROOT).contains("fibres"))
            || !part.cavities().isEmpty(),
        "a note says how the fibres run");
    for (int i = 0; i < edge.size(); i++) {
      Primitive piece = edge.primitives().get(i);
      assertTrue(piece.length() > 1e-5, () -> "a crumb at " + piece);
      if (part.contour().kinds().get(i) == EdgeKind.SAWN) {
        assertEquals(0, piece.curvature(), "sawn edges are straight");
      }
    }
    for (Cavity cavity : part.cavities()) {
      for (Primitive piece : cavity.contour().loop().primitives()) {
        for (int t = 0; t <= 8; t++) {
          Point point = piece.pointAt(t / 8.0);
          assertTrue(edge.contains(point), () -> cavity.name() + " leaves the part at " + point);
        }
      }
    }
  }
}
