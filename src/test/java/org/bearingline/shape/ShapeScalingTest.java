package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.bearingline.Seed;
import org.bearingline.outline.Loop;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;

/**
 * A shape is arithmetic with dimensions kept: with every length taken k times, its edge is k times
 * as long and its area k² times as large.
 */
class ShapeScalingTest {

  private static final List<String> NAMES = ShapeLibrary.builtIn().names();

  private static Loop edge(CheckedShape shape, double factor) {
    Map<String, String> settings = new LinkedHashMap<>();
    for (Measure measure : shape.measures()) {
      if (measure.kind() == MeasureKind.LENGTH) {
        settings.put(
            measure.name(), String.format(Locale.ROOT, "%.9fmm", measure.value() * factor));
      }
    }
    return ShapeFixtures.part(shape, settings).contour().loop();
  }

  @Property(tries = 60, seed = Seed.FIXED)
  void lengthsScaleAndAreasScaleBySquares(
      @ForAll @IntRange(min = 0, max = 13) int which,
      @ForAll @DoubleRange(min = 0.85, max = 1.3) double factor) {
    CheckedShape shape = ShapeFixtures.builtIn(NAMES.get(which));
    Loop plain = edge(shape, 1);
    Loop scaled;
    try {
      scaled = edge(shape, factor);
    } catch (Problem outsideARange) {
      Assume.that(false);
      return;
    }
    // A free curve becomes arcs within a tolerance that does not scale.
    boolean free = plain.size() > 20 || shape.name().equals("bracket-foot");
    double slack = free ? 2 * CurveFit.DEFAULT_TOLERANCE * plain.length() : 1e-6;
    assertEquals(plain.signedArea() * factor * factor, scaled.signedArea(), slack * 2, shape::name);
    assertEquals(plain.length() * factor, scaled.length(), free ? 0.1 : 1e-6, shape::name);
  }

  @Test
  void allShapesAreDrawn() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("shapes"))) {
      long written = files.filter(file -> file.toString().endsWith(".yaml")).count();
      assertEquals(written, NAMES.size());
    }
    assertTrue(NAMES.stream().allMatch(name -> edge(ShapeFixtures.builtIn(name), 1).size() > 3));
  }
}
