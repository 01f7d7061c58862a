package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A frame whose groove or panel cannot be, and grooves beside the panel's own. */
class PanelRefusalsTest {

  private static final String LIFTED =
      """
      job: test
      stock: {thickness: 3/4in, species: black cherry}
      parts:
        - name: top-rail
          shape: cloud-lift-rail
          measures: {length: 18in, width: 4in, radius: 1/2in, tenon: 1in}
      %spanels:
        - name: panel
          top-rail: top-rail
          opening: {width: 16in, height: 20in}
          groove: {bit: %s, bearing: %s, width: 1/4in}
          thickness: 1/4in
          %s
      """;

  @TempDir Path folder;

  private CommandRun layout(String extra, String bit, String bearing, String panel)
      throws IOException {
    Path job =
        Files.writeString(folder.resolve("job.yaml"), LIFTED.formatted(extra, bit, bearing, panel));
    return CommandRun.of("layout", job.toString(), "--into", folder.resolve("out").toString());
  }

  private void refused(CommandRun run, String... says) {
    assertEquals(2, run.status(), run.out());
    for (String words : says) {
      assertTrue(run.err().contains(words), run.err());
    }
    assertTrue(Files.notExists(folder.resolve("out")));
  }

  /** The lift's hollow is R 1/2 in: a bearing of 1 in follows it, one of 1-1/4 in does not. */
  @Test
  void aBearingThatCannotFollowAHollowOfTheRail() throws IOException {
    refused(
        layout("", "2in", "1-1/4in", "species: plywood"),
        "job.yaml:11:13: the 1-1/4 in bearing",
        "R 1/2 in",
        "take a bearing of 1 in or less");
    CommandRun fits = layout("", "1-3/4in", "1in", "species: plywood");
    assertEquals(0, fits.status(), fits.err());
  }

  /**
   * Black cherry, flat-sawn: 0.00248 for each percent (Wood Handbook, Table 13-5), from 6 to 14 %.
   */
  @Test
  void aPanelThatBurstsTheFrame() throws IOException {
    refused(
        layout(
            "",
            "1-3/4in",
            "1in",
            "moisture: 6\n    moisture-range: [6, 14]\n    gap-across: 1/64in"),
        "would push the frame apart");
  }

  @Test
  void aWoodNamedByHalf() throws IOException {
    refused(
        layout("", "1-3/4in", "1in", "species: oak"),
        "job.yaml:13:14: no movement is known of oak; write red oak or white oak");
  }

  @Test
  void aPanelThatFallsOut() throws IOException {
    refused(
        layout("", "1-1/4in", "1in", "moisture: 14\n    moisture-range: [6, 14]\n    sawn: flat"),
        "job.yaml:11:13: ",
        "groove at least");
  }

  /**
   * A groove along the other edge is no second groove of the panel's; one along the same edge is.
   */
  @Test
  void aGrooveOfTheRailItself() throws IOException {
    String stile =
        """
          - name: stile
            shape: straight-rail
            quantity: 2
            measures: {opening: 30in, width: 3in, tenon: 0in}
            operations:
              - groove: seal
                side: %s
                bit: 1-1/4in
                bearing: 1in
                width: 1/8in
                from-face: 1/8in
        """;
    String panel = "species: plywood\n    stiles: stile";
    CommandRun outer = layout(stile.formatted("top"), "1-3/4in", "1in", panel);
    assertEquals(0, outer.status(), outer.err());
    assertTrue(outer.out().contains("seal") && outer.out().contains("groove"), outer.out());
    Files.move(folder.resolve("out"), folder.resolve("first"));
    refused(
        layout(stile.formatted("bottom"), "1-3/4in", "1in", panel),
        "“stile” is grooved along this edge for a panel");
  }
}
