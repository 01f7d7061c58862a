package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cautions of several bits, and of parts without any. */
class CautionOrderTest {

  private static final String HEAD =
      "stock: {thickness: 3/4in}\nparts:\n  - name: board\n    shape: board.yaml\n";

  @TempDir Path folder;

  private List<String> cautions(String kind, String operations) throws IOException {
    return new JobBench(folder).withBoard(kind).worked(HEAD + operations).result().cautions();
  }

  @Test
  void theSpeedsOfTwoBitsStandTogether() throws IOException {
    List<String> said =
        cautions(
            "routed",
            """
                operations:
                  - {edge: outline, bit: 3/4in}
                  - recess: dish
                    circle: {centre: [12in, 8in], diameter: 5in}
                    depth: 1/4in
                    bit: 1/2in
                    collar: 5/8in
            """);
    List<Integer> speeds =
        java.util.stream.IntStream.range(0, said.size())
            .filter(i -> said.get(i).contains("revolutions a minute"))
            .boxed()
            .toList();
    assertEquals(2, speeds.size(), said.toString());
    assertEquals(speeds.get(0) + 1, speeds.get(1), said.toString());
    assertTrue(said.get(said.size() - 1).startsWith("Read and follow"), "the last as ever");
  }

  @Test
  void whatIsOnlySawnNamesNoBit() throws IOException {
    List<String> said = cautions("sawn", "");
    assertTrue(said.stream().noneMatch(s -> s.contains("bit")), said.toString());
    assertTrue(said.get(0).startsWith("Saw with the guard down"), said.toString());
  }

  @Test
  void whatIsOnlyGroovedNamesTheSlotCutter() throws IOException {
    List<String> said =
        cautions(
            "sawn",
            "    operations:\n      - {groove: g, bit: 1-7/8in, bearing: 1-1/8in, width: 1/4in,"
                + " from-face: 1/4in, side: bottom}\n");
    assertTrue(
        said.stream().anyMatch(s -> s.contains("1-7/8 in bit no faster than 18,000")),
        said.toString());
  }

  /** A bearing that rides the work has no template to fasten, and a fence no starting pin. */
  @Test
  void whatHasNoTemplateIsNotToldToFastenIt() throws IOException {
    String groove =
        "    operations:\n      - {groove: g, bit: 1-7/8in, bearing: 1-1/8in, width: 1/4in,"
            + " from-face: 1/4in, side: bottom, router: ROUTER}\n";
    List<String> table = cautions("sawn", groove.replace("ROUTER", "table"));
    assertTrue(table.stream().noneMatch(s -> s.contains("template")), table.toString());
    assertTrue(table.stream().noneMatch(s -> s.contains("starting pin")), table.toString());
    assertTrue(table.stream().anyMatch(s -> s.startsWith("Against a fence")), table.toString());
    List<String> hand =
        cautions(
            "sawn",
            groove.replace("ROUTER", "hand").replace("1-7/8in", "1in").replace("1-1/8in", "1/2in"));
    assertTrue(hand.stream().noneMatch(s -> s.contains("template")), hand.toString());
    assertTrue(hand.stream().anyMatch(s -> s.startsWith("Clamp the work")), hand.toString());
  }

  /** Where a template is fastened too, the weaker words give way to it. */
  @Test
  void grooveAndEdgeTellOneWayOfHolding() throws IOException {
    List<String> said =
        cautions(
            "routed",
            """
                operations:
                  - {edge: outline, bit: 3/4in}
                  - {groove: g, bit: 1in, bearing: 1/2in, width: 1/4in, from-face: 1/4in}
            """);
    assertTrue(said.stream().anyMatch(s -> s.startsWith("Fasten the template")), said.toString());
    assertTrue(said.stream().noneMatch(s -> s.startsWith("Clamp the work")), said.toString());
  }

  /** Two grooves with one cutter at one height, as in a muntin. */
  @Test
  void whatIsSetUpAlikeIsToldOnce() throws IOException {
    WorkedPart muntin =
        new JobBench(folder)
            .withBoard("sawn")
            .worked(
                HEAD
                    + """
                    operations:
                      - {groove: left, bit: 1-7/8in, bearing: 1-1/8in, width: 1/4in, from-face: 1/4in, side: bottom}
                      - {groove: right, bit: 1-7/8in, bearing: 1-1/8in, width: 1/4in, from-face: 1/4in, side: top}
                """);
    List<String> lines =
        Cards.sections(muntin, Plate.of(muntin), org.bearingline.length.Units.INCH).stream()
            .filter(section -> section.heading().equals("Setting up"))
            .flatMap(section -> section.lines().stream())
            .toList();
    assertEquals(1, lines.size(), lines.toString());
    assertTrue(lines.get(0).startsWith("1 left and 2 right: "), lines.toString());
  }
}
