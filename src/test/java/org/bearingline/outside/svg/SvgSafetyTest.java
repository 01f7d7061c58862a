package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.bearingline.external.ExternalFolder;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Sketches;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No drawing reaches beyond its own text, or takes time and memory without bound. */
class SvgSafetyTest {

  /** What does not end would go on for hours; a loaded machine may take its time. */
  private static final Duration LIMIT = Duration.ofMinutes(3);

  private static final String HEAD =
      "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
          + " width='100mm' height='100mm' viewBox='0 0 100 100'>\n";

  private static final String RECT = "<rect x='1' y='1' width='50' height='20'/>";

  @TempDir Path folder;

  private static Sketch read(byte[] bytes) {
    return assertTimeoutPreemptively(
        LIMIT, () -> SvgReader.read("drawing.svg", bytes, ReadingSettings.USUAL));
  }

  private static Sketch read(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static void refused(String says, int line, byte[] bytes) {
    Problem problem = assertThrows(Problem.class, () -> read(bytes));
    assertTrue(problem.getMessage().contains(says), problem.spoken());
    assertFalse(problem.getMessage().endsWith("."), problem.spoken());
    if (line > 0) {
      Place.Spot spot = (Place.Spot) problem.place();
      assertEquals(line, spot.line(), problem.spoken());
    }
  }

  private static void refused(String says, int line, String text) {
    refused(says, line, text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void anExternalEntityIsRefusedAndItsFileNotRead() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "M0 0L1 1");
    refused(
        "DOCTYPE",
        2,
        "<?xml version='1.0'?>\n<!DOCTYPE svg [<!ENTITY x SYSTEM '"
            + secret.toUri()
            + "'>]>\n"
            + HEAD
            + "<path d='&x;'/></svg>");
    refused(
        "DOCTYPE",
        1,
        "<!DOCTYPE svg [<!ENTITY % x SYSTEM '"
            + secret.toUri()
            + "'> %x;]>"
            + HEAD
            + RECT
            + "</svg>");
    refused(
        "DOCTYPE", 1, "<!DOCTYPE svg SYSTEM '" + secret.toUri() + "'>" + HEAD + RECT + "</svg>");
  }

  @Test
  void aBombOfEntitiesIsRefused() {
    StringBuilder bomb = new StringBuilder("<!DOCTYPE svg [\n<!ENTITY a0 'M0 0L1 1'>\n");
    for (int i = 1; i < 30; i++) {
      bomb.append("<!ENTITY a").append(i).append(" '");
      bomb.append(("&a" + (i - 1) + ";").repeat(10)).append("'>\n");
    }
    refused("DOCTYPE", 3, bomb + "]>\n" + HEAD + "<path d='&a29;'/></svg>");
  }

  /** As drawing programs write the names of their namespaces. */
  @Test
  void wordsThatStandForPlainTextAreRead() {
    String words = "<!ENTITY svg 'http://www.w3.org/2000/svg'>\n<!ENTITY wide '60'>\n";
    String rest =
        "<svg xmlns='&svg;' width='100mm' height='50mm' viewBox='0 0 100 50'>"
            + "<rect width='&wide;' height='10'/></svg>";
    String w3c = "PUBLIC '-//W3C//DTD SVG 1.1//EN' 'http://www.w3.org/svg11.dtd'";
    for (String type : List.of("", w3c)) {
      Sketch sketch = read("<!DOCTYPE svg " + type + " [\n" + words + "]>\n" + rest);
      assertEquals(60, Sketches.bounds(sketch).width(), 1e-9);
    }
    refused("DOCTYPE", 2, "<!DOCTYPE svg [\n<!ENTITY e '<rect/>'>]>\n" + rest);
    refused("DOCTYPE", 2, "<!DOCTYPE svg [\n<!ENTITY e '&#38;svg;'>]>\n" + rest);
    refused("DOCTYPE", 2, "<!DOCTYPE svg [\n<!ENTITY e '" + "x".repeat(1001) + "'>]>\n" + rest);
    refused("DOCTYPE", 2, "<!DOCTYPE svg [\n<!ATTLIST path d CDATA 'M0 0L1 1'>]>\n" + rest);
  }

  @Test
  void aWordThatIsRepeatedWithoutEndIsRefused() {
    String type = "<!DOCTYPE svg [\n<!ENTITY e '" + "x".repeat(1000) + "'>]>\n";
    String text = type + HEAD + ("<g id='" + "&e;".repeat(100) + "'/>\n").repeat(2_000) + "</svg>";
    refused("", 0, text);
  }

  @Test
  void anEntityThatNobodyDeclaredIsRefused() {
    String doctype =
        "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
            + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>\n";
    assertThrows(Problem.class, () -> read(doctype + HEAD + "<g>&x;</g>" + RECT + "</svg>"));
    assertThrows(Problem.class, () -> read(doctype + HEAD + "<path d='&x;'/>" + RECT + "</svg>"));
    assertThrows(Problem.class, () -> read(HEAD + "<path d='&x;'/>" + RECT + "</svg>"));
  }

  /** Whatever names an address: a server that listens there hears nothing. */
  @Test
  void theNetworkIsNotTouched() throws IOException {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      server.setSoTimeout(300);
      String there = "http://127.0.0.1:" + server.getLocalPort() + "/";
      Sketch sketch =
          read(
              "<?xml version='1.0'?>\n<?xml-stylesheet href='"
                  + there
                  + "a.css' type='text/css'?>\n"
                  + "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' '"
                  + there
                  + "svg11.dtd'>\n"
                  + HEAD
                  + "<style>@import url("
                  + there
                  + "b.css); rect { fill: url("
                  + there
                  + "#p) }"
                  + " @font-face { src: url("
                  + there
                  + "f.woff) }</style>"
                  + "<image xlink:href='"
                  + there
                  + "c.png' width='9' height='9'/>"
                  + "<script xlink:href='"
                  + there
                  + "d.js'>throw 1</script>"
                  + "<a xlink:href='"
                  + there
                  + "'>"
                  + RECT
                  + "</a>"
                  + "<xi:include xmlns:xi='http://www.w3.org/2001/XInclude' href='"
                  + there
                  + "'/>"
                  + "</svg>");
      assertEquals(1, sketch.figures().size());
      assertEquals(
          List.of("1 image", "1 script", "2 style sheets of other files"), sketch.ignored());
      assertThrows(
          Problem.class,
          () -> read(HEAD + "<use xlink:href='" + there + "e.svg#p'/>" + RECT + "</svg>"));
      assertThrows(SocketTimeoutException.class, server::accept);
    }
  }

