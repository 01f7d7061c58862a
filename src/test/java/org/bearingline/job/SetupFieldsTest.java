package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bearingline.routing.setup.Setup;
import org.bearingline.routing.setup.SetupPass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a maker says of his own tool, against setups worked by hand. */
class SetupFieldsTest {

  private static final String KIT =
      """
      name: my kit
      bits:
        - {diameter: 1/2in, cutting-length: 1in, shank: 1/4in, bearing: shank, bearing-height: 1/4in}
        - {diameter: 3/8in, cutting-length: 3/4in, bearing: none}
      collars:
        - {outside: 5/8in, inside: 17/32in, tube: 9/16in}
      """;

  @TempDir Path folder;

  private JobBench bench() throws IOException {
    return new JobBench(folder).withBoard("routed").with("kit.yaml", KIT);
  }

  /** Line 9 is the operation's first. */
  private static String job(String top, String operation) {
    return "kit: kit.yaml\n"
        + "stock: {thickness: 3/4in}\n"
        + "template-thickness: "
        + top
        + "\n"
        + "parts:\n"
        + "  - name: board\n"
        + "    shape: board.yaml\n"
        + "    bit: 1/2in\n"
        + "    operations:\n"
        + operation.indent(6);
  }

  private Setup setup(String job) throws IOException {
    return bench().worked(job).whole().orElseThrow().operations().get(0).setup().orElseThrow();
  }

  /** In sixteenths of an inch, rounded to the thousandth. */
  private static List<Double> sixteenths(Stream<Double> depths) {
    return depths.map(mm -> Math.round(mm / 25.4 * 16_000) / 1000.0).toList();
  }

  private static void spokenOf(String refusal, String place, String... words) {
    assertTrue(refusal.contains(place), refusal);
    for (String word : words) {
      assertTrue(refusal.contains(word), refusal);
    }
    assertEquals(1, refusal.lines().count(), "one sentence");
  }

  /** 3/4 in by 1/4 in at most: three passes of 1/4 in. */
  @Test
  void theOwnDeepestPassSetsThePasses() throws IOException {
    Setup setup = setup(job("7/8in", "- {edge: outline, deepest-pass: 1/4in}"));
    assertEquals(
        List.of(4.0, 8.0, 12.0), sixteenths(setup.passes().stream().map(SetupPass::depth)));
  }

  @Test
  void aPassDeeperThanTheCutterIsLong() throws IOException {
    spokenOf(
        bench().refusal(job("3/4in", "- {edge: outline, deepest-pass: 1-1/4in}")),
        "job.yaml:9:",
        "1-1/4 in",
        "1 in is long");
    spokenOf(
        bench()
            .refusal(
                "kit: kit.yaml\ndeepest-pass: 1-1/4in\nparts:\n  - name: board\n"
                    + "    shape: board.yaml\n    bit: 1/2in\n"),
        "job.yaml:2:15",
        "deeper than the cutting edge");
  }

  /**
   * Cutting edge 1 in, first pass 1/4 in: the bearing stands 3/4 in above the work. With half of
   * its 1/4 in on the template that takes 7/8 in of template; 3/4 in is too thin, 7/8 in serves.
   */
  @Test
  void theBearingLeavesTheTemplate() throws IOException {
    spokenOf(
        bench().refusal(job("3/4in", "- {edge: outline, bit: 1/2in, deepest-pass: 3/16in}")),
        "job.yaml:9:",
        "at pass 1 of 4",
        "the bearing leaves the template",
        "15/16 in");
    Setup held = setup(job("7/8in", "- {edge: outline, bit: 1/2in, deepest-pass: 1/4in}"));
    assertTrue(held.passes().stream().allMatch(SetupPass::held));
    assertEquals(7 / 8.0 * 25.4, held.template().least().orElseThrow(), 1e-9);
    // A bearing 3/16 in tall in place of the kit's 1/4 in needs 1/32 in less.
    Setup low =
        setup(
            job(
                "7/8in",
                "- {edge: outline, bit: 1/2in, bearing-height: 3/16in, deepest-pass: 1/4in}"));
    assertEquals((3 / 4.0 + 3 / 32.0) * 25.4, low.template().least().orElseThrow(), 1e-9);
  }

