package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A drawing with faults, a sound one and a scan at each size of the page: no barrier that axe-core
 * calls serious, nothing over the side. Pictures are left in {@code target/page-pictures}.
 */
class PageDrawingSightTest {

  @TempDir Path folder;

  @Test
  void onADesk() throws IOException {
    looks(ShopBrowser.sized(1280, 800), "desk");
  }

  @Test
  void onATablet() throws IOException {
    looks(ShopBrowser.touched(1024, 768), "tablet");
  }

  @Test
  void onAPhone() throws IOException {
    looks(ShopBrowser.touched(390, 844), "phone");
  }

  @Test
  void enlargedTwice() throws IOException {
    looks(ShopBrowser.sized(640, 400), "enlarged");
  }

  private static String svg(String d) {
    return "<svg xmlns='http://www.w3.org/2000/svg' width='240mm' height='140mm'"
        + " viewBox='0 0 240 140'><path d='"
        + d
        + "' fill='none' stroke='#000'/></svg>";
  }

  private void looks(ShopBrowser opened, String name) throws IOException {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = opened) {
      PageBench bench = PageBench.open(browser, server.address());
      // It crosses itself where the straights from 20,20 and from 200,20 meet.
      bench.drop("bow.svg", svg("M20 20L200 110V20L20 110Z"));
      browser.await("document.querySelectorAll('#drawing-places button').length === 1");
      bench.run("document.querySelector('.flag').click()");
      seen(bench, browser, name + "-drawing-fault");
      bench.run("scrollTo(0, 0)");
      bench.drop("bow.svg", svg("M20 20H200C200 60 170 90 120 110H20.05V20"));
      browser.await("document.querySelectorAll('.drawn-ring').length > 1");
      browser.await(
          "document.getElementById('board-window').getAttribute('aria-busy') === 'false'");
      bench.run("document.querySelector('#drawing-places button').click()");
      seen(bench, browser, name + "-drawing-sound");
      bench.hand(ScannedBoard.write(folder.resolve("board.png")));
      browser.await("document.getElementById('scan-dialog').open");
      bench.type("#scan-dpi", "60").click("#scan-trace");
      browser.await("document.getElementById('scan-take').checkVisibility()");
      browser.await("document.querySelectorAll('#scan-mind li').length > 0");
      seen(bench, browser, name + "-scan");
      assertTrue(
          bench.is(
              "document.getElementById('scan-dialog').scrollWidth <="
                  + " document.getElementById('scan-dialog').clientWidth"),
          "nothing hangs over in the dialog");
      bench.click("#scan-take").awaitDrawing();
      browser.await("!document.getElementById('traced-box').hidden");
      seen(bench, browser, name + "-scan-taken");
      assertEquals(List.of(), server.defects());
    }
  }

  private static void seen(PageBench bench, ShopBrowser browser, String name) {
    browser.await("document.getAnimations().length === 0");
    browser.picture(name);
    assertEquals(List.of(), browser.barriers());
    assertTrue(
        bench.is("document.documentElement.scrollWidth <= document.documentElement.clientWidth"),
        "nothing hangs over");
  }
}
