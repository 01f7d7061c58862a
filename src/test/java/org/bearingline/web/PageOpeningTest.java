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
