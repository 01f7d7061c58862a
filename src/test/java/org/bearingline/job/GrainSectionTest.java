package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.bearingline.length.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the card says of parts with thin necks and end grain, against places found by eye. */
class GrainSectionTest {

  /** Two feet and a neck 1 in wide and 5 in high between them. */
  private static final String NECK =
      """
        - start: [0in, 0in]
        - line: {right: 8in, edge: sawn}
        - line: {up: 2in}
        - line: {left: 3-1/2in}
        - line: {up: 5in}
        - line: {right: 3-1/2in}
        - line: {up: 2in}
        - line: {left: 8in, edge: sawn}
        - line: {down: 2in}
        - line: {right: 3-1/2in}
        - line: {down: 5in}
        - line: {left: 3-1/2in}
        - close: routed
      """;

  @TempDir Path folder;

  private List<String> said(String grain) throws IOException {
    WorkedPart worked =
        new JobBench(folder)
            .withShape("neck", NECK)
            .worked(
                "parts:\n  - name: neck\n    shape: neck.yaml\n    bit: 1/2in\n    grain: "
                    + grain
                    + "\n");
    return GrainSection.of(worked.grain().orElseThrow(), Units.INCH).orElseThrow().lines();
  }

  /**
   * Hand-held, counter-clockwise: up the right ends, down the left ones. Each ends at a corner, two
   * at a sawn edge and two at a routed one. The neck carries 9 in / 2 above and below its middle.
   */
  @Test
  void equalPlacesAreSaidOnce() throws IOException {
    List<String> said = said("along");
    List<String> blocks = said.stream().filter(s -> s.startsWith("Backing block")).toList();
    assertEquals(2, blocks.size(), said.toString());
    assertTrue(blocks.stream().allMatch(s -> s.contains("each corner")), blocks.toString());
    List<String> shorts = said.stream().filter(s -> s.startsWith("Short grain")).toList();
    assertEquals(1, shorts.size());
    assertTrue(
        shorts.get(0).contains("1 in of wood along the fibres carry 4-1/2 in"), shorts.get(0));
  }

  /** Fibres up the neck: nothing is short but what hangs on the feet, and no end grain leaves. */
  @Test
  void fibresAlongTheNeckHoldIt() throws IOException {
    List<String> said = said("across");
    assertTrue(
        said.stream().noneMatch(s -> s.startsWith("Short grain") && s.contains("only 1 in")),
        said.toString());
  }
}
