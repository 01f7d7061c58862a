package org.bearingline.outside.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.dxf.DxfReader;
import org.bearingline.outside.svg.SvgReader;
import org.bearingline.problem.CutOff;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;

/** Drawings of a size that no part has, and work that nobody waits for any more. */
class ExtremeSizesTest {

  private static final String CURVES =
      "<path d='M120 20c0-20 40-20 40 0s40 20 40 0v144C180 80 140 80 120 60S110 30 120 20z'/>"
          + "<path d='M120 40a25 15 30 1 1 40 20a25 25 30 0 0-40-20'/>";

  private static Sketch svg(String attributes, String inside) {
    String text = "<svg xmlns='http://www.w3.org/2000/svg' " + attributes + ">" + inside + "</svg>";
    return SvgReader.read("a.svg", text.getBytes(StandardCharsets.UTF_8), ReadingSettings.USUAL);
  }

  /** Found by fuzzing: beside one long line all else is smaller than what counts as one point. */
  @Test
  void arcsSmallerThanAPointAreNoArcs() {
    String every =
        "<path d='M320 40a25 15 30 1 1 40 20a25 15 30 0 0-40-20M20 120A40 20 -20 0 1 100 110L90"
            + " 160A10 10 0 1 0 30 150Z'/><path d='M330 110a5 5 0 0150 50a15 15 0 1 1-50-50' />"
            + "<path d='M130 110h-1e9v80h-80zm20 20h40v40h-40z'/>"
            + "<rect x='180' y='310' width='60' height='40' rx='15'/><circle cx='9' cy='9' r='5'/>";
    CleaningSettings wide =
        CleaningSettings.usual().withSize(OptionalDouble.of(500), OptionalDouble.empty());
    for (String drawing : new String[] {every, every + CURVES, CURVES + every}) {
      CleanedOutline cleaned = Cleaning.clean(svg("", drawing), wide);
      assertTrue(cleaned.report().largestMove() < 0.2, "" + cleaned.report().largestMove());
    }
  }

  /** Found by fuzzing: thinned, a loop of less than the tolerance was nothing at all. */
  @Test
  void loopsSmallerThanTheToleranceAreDrawn() throws IOException {
    String drawing;
    try (InputStream in = Sketch.class.getResourceAsStream("svg/every-command.svg")) {
      drawing =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .replace("m60 0 l30", "m60 3.0 l30")
              .replace("1 1 40 20a25", "1 1 40 1e7a25")
              .replace("30,350", "3.5095168178021773E-7,350");
    }
    byte[] bytes = drawing.getBytes(StandardCharsets.UTF_8);
    Sketch sketch = SvgReader.read("a.svg", bytes, ReadingSettings.USUAL);
    CleaningSettings wide =
        CleaningSettings.usual().withSize(OptionalDouble.of(500), OptionalDouble.empty());
    CleanedOutline cleaned = Cleaning.clean(sketch, wide);
    assertTrue(cleaned.report().largestMove() < 0.2, "" + cleaned.report().largestMove());
  }

  @Test
  void aDrawingOfMoreThanAHundredMetresIsRefused() {
    String line = "0 SECTION 2 HEADER 9 $INSUNITS 70 6 0 ENDSEC 0 SECTION 2 ENTITIES 0 CIRCLE";
    for (int metres : new int[] {99, 101}) {
      String text =
          String.join(
              "\n", (line + " 10 0 20 0 40 " + metres / 2.0 + " 0 ENDSEC 0 EOF").split(" "));
      Sketch sketch =
          DxfReader.read("a.dxf", text.getBytes(StandardCharsets.UTF_8), ReadingSettings.USUAL);
      if (metres < 100) {
        assertEquals(1, Cleaning.clean(sketch, CleaningSettings.usual()).outlines().size());
      } else {
        Problem problem =
            assertThrows(Problem.class, () -> Cleaning.clean(sketch, CleaningSettings.usual()));
        assertEquals(
            "a.dxf: is 101 m long, more than the 100 m that a part may be; check its units",
            problem.spoken());
      }
    }
  }

  @Test
  void whatNobodyWaitsForIsCutOff() {
    Sketch sketch = svg("width='100mm' viewBox='0 0 400 400'", CURVES);
    Thread.currentThread().interrupt();
    assertThrows(CutOff.class, () -> svg("width='100mm'", CURVES));
    assertThrows(CutOff.class, () -> Cleaning.clean(sketch, CleaningSettings.usual()));
    assertTrue(Thread.interrupted());
  }
}
