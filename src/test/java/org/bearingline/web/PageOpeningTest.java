package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files brought to the page: jobs, shapes and kits, picked or dropped. */
class PageOpeningTest {

  private static final Path CONSOLE = Path.of("output-samples/hall-console/job.yaml");

  /** 180 mm by 100 mm, as its numbers say. */
  private static final String BRACKET =
      "<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='120mm' viewBox='0 0 200 120'>"
          + "<path d='M10 10H190V60C150 60 120 80 100 110H10Z' fill='none' stroke='#000'/></svg>";

  private static final Path DOOR = Path.of("output-samples/garden-room-door/job.yaml");

  /** A rectangle twice as long as wide; no header, and so no unit. */
  private static final String BARE =
      "0\nSECTION\n2\nENTITIES\n0\nLWPOLYLINE\n8\n0\n90\n4\n70\n1\n10\n0\n20\n0\n10\n100\n20\n0\n"
          + "10\n100\n20\n50\n10\n0\n20\n50\n0\nENDSEC\n0\nEOF\n";

  @Test
  void aJobFileLiesOnTheBenchWithEverythingThatItSays() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.hand(DOOR).awaitDrawing();
      assertEquals(
          List.of("top-rail", "bottom-rail", "stile", "panel"),
          bench.run(
              "return [...document.querySelectorAll('.slip')].map((one) => one.dataset.part)"));
      assertTrue(bench.text("#kept").contains("boards that the blanks are laid out on"));
      bench.click("[data-part='panel']").awaitText("#kept", "grooves of top rail");
      bench.click("#save");
      String saved =
          new String(
              browser.downloaded("garden-room-door-in-white-oak.yaml"), StandardCharsets.UTF_8);
      assertTrue(saved.contains("humidity: [35%, 60%]"), saved);
      assertTrue(saved.contains("glued-up panel"), saved);
      bench.hand(CONSOLE).awaitText("#slips", "drawer front");
      bench.click("[data-part='drawer-front']").awaitText("#kept", "bottom groove");
      bench.until(
          () -> bench.is("!document.getElementById('plates-box').hidden"), "two templates to show");
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void theCommentsOfAJobFileAreSavedAgain() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      String job =
          """
          # Under the mirror.
          job: Small shelf
          units: mm
          parts:
            - name: rail
              shape: straight-rail
              quantity: 2 # left and right
          """;
      bench.drop("small-shelf.yaml", job).awaitDrawing();
      bench.click("[data-write='1/2in']").awaitDrawing();
      bench.click("#add-part").click("[data-shape='oval-top']").awaitDrawing();
      bench.click("#save");
      String saved = new String(browser.downloaded("small-shelf.yaml"), StandardCharsets.UTF_8);
      assertTrue(saved.startsWith("# Under the mirror.\njob: Small shelf\n"), saved);
      assertTrue(saved.contains("quantity: 2 # left and right"), saved);
      assertTrue(saved.contains("bit: 1/2in"), saved);
      assertTrue(saved.contains("oval-top"), saved);
      assertFalse(bench.text("#note-text").contains("comments"));
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void aDroppedDrawingBecomesAPartThatIsSizedAndSaysItsSawnEdges() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.drop("Shelf Bracket.svg", BRACKET).awaitDrawing();
      bench.run("document.getElementById('units-mm').click()");
      bench.until(() -> bench.text("#verdict-part").contains("180 mm × 100 mm"), "its size");
      String drawn = bench.outline();
      bench.click(".ticks input[value='left']").awaitDrawing();
      bench.type("#drawn-width", "360mm").awaitDrawing();
      bench.until(() -> bench.text("#verdict-part").contains("360 mm × 200 mm"), "its new size");
      assertTrue(!drawn.equals(bench.outline()));
      bench.type("#drawn-height", "1m");
      bench.awaitText("#drawn-height-refusal", "leave width or height out");
      bench.type("#drawn-height", "").awaitDrawing();
      bench.click("#add-part").drop("no-units.svg", "<svg xmlns='http://www.w3.org/2000/svg'");
      bench.awaitText("#verdict-words", "Not drawn");
      bench.drop("bare.dxf", BARE);
      bench.awaitText("#drawn-width-refusal", "does not say what its units are; give the width");
      assertFalse(bench.text("#drawn-width-refusal").contains("--"));
      bench.type("#drawn-width", "8in").awaitDrawing();
      bench.until(() -> bench.text("#verdict-part").contains("203.2 mm × 101.6 mm"), "its size");
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void aScanIsAskedForItsResolutionAndBecomesAShape(@TempDir Path folder) throws IOException {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      // At 127 dpi, five dots a millimetre, 140 mm by 80 mm.
      bench.hand(ScannedBoard.write(folder.resolve("board.png")));
      bench.click("#scan-form button[type='submit']");
      bench.awaitText("#scan-refusal", "nothing tells how large it is");
      bench.type("#scan-dpi", "127").click("#scan-form button[type='submit']");
      browser.await("document.getElementById('scan-take').checkVisibility()");
      bench.click("#scan-take");
      bench.awaitDrawing();
      bench.run("document.getElementById('units-mm').click()");
      bench.until(() -> bench.text("#verdict-part").contains(" mm"), "millimetres");
      Matcher size =
          Pattern.compile("([0-9.]+) mm × (?:≈ )?([0-9.]+) mm")
              .matcher(bench.text("#verdict-part"));
      assertTrue(size.find(), bench.text("#verdict-part"));
      assertEquals(140, Double.parseDouble(size.group(1)), 0.3);
      assertEquals(80, Double.parseDouble(size.group(2)), 0.3);
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void aDroppedShapeAndADroppedKitAreTaken() throws IOException {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      String shape =
          Files.readString(Path.of("shapes/oval-top.yaml"))
              .replace("name: oval-top", "name: my-oval");
      bench.drop("my-oval.yaml", shape).awaitDrawing();
      assertEquals(
          List.of("my-oval"),
          bench.run(
              "return [...document.querySelectorAll('.slip')].map((one) => one.dataset.part)"));
      bench.drop("kit.yaml", "name: my shop\nbits: [10mm, 19mm]\n");
      bench.until(
          () -> bench.is("document.querySelectorAll('.bit').length === 3"),
          "two bits and the choice");
      bench.drop("broken.yaml", "job: [");
      bench.awaitText("#note-text", "broken.yaml:");
      assertTrue(bench.is("document.getElementById('note').matches('.trouble')"));
      assertEquals(
          1L, bench.run("return document.querySelectorAll('.slip').length"), "the work stays");
    }
  }
}
