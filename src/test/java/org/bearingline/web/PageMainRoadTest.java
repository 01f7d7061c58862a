package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.bearingline.cli.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** From the page's address to the files in the maker's hand, and that they are the commands'. */
class PageMainRoadTest {

  private static final int FEW = 10;

  @TempDir Path folder;

  @Test
  void byPointerInFewActionsToTheSheetsThatTheCommandWrites() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.click("[data-shape='cloud-lift-rail']").awaitDrawing();
      bench.click("label:has(#units-in)").awaitDrawing();
      bench.click("[aria-label='More rise']").awaitDrawing();
      assertEquals("13/16 in", bench.value("#measure-rise"));
      bench.click("[data-write='1/2in']").awaitText("#verdict-words", "1/2 in bit");
      bench.click("[data-to='files']");
      byte[] sheets = bench.take("cloud-lift-rail-sheets.pdf");
      assertTrue(bench.actions() < FEW, () -> bench.actions() + " actions");
      byte[] command =
          PageBench.written(
              folder,
              "cloud-lift-rail-sheets.pdf",
              "layout",
              "cloud-lift-rail",
              "--set",
              "rise=13/16in",
              "--bit",
              "1/2in",
              "--into",
              folder.toString());
      assertArrayEquals(command, sheets);
      assertEquals(List.of(), browser.complaints());
      assertEquals(List.of(), server.defects());
    }
  }

  /**
   * The 1/4 in bit of the usual kit has no bearing: the page says what leads it, as the card does.
   */
  @Test
  void aBitWithoutABearingIsSaidToRunInACollar() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.click("[data-shape='cloud-lift-rail']").awaitDrawing();
      bench.click("label:has(#units-in)").awaitDrawing();
      bench.click("[data-write='1/4in']").awaitText("#verdict-words", "3/8 in collar");
      bench.awaitText("#rides-words", "The collar on the router’s base rides the template");
      bench.click("[data-write='1/2in']").awaitText("#rides-words", "The bearing rides");
    }
  }

  @Test
  void byKeysAlone() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.tabTo("[data-shape='handle-bar']").keys(Keys.ENTER);
      bench.awaitDrawing();
      bench.tabTo("#measure-length");
      String before = bench.outline();
      String length = bench.value("#measure-length");
      bench.keys(Keys.ARROW_UP).awaitDrawing();
      assertFalse(length.equals(bench.value("#measure-length")));
      assertFalse(before.equals(bench.outline()));
      browser.await("document.querySelectorAll('.bit').length > 3");
      bench.tabTo(".bit").keys(Keys.ARROW_RIGHT).keys(Keys.ARROW_RIGHT);
      bench.awaitDrawing();
      assertTrue(bench.is("document.activeElement.getAttribute('aria-checked') === 'true'"));
      assertTrue(bench.is("document.activeElement.dataset.write !== ''"));
      bench.tabTo("#board-window").keys("+");
      bench.keys(Keys.ARROW_LEFT).keys("0");
      browser.await("document.querySelector('[data-file=\"handle-bar-sheets.pdf\"]')");
      bench.tabTo("[data-file='handle-bar-sheets.pdf']").keys(Keys.ENTER);
      byte[] sheets = browser.downloaded("handle-bar-sheets.pdf");
      assertEquals("%PDF", new String(sheets, 0, 4, StandardCharsets.US_ASCII));
      while (bench.is("!document.getElementById('undo').disabled")) {
        bench.control("z").awaitDrawing();
      }
      assertEquals(length, bench.value("#measure-length"));
      bench.until(() -> bench.outline().equals(before), "all steps to be taken back");
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void everyFileIsTheOneThatTheJobFileGives() throws IOException {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.with(browser, server.address(), "recessed-pull");
      bench.type("#measure-diameter", "2-1/4in").awaitDrawing();
      bench.click("[data-write='3/8in']").awaitText("#verdict-words", "3/8 in bit");
      bench.click("#save");
      Path job = Files.write(folder.resolve("my-job.yaml"), browser.downloaded("my-job.yaml"));
      bench.click("#zip-all");
      Map<String, byte[]> zip = unzipped(browser.downloaded("my-job.zip"));
      Path into = folder.resolve("out");
      assertEquals(
          0,
          Main.run(
              new String[] {"layout", job.toString(), "--into", into.toString()},
              new PrintWriter(Writer.nullWriter()),
              new PrintWriter(Writer.nullWriter())));
      Map<String, byte[]> written = new TreeMap<>();
      try (var files = Files.list(into)) {
        files.forEach(file -> written.put(file.getFileName().toString(), PageBench.bytes(file)));
      }
      assertEquals(written.keySet(), zip.keySet());
      written.forEach((name, bytes) -> assertArrayEquals(bytes, zip.get(name), name));
      for (String name : written.keySet()) {
        assertArrayEquals(written.get(name), bench.take(name), name);
      }
    }
  }

  private static Map<String, byte[]> unzipped(byte[] zip) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        files.put(entry.getName(), in.readAllBytes());
      }
    }
    return files;
  }
}
