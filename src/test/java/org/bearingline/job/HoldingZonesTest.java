package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.length.Units;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The hatch of clamp zones against a base pushed along the bit's path by itself. */
class HoldingZonesTest {

  private static final String JOB =
      "parts:\n  - name: board\n    shape: board.yaml\n    bit: 1/2in\n%s"
          + "    operations:\n      - through: hole\n"
          + "        circle: {centre: [12in, 8in], diameter: 4in}\n%s";

  @TempDir Path folder;

  private Plate plate(String part, String operation) throws IOException {
    JobBench bench = new JobBench(folder).withBoard("sawn");
    return Plate.of(bench.worked(String.format(JOB, part, operation))).get(0);
  }

  private static List<Point> hatched(Plate plate) {
    List<Point> points = new ArrayList<>();
    for (Layer layer : plate.fullSize(Units.INCH).layers()) {
      if (layer.name() == LayerName.HOLDING) {
        for (Item item : layer.items()) {
          for (Primitive line : ((Item.Stroke) item).path().primitives()) {
            for (int i = 0; i <= 10; i++) {
              points.add(line.pointAt(i / 10.0));
            }
          }
        }
      }
    }
    return points;
  }

  /**
   * A hole of 4 in with a 1/2 in bit: its centre runs on a circle of 1-3/4 in about the middle. A
   * base of 6 in with 1/4 in of clearance keeps everything off to 5 in.
   */
  @Test
  void theHatchKeepsClearOfTheBase() throws IOException {
    List<Point> hatched = hatched(plate("", ""));
    Point middle = new Point(12 * 25.4, 8 * 25.4);
    double nearest = hatched.stream().mapToDouble(middle::distanceTo).min().orElseThrow();
    assertTrue(nearest >= 5 * 25.4 - 1e-6, "nearest " + nearest);
    assertTrue(nearest < 5 * 25.4 + 10, "the hatch comes as near as it may");
  }

  @Test
  void aSmallerBaseLeavesMoreRoom() throws IOException {
    Point middle = new Point(12 * 25.4, 8 * 25.4);
    double nearest =
        hatched(plate("    router-base: 3-1/2in\n", "")).stream()
            .mapToDouble(middle::distanceTo)
            .min()
            .orElseThrow();
    assertTrue(nearest >= 3.75 * 25.4 - 1e-6 && nearest < 3.75 * 25.4 + 10, "nearest " + nearest);
  }

  @Test
  void noMachineAndNoSheetGetsTheHatchAndTheCardTellsOfIt() throws IOException {
    Plate plate = plate("", "");
    assertFalse(plate.forMachine(Units.INCH).layer(LayerName.HOLDING).isPresent());
    assertFalse(plate.forPaper(Units.INCH).layer(LayerName.HOLDING).isPresent());
    Optional<Layer> words = plate.cardPicture(Units.INCH).layer(LayerName.LABELS);
    List<String> said =
        words.orElseThrow().items().stream()
            .filter(Item.Text.class::isInstance)
            .map(item -> ((Item.Text) item).text())
            .toList();
    assertTrue(said.contains("clamp 1"), said.toString());
    assertTrue(said.contains("clamps may stand here"), said.toString());
  }

  @Test
  void atTheTableNothingStands() throws IOException {
    Plate plate = plate("", "        router: table\n");
    assertTrue(plate.zones().get().isEmpty());
    assertTrue(hatched(plate).isEmpty());
    assertTrue(
        HoldingSection.of(plate.worked(), List.of(plate), Units.INCH).lines().stream()
            .anyMatch(line -> line.startsWith("At the table no clamp")));
  }

  @Test
  void aBaseOfNothingIsRefused() throws IOException {
    String refused =
        new JobBench(folder)
            .withBoard("sawn")
            .refusal(String.format(JOB, "    router-base: 0in\n", ""));
    assertTrue(refused.contains("job.yaml:5:18"), refused);
    assertEquals(1, refused.lines().count());
  }
}
