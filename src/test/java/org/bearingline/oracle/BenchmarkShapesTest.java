package org.bearingline.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The shared shapes are what they are said to be. */
class BenchmarkShapesTest {

  @ParameterizedTest
  @CsvSource({
    "STEPPED_RAIL, 20",
    "DRAWER_FRONT, 16",
    "RING, 200",
    "NOISY_10K, 10000",
    "NOISY_100K, 100000"
  })
  void haveTheirNumberOfPieces(BenchmarkShapes shape, int pieces) {
    assertEquals(pieces, shape.region().size());
  }

  @ParameterizedTest
  @EnumSource(
      value = BenchmarkShapes.class,
      names = {"NOISY_100K"},
      mode = EnumSource.Mode.EXCLUDE)
  void areValid(BenchmarkShapes shape) {
    assertTrue(new JtsReference(0.001).flat(shape.region()).isValid());
  }

  @Test
  void theRingIsTangentAllTheWay() {
    Region ring = BenchmarkShapes.RING.region();
    var arcs = ring.pieces().get(0).outer().primitives();
    for (int i = 0; i < arcs.size(); i++) {
      Primitive next = arcs.get((i + 1) % arcs.size());
      assertEquals(1, arcs.get(i).tangentAt(1).dot(next.tangentAt(0)), 1e-9);
      double radius = 1 / Math.abs(next.curvature());
      assertTrue(radius >= 5 && radius <= 40);
    }
    assertEquals(5, arcs.stream().mapToDouble(p -> 1 / Math.abs(p.curvature())).min().orElse(0));
  }
}
