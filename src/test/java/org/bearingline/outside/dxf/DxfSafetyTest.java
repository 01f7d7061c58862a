package org.bearingline.outside.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Sketches;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Damaged, hostile and very large DXF files: read, or refused in one sentence with their line. */
class DxfSafetyTest {

  /** What does not end would go on for hours; a loaded machine may take its time. */
  private static final Duration LIMIT = Duration.ofMinutes(3);

  private static final String END = "0\nENDSEC\n0\nEOF\n";

  private static Sketch read(byte[] bytes, ReadingSettings settings) {
    return assertTimeoutPreemptively(LIMIT, () -> DxfReader.read("a.dxf", bytes, settings));
  }

  private static Sketch read(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8), ReadingSettings.USUAL);
  }

  /** Tags one behind the other, as {@code 0 LINE 10 1.5}. */
  private static String tags(String words) {
    return String.join("\n", words.strip().split("\\s+")) + "\n";
  }

  private static String entities(String words) {
    return tags("0 SECTION 2 ENTITIES " + words) + END;
  }

  private static Problem refused(String says, byte[] bytes) {
    Problem problem = assertThrows(Problem.class, () -> read(bytes, ReadingSettings.USUAL));
    assertTrue(problem.getMessage().contains(says), problem.spoken());
    assertFalse(problem.getMessage().endsWith("."), problem.spoken());
    return problem;
  }

  private static Problem refused(String says, String text) {
    return refused(says, text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aFileWithEntitiesAloneIsRead() {
    Sketch sketch = read(entities("0 LINE 8 edge 10 1 20 2 11 3 21 4"));
    assertEquals(1, sketch.figures().size());
    assertFalse(sketch.sized());
    assertEquals("LINE on layer edge, line 6", sketch.figures().get(0).source());
  }

  @Test
  void linesMayEndInAnyWay() {
    String text = entities("0 LINE 8 edge 10 1 20 2 11 3 21 4");
    assertEquals(1, read(text.replace("\n", "\r\n")).figures().size());
    assertEquals(1, read(text.replace("\n", "\r")).figures().size());
    assertEquals(1, read("999\nmade by hand\n" + text).figures().size());
    assertEquals(1, read("\ufeff" + text).figures().size());
    assertEquals(
        1, read(text.replace("LINE", "  LINE ").replace("\n10\n", "\n 10\n")).figures().size());
  }

  @Test
  void otherFormatsAreNamed() {
    refused("binary DXF", "A drawing in Binary DXF\r\n\u001a\0\0\0");
    refused("DWG", "AC1032\0\0\0\0");
    refused("UTF-16", entities("0 LINE").getBytes(StandardCharsets.UTF_16));
    refused("no DXF", "<svg/>\n<g/>\n");
    refused("no DXF", "words");
    refused("cut short", "");
  }

  @Test
  void theLineOfADamageIsNamed() {
    Problem number = refused("“wide” is no number", entities("0 LINE 10 wide"));
    assertEquals("a.dxf:8:1", number.place().words());
    Problem code = refused("“LINE”", "0\nSECTION\n2\nENTITIES\nLINE\n0\n");
    assertEquals(5, ((Place.Spot) code.place()).line());
    refused("no group 11", entities("0 LINE 10 1 20 1"));
    refused("less than 0", entities("0 CIRCLE 10 1 20 1 40 -3"));
    refused("too far out", entities("0 LINE 10 1e12 20 0 11 0 21 0"));
    refused("too far out", entities("0 CIRCLE 10 1e9 20 1e9 40 1e9"));
    for (String bad : List.of("NaN", "Infinity", "1e999", "0x1p3", "1d", "--1", "1,5")) {
      Problem problem = assertThrows(Problem.class, () -> read(entities("0 LINE 10 " + bad)), bad);
      assertTrue(problem.getMessage().contains("no number"), problem.spoken());
    }
  }

  /** Wherever a file is cut, it is either refused or, past its end mark, whole. */
  @Test
  void aFileThatIsCutShortIsRefused() {
    String whole =
        entities("0 LINE 8 edge 10 1 20 2 11 3 21 4 0 CIRCLE 10 5 20 5 40 3")
            .replace("EOF\n", "EOF");
    for (int length = 0; length < whole.length(); length++) {
      String part = whole.substring(0, length);
      assertThrows(Problem.class, () -> read(part), part);
    }
    assertEquals(2, read(whole).figures().size());
  }

  @Test
  void aBlockInsertedIntoItselfIsRefused() {
    String blocks =
        tags(
            "0 SECTION 2 BLOCKS"
                + " 0 BLOCK 2 A 10 0 20 0 0 INSERT 2 B 10 0 20 0 0 ENDBLK"
                + " 0 BLOCK 2 B 10 0 20 0 0 INSERT 2 A 10 0 20 0 0 ENDBLK 0 ENDSEC");
    refused("without end", blocks + entities("0 INSERT 2 A 10 0 20 0"));
  }

  @Test
  void copiesOfCopiesAreCounted() {
    StringBuilder blocks = new StringBuilder("0 SECTION 2 BLOCKS");
    blocks.append(" 0 BLOCK 2 B0 10 0 20 0 0 CIRCLE 10 0 20 0 40 1 0 ENDBLK");
    for (int i = 1; i < 40; i++) {
      blocks.append(" 0 BLOCK 2 B").append(i).append(" 10 0 20 0");
      blocks.append((" 0 INSERT 2 B" + (i - 1) + " 10 0 20 0").repeat(10)).append(" 0 ENDBLK");
    }
    refused("elements", tags(blocks + " 0 ENDSEC") + entities("0 INSERT 2 B39 10 0 20 0"));
    refused(
        "too far out",
        tags(blocks.toString().replace("INSERT", "INSERT 41 1e8") + " 0 ENDSEC")
            + entities("0 INSERT 2 B39 10 0 20 0"));
    refused(
        "copies",
        tags(blocks + " 0 ENDSEC") + entities("0 INSERT 2 B0 10 0 20 0 70 30000 71 30000"));
  }

  @Test
  void aMillionVerticesAreRead() {
    int count = 1_000_000;
    StringBuilder light = new StringBuilder("0\nLWPOLYLINE\n70\n1\n");
    StringBuilder heavy = new StringBuilder("0\nPOLYLINE\n66\n1\n70\n1\n");
    for (int i = 0; i < count; i++) {
      String point = "10\n" + i % 97 + "." + i % 10 + "\n20\n" + i % 89 + "\n";
      light.append(point);
      heavy.append("0\nVERTEX\n8\n0\n").append(point);
    }
    for (String text : List.of(light.toString(), heavy + "0\nSEQEND\n")) {
      Sketch sketch = read("0\nSECTION\n2\nENTITIES\n" + text + END);
      StrokePiece.Chords chords = (StrokePiece.Chords) Sketches.pieces(sketch).get(0);
      assertEquals(count, chords.points().size(), 1);
      assertTrue(sketch.figures().get(0).strokes().get(0).closed());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "71 0 40 0 40 1 10 0 20 0 10 1 20 1, degree",
    "71 99 40 0 40 1 10 0 20 0 10 1 20 1, degree",
    "71 3 40 0 40 1 10 0 20 0 10 1 20 1, belong together",
    "71 1 40 0 40 0 40 1 40 0.5 10 0 20 0 10 1 20 1, knots",
    "71 1 40 0 40 0 40 1 40 1 41 1 41 0 10 0 20 0 10 1 20 1, weight",
    "71 1 40 0 40 0 40 1 40 1 41 1 10 0 20 0 10 1 20 1, weight",
  })
  void splinesThatContradictThemselvesAreRefused(String spline, String says) {
    refused(says, entities("0 SPLINE " + spline));
  }

  @Test
  void aSplineWithoutLengthOfParameterIsNoLine() {
    refused("no line", entities("0 SPLINE 71 1 40 0 40 0 40 0 40 0 10 0 20 0 10 1 20 1"));
  }

  @Test
  void theLayerIsChosenOrTheNearestNamed() {
    String text = entities("0 LINE 8 Edge 10 1 20 2 11 3 21 4 0 LINE 8 notes 10 1 20 2 11 3 21 4");
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Sketch sketch = read(bytes, new ReadingSettings(Optional.of("EDGE"), OptionalDouble.empty()));
    assertEquals(1, sketch.figures().size());
    assertEquals(List.of("1 entity on another layer"), sketch.ignored());
    Problem problem =
        assertThrows(
            Problem.class,
            () -> read(bytes, new ReadingSettings(Optional.of("edges"), OptionalDouble.empty())));
    assertTrue(problem.spoken().contains("did you mean Edge?"), problem.spoken());
  }

  @Test
  void namesInAnOldCodePageAreRead() {
    byte[] bytes =
        entities("0 LINE 8 Gerät 10 1 20 2 11 3 21 4").getBytes(Charset.forName("windows-1252"));
    assertTrue(read(bytes, ReadingSettings.USUAL).figures().get(0).source().contains("Gerät"));
  }

  /** A millimetre of the header's units, by the definition of the inch as 25.4 mm (1959). */
  @ParameterizedTest
  @CsvSource({"1, 25.4", "2, 304.8", "4, 1", "5, 10", "6, 1000", "9, 0.0254"})
  void theHeadersUnitsAreKept(int code, double mm) {
    String header = tags("0 SECTION 2 HEADER 9 $INSUNITS 70 " + code + " 0 ENDSEC");
    String line = entities("0 LINE 8 0 10 0 20 0 11 2 21 0");
    Sketch sketch = read(header + line);
    assertTrue(sketch.sized());
    assertEquals(2 * mm, Sketches.pieces(sketch).get(0).end().x(), 1e-9);
    Sketch told =
        read(
            (header + line).getBytes(StandardCharsets.UTF_8),
            new ReadingSettings(Optional.empty(), OptionalDouble.of(1)));
    assertEquals(2, Sketches.pieces(told).get(0).end().x(), 1e-9);
  }
}