  @Test
  void linesOfAnotherFileAreRefused() {
    refused("outside the file", 2, HEAD + "<use xlink:href='other.svg#part'/>" + RECT + "</svg>");
    refused("outside the file", 2, HEAD + "<use href='file:///etc/passwd'/>" + RECT + "</svg>");
  }

  @Test
  void aUseOfItselfIsRefused() {
    refused(
        "without end",
        2,
        HEAD + "<g id='a'><use href='#b'/></g><g id='b'><use href='#a'/></g>" + RECT + "</svg>");
    refused("without end", 2, HEAD + "<use id='a' href='#a'/></svg>");
  }

  @Test
  void copiesOfCopiesAreCounted() {
    StringBuilder text = new StringBuilder(HEAD).append("<defs><g id='g0'>" + RECT + "</g>\n");
    for (int i = 1; i < 40; i++) {
      text.append("<g id='g").append(i).append("'>");
      text.append(("<use href='#g" + (i - 1) + "'/>").repeat(10)).append("</g>\n");
    }
    refused("elements", 0, text + "</defs><use href='#g39'/></svg>");
  }

  @Test
  void deepNestingIsRefused() {
    for (String inside : List.of("g", "a", "svg", "switch", "text", "defs")) {
      String text =
          HEAD
              + ("<" + inside + ">").repeat(10_000)
              + RECT
              + ("</" + inside + ">").repeat(10_000)
              + "</svg>";
      refused("deep", 2, text);
    }
    refused("style", 2, HEAD + "<rect style='fill:" + "f(".repeat(50_000) + "'/></svg>");
  }