  @Test
  void aCollarsTubeLongerThanTheTemplateIsThick() throws IOException {
    String mortise =
        "- {mortise: m, centre: [6in, 6in], length: 2in, width: 1/2in, depth: 1/2in, bit: 3/8in,"
            + " collar: 5/8in%s}";
    spokenOf(
        bench().refusal(job("1/2in", String.format(mortise, ""))),
        "job.yaml:9:",
        "tube of 9/16 in",
        "template of 1/2 in");
    Setup cutDown = setup(job("1/2in", String.format(mortise, ", tube: 3/8in")));
    assertEquals((3 / 8.0 + 1 / 32.0) * 25.4, cutDown.template().least().orElseThrow(), 1e-9);
  }

  @Test
  void aBearingAtTheTipCutsAllAtOnceAndNoRecess() throws IOException {
    Setup tip = setup(job("1/4in", "- {edge: outline, bit: 1/2in, bearing-at: tip}"));
    assertEquals(1, tip.passes().size());
    assertEquals(3 / 4.0 + 1 / 32.0, tip.passes().get(0).depth() / 25.4, 1e-9);
    spokenOf(
        bench()
            .refusal(
                job(
                    "1/4in",
                    "- {recess: r, circle: {centre: [6in, 6in], diameter: 4in}, depth: 1/4in, bit:"
                        + " 1/2in, bearing-at: tip}")),
        "job.yaml:9:",
        "bearing at the bit's tip cannot guide");
  }

  @Test
  void whatDoesNotBelongIsRefusedWhereItStands() throws IOException {
    spokenOf(
        bench().refusal(job("1/2in", "- edge: outline\n  bit: 1/2in\n  tube: 1/2in")),
        "job.yaml:11:",
        "only a collar has a tube");
    spokenOf(
        bench()
            .refusal(
                job("1/2in", "- edge: outline\n  bit: 3/8in\n  collar: 5/8in\n  bearing-at: tip")),
        "job.yaml:12:",
        "leave “bearing-at” out");
    spokenOf(
        bench().refusal(job("1/2in", "- edge: outline\n  bit: 1/2in\n  bearing-at: top")),
        "job.yaml:11:",
        "shank, tip or both");
    spokenOf(bench().refusal(job("1/2in", "- edge: outline\n  deepest-pass: 0in")), "job.yaml:10:");
    spokenOf(
        new JobBench(folder)
            .withBoard("routed")
            .with(
                "kit.yaml", "bits:\n  - {diameter: 1/2in, bearing: none, bearing-height: 1/4in}\n")
            .refusal(job("1/2in", "- {edge: outline, bit: 1/2in}")),
        "kit.yaml:2:",
        "carries no bearing");
  }

  /** A slot cutter goes in by bites no deeper than the maker's own: 3/8 in by 3/16 in, twice. */
  @Test
  void aGrooveTakesTheOwnBites() throws IOException {
    String groove =
        "- {groove: g, bit: 1-7/8in, bearing: 1-1/8in, width: 1/4in, from-face: 1/4in,"
            + " deepest-pass: %s}";
    var worked = bench().worked(job("1/2in", String.format(groove, "3/16in")));
    var bites = worked.whole().orElseThrow().operations().get(0).groove().orElseThrow().bites();
    assertEquals(List.of(3.0, 6.0), sixteenths(bites.stream().map(bite -> bite.into())));
    spokenOf(
        bench().refusal(job("1/2in", String.format(groove, "1/2in"))),
        "job.yaml:9:",
        "take smaller bites");
  }

  /** A part without operations takes the limit too: 3/4 in in passes of 3/16 in are four. */
  @Test
  void aPlainPartTakesTheLimit() throws IOException {
    String plain =
        "kit: kit.yaml\nparts:\n  - name: board\n    shape: board.yaml\n    bit: 1/2in\n"
            + "    deepest-pass: 3/16in\n";
    var passes = bench().worked(plain).result().passes().orElseThrow();
    assertEquals(4, passes.depths().size());
    assertTrue(passes.rule().contains("your 3/16 in"), passes.rule());
  }
}
