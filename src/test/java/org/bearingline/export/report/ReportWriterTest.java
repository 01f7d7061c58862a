package org.bearingline.export.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report's JSON, read back by Python's own parser. */
class ReportWriterTest {

  @TempDir Path folder;

  private static Report.Part full(String name) {
    return new Report.Part(
        name,
        2,
        new Bounds(-10, 5, 600.1, 80),
        45_757.5 + 1e-11,
        OptionalDouble.of(12.7),
        OptionalDouble.empty(),
        OptionalDouble.of(25.4),
        OptionalDouble.of(31.75),
        Optional.of(new Report.Follower("collar", 35)),
        OptionalDouble.of(-1.625),
        List.of(
            new Report.Leftover(
                1, new Point(1 / 3.0, -0.0), 1e-12, 0.5, OptionalDouble.of(0), "corner"),
            new Report.Leftover(2, new Point(3e6, 1e-7), 10, 2, OptionalDouble.empty(), "neck")),
        List.of(new Report.Overcut(new Point(7, 8), 0.25, 0.125)),
        List.of(new Report.Bit(6.35), new Report.Bit(12.7)),
        Optional.of(
            new Report.RoughLine(
                3, OptionalDouble.empty(), 1234.5, 800, List.of(new Point(100, 20)))),
        Optional.of(
            new Report.Feed("hand", "counter-clockwise round the outside", OptionalInt.of(16_000))),
        List.of(6.0, 12.0, 18.0),
        Optional.of(new Report.Proof(2.5e-8)),
        List.of("Keep both hands on the router — \"always\"."),
        List.of("rail.svg"));
  }

  private static Report.Part bare() {
    return new Report.Part(
        "bare",
        1,
        new Bounds(0, 0, 1, 1),
        1,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  private static String text(Report report) {
    return new String(ReportWriter.write(report), StandardCharsets.UTF_8);
  }

  /** What a Python expression says of the parsed report {@code r}. */
  private String python(Report report, String expression) throws Exception {
    Path file = Files.write(folder.resolve("report.json"), ReportWriter.write(report));
    String code =
        "import json,sys; r=json.load(open(sys.argv[1],encoding='utf-8'));"
            + "p=r['parts']; print("
            + expression
            + ")";
    return ExternalProgram.pythonWith("json").run("-c", code, file).strip();
  }

  @Test
  void pythonReadsEveryFieldOfTheDesign() throws Exception {
    Report report = new Report(List.of(full("rail ø"), bare()));
    assertEquals("['rail ø', 'bare']", python(report, "[x['name'] for x in p]"));
    assertEquals("{'width': 610.1, 'height': 75}", python(report, "p[0]['bounds']"));
    assertEquals("45757.5", python(report, "p[0]['area']"));
    assertEquals(
        "12.7 None 25.4 31.75 -1.625",
        python(
            report,
            "p[0]['smallestInsideRadius'],p[0]['narrowestNeck'],p[0]['largestCutterDiameter'],"
                + "p[0]['cutterDiameter'],p[0]['templateOffset']"));
    assertEquals("{'kind': 'collar', 'diameter': 35}", python(report, "p[0]['follower']"));
    assertEquals(
        "{'number': 1, 'at': [0.333333333, 0], 'area': 0, 'depth': 0.5, 'insideRadius': 0,"
            + " 'kind': 'corner'}",
        python(report, "p[0]['leftovers'][0]"));
    assertEquals("[3000000, 1e-07]", python(report, "p[0]['leftovers'][1]['at']"));
    assertEquals("None", python(report, "p[0]['leftovers'][1]['insideRadius']"));
    assertEquals(
        "{'allowance': 3, 'bladeRadius': None, 'length': 1234.5, 'wasteArea': 800,"
            + " 'bridged': [[100, 20]]}",
        python(report, "p[0]['roughLine']"));
    assertEquals("{'maxDeviation': 2.5e-08}", python(report, "p[0]['proof']"));
    assertEquals("[6, 12, 18] ['rail.svg']", python(report, "p[0]['passes'],p[0]['files']"));
    assertEquals("16000", python(report, "p[0]['feed']['spindleSpeed']"));
    assertEquals(
        "[6.35, 12.7]", python(report, "[b['diameter'] for b in p[0]['bitsThatLeaveNothing']]"));
  }

  @Test
  void emptyIsNullAndListsAreThereAllTheSame() throws Exception {
    Report report = new Report(List.of(bare()));
    assertEquals(
        "['cutterDiameter', 'feed', 'follower', 'largestCutterDiameter', 'narrowestNeck', 'proof',"
            + " 'roughLine', 'smallestInsideRadius', 'templateOffset']",
        python(report, "sorted(k for k,v in p[0].items() if v is None)"));
    assertEquals(
        "['bitsThatLeaveNothing', 'files', 'leftovers', 'notes', 'overcuts', 'passes']",
        python(report, "sorted(k for k,v in p[0].items() if v==[])"));
  }

  @Test
  void numbersArePlainDecimals() {
    String text = text(new Report(List.of(full("rail"))));
    assertTrue(text.contains("3000000"), text);
    assertTrue(text.contains("0.0000001"));
    assertTrue(text.contains("0.000000025"));
    assertFalse(text.matches("(?s).*[0-9][eE][+-]?[0-9].*"), text);
  }

  @Test
  void indentsByTwoSpacesWithUnixLineEnds() {
    String text = text(new Report(List.of(bare())));
    assertTrue(text.startsWith("{\n  \"parts\" : [\n    {\n      \"name\""), text);
    assertFalse(text.contains("\r"));
    assertTrue(text.endsWith("}\n"));
  }

  @Test
  void figureThatIsNoNumberIsADefect() {
    Report.Part bad =
        new Report.Part(
            "bad",
            1,
            new Bounds(0, 0, 1, 1),
            Double.NaN,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            List.of(),
            List.of());
    assertThrows(NumberFormatException.class, () -> ReportWriter.write(new Report(List.of(bad))));
  }
}
