package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Files brought to the page: jobs, shapes and kits, picked or dropped. */
class PageOpeningTest {

  private static final Path CONSOLE = Path.of("output-samples/hall-console/job.yaml");

  /** 180 mm by 100 mm, as its numbers say. */
  private static final String BRACKET =
      "<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='120mm' viewBox='0 0 200 120'>"
          + "<path d='M10 10H190V60C150 60 120 80 100 110H10Z' fill='none' stroke='#000'/></svg>";

  private static final Path DOOR = Path.of("output-samples/garden-room-door/job.yaml");

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
      bench.click("[data-part='panel']").awaitText("#kept", "grooves of top-rail");
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
      bench.awaitText("#drawn-height-refusal", "leave one of --width and --height out");
      bench.type("#drawn-height", "").awaitDrawing();
      bench.click("#add-part").drop("no-units.svg", "<svg xmlns='http://www.w3.org/2000/svg'");
      bench.awaitText("#verdict-words", "Not drawn");
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
      bench.awaitText("#note-text", "broken.yaml");
      assertTrue(bench.is("document.getElementById('note').matches('.trouble')"));
      assertEquals(
          1L, bench.run("return document.querySelectorAll('.slip').length"), "the work stays");
    }
  }
}
