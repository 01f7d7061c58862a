package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.junit.jupiter.api.Test;

/** The worked example of the page that describes shape files is a file that works. */
class ReadmeExampleTest {

  @Test
  void theExampleIsTheTestedFile() {
    String page = ShapeFixtures.text(ShapeFixtures.SHAPES.resolve("README.md"));
    String example = page.split("```yaml\n")[1].split("```")[0];
    assertEquals(
        ShapeFixtures.text(ShapeFixtures.TEST_FILES.resolve("coat-peg-board.yaml")), example);
  }

  @Test
  void theCoatPegBoardIsAsItsMeasuresSay() {
    CheckedShape shape =
        ShapeFixtures.read(ShapeFixtures.TEST_FILES.resolve("coat-peg-board.yaml"));
    Part part = ShapeFixtures.part(shape, Map.of("pegs", "7", "length", "40in"));
    double in = 25.4;
    assertEquals(40 * in, part.contour().loop().bounds().width(), 1e-9);
    assertEquals(5 * in, part.contour().loop().bounds().height(), 1e-9);
    assertEquals(2, part.cavities().size());
    // The S of a lift with equal radii halves its box: rise 1, run √(4 · 0.75 · 1 − 1) = √2.
    double run = Math.sqrt(2);
    double area = 40 * 5 - 2 * (3 * 1 + run / 2);
    assertEquals(area * in * in, part.contour().loop().signedArea(), 1e-6);
    long pegs = part.marks().stream().filter(Mark.DrillCentre.class::isInstance).count();
    assertEquals(7, pegs);
    assertTrue(
        part.marks().stream()
            .filter(Mark.DrillCentre.class::isInstance)
            .map(Mark.DrillCentre.class::cast)
            .allMatch(mark -> mark.diameter() == 12.7 && mark.at().y() == 2 * in));
  }
}