  @Test
  void aMillionVerticesAreRead() {
    int count = 1_000_000;
    StringBuilder data = new StringBuilder("M0 0");
    for (int i = 0; i < count; i++) {
      data.append('L').append(i % 97).append('.').append(i % 10).append(' ').append(i % 89);
    }
    Sketch sketch = read(HEAD + "<path d='" + data + "z'/></svg>");
    StrokePiece.Chords chords = (StrokePiece.Chords) Sketches.pieces(sketch).get(0);
    assertEquals(count + 2, chords.points().size());
  }

  @Test
  void moreThanFourMillionVerticesAreRefused() {
    String data = "M0 0" + "h1v1".repeat(2_100_000);
    refused("4,000,000", 2, HEAD + "<path d='" + data + "'/></svg>");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M0 0 L1e12 0 L0 9 | too far out",
        "M0 0 L1e300 0 L0 9 | no number",
        "M0 0 LNaN 0 | cannot be read",
        "M0 0 LInfinity 0 | cannot be read",
        "M0 0 L5 | cannot be read",
        "L5 5 | begin with a move",
        "M0 0 A1e38 1e38 0 0 1 5 5 | too far out",
        "M0 0 Q 3 | cannot be read",
      })
  void impossiblePathsAreRefusedAtTheirLine(String data, String says) {
    refused(says, 3, HEAD + "<g>\n<path d='" + data + "'/></g></svg>");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<rect width='1e12' height='5'/> | too far out",
        "<rect width='-1' height='5'/> | less than 0",
        "<circle r='NaN'/> | no length",
        "<circle r='5em'/> | size of text",
        "<circle cx='1e9' r='1e9'/> | too far out",
        "<g transform='scale(1e30)'><rect width='5' height='5'/></g> | too far out",
        "<g transform='rotate(a)'><rect width='5' height='5'/></g> | transform",
        "<polygon points='0,0 1,x'/> | points",
        "<svg viewBox='0 0 1'><rect width='5' height='5'/></svg> | viewBox",
        "<rect width='5' height='5' style='transform: rotate(45deg)'/> | stands in a style",
      })
  void impossibleShapesAreRefusedAtTheirLine(String shape, String says) {
    refused(says, 2, HEAD + shape + "</svg>");
  }

  @Test
  void damagedFilesAreRefused() {
    String whole = HEAD + "<g>\n" + RECT + "\n</g></svg>";
    refused("cut short", 0, whole.substring(0, whole.length() - 9));
    refused("cut short", 0, whole.substring(0, 60));
    refused("no SVG", 0, "<html><body/></html>");
    refused("no SVG", 0, "plain words");
    refused("no line", 0, HEAD + "</svg>");
    refused("texts into paths", 0, HEAD + "<text>words</text></svg>");
    refused(
        "damaged",
        0,
        (HEAD + "<g id='\u00e4'>" + RECT + "</g></svg>").getBytes(StandardCharsets.ISO_8859_1));
    refused("cut short", 0, new byte[] {0, 1, 2, 3});
  }

  /** Those that once broke librsvg, and all else its tests hold. */
  @Test
  void drawingsThatBrokeAnotherReaderAreReadOrRefused() throws IOException {
    var drawings =
        ExternalFolder.of(
            "/usr/libexec/installed-tests/RSVG/fixtures", "Debian's package librsvg2-tests");
    int count = 0;
    for (Path drawing : drawings.files(".svg")) {
      byte[] bytes = Files.readAllBytes(drawing);
      try {
        read(bytes);
      } catch (Problem refused) {
        assertFalse(refused.getMessage().isBlank(), drawing.toString());
      }
      count++;
    }
    assertTrue(count > 400);
  }

  @Test
  void otherEncodingsThatSayWhatTheyAreAreRead() {
    String text = HEAD + "<g id='\u00e4'>" + RECT + "</g></svg>";
    for (String name : List.of("UTF-8", "UTF-16", "ISO-8859-1", "windows-1252")) {
      String declared = "<?xml version='1.0' encoding='" + name + "'?>\n" + text;
      assertEquals(1, read(declared.getBytes(Charset.forName(name))).figures().size(), name);
    }
    assertEquals(1, read(text.getBytes(StandardCharsets.UTF_16)).figures().size());
  }
}
