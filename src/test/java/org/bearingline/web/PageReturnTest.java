package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WindowType;

/** Nothing is lost: by reload, back, undo, another tab, or a server that went away. */
class PageReturnTest {

  @Test
  void reloadBackAndUndoBringTheWorkBack() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.with(browser, server.address(), "arched-rail");
      bench.type("#measure-length", "31in").awaitDrawing();
      String drawn = bench.outline();
      settle(bench, "\"31in\"");
      assertFalse(browser.driver().getCurrentUrl().contains(server.token()));
      browser.driver().navigate().refresh();
      bench.awaitDrawing();
      assertEquals("31 in", bench.value("#measure-length"));
      assertEquals(drawn, bench.outline());

      bench.click("#undo").awaitDrawing();
      assertFalse(drawn.equals(bench.outline()));
      bench.control("y").awaitDrawing();
      bench.until(() -> drawn.equals(bench.outline()), "the step to be done again");

      bench.click("#add-part").click("[data-shape='oval-top']").awaitDrawing();
      bench.until(() -> slips(bench) == 2, "two parts");
      settle(bench, "\"oval-top\"");
      browser.driver().navigate().back();
      bench.until(() -> slips(bench) == 1, "one part again");
      bench.until(() -> drawn.equals(bench.outline()), "the rail on the board again");
      browser.driver().navigate().forward();
      bench.until(() -> slips(bench) == 2, "two parts again");
      assertEquals(List.of(), server.defects());
    }
  }

  /** A name counts when it is typed to its end; an answer may come before. */
  @Test
  void anAnswerThatComesWhileANameIsTypedTakesNoLetterAway() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.with(browser, server.address(), "arched-rail");
      String drawn = bench.outline();
      bench.run(
          """
          document.querySelectorAll('details').forEach((one) => { one.open = true; });
          const ask = window.fetch;
          const held = new Promise((goOn) => { window.goOn = goOn; });
          window.fetch = (...how) => held.then(() => ask(...how));
          """);
      bench.type("#measure-length", "31in").type("#part-name", "top-rai");
      bench.run("window.goOn()");
      bench.until(() -> !drawn.equals(bench.outline()), "the longer rail");
      bench.awaitDrawing();
      assertEquals("top-rai", bench.value("#part-name"));
      bench.keys("l", Keys.TAB).awaitText(".slip", "top rail");
      bench.control("z").awaitText(".slip", "arched rail");
      assertEquals("arched-rail", bench.value("#part-name"));
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void twoTabsDoNotDisturbEachOther() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.with(browser, server.address(), "oval-top");
      String oval = bench.outline();
      String first = browser.driver().getWindowHandle();
      browser.driver().switchTo().newWindow(WindowType.TAB);
      PageBench other = PageBench.with(browser, server.address(), "tapered-leg");
      other.type("#measure-length", "20in").awaitDrawing();
      assertEquals("20in", other.value("#measure-length"));
      browser.driver().switchTo().window(first);
      assertEquals(oval, bench.outline());
      bench.type("#measure-width", "20in").awaitDrawing();
      bench.until(() -> !oval.equals(bench.outline()), "the oval to change");
      assertEquals(1, slips(bench));
    }
  }

  @Test
  void aServerThatGoesAwayAndComesBackLosesNothing() {
    try (ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      ShopServer server = ShopServer.start();
      int port = server.port();
      PageBench bench = PageBench.with(browser, server.address(), "bracket-foot");
      String before = bench.outline();
      server.close();
      bench.type("#measure-width", "8in");
      bench.awaitText("#trouble", "does not answer");
      assertTrue(bench.is("!document.getElementById('trouble').hidden"));
      assertEquals("8in", bench.value("#measure-width"));
      try (PageServer again = PageServer.start(port, ShopServer::fail)) {
        bench.awaitText("#trouble", "earlier start");
        bench.type("#new-address", again.address()).keys(Keys.ENTER);
        bench.until(() -> bench.is("document.getElementById('trouble').hidden"), "the bar to go");
        bench.until(() -> !before.equals(bench.outline()), "the new drawing");
        assertEquals("8in", bench.value("#measure-width").replace(" ", ""));
      }
    }
  }

  /** The address is written a moment after the last change: waits until its work has a word. */
  private static void settle(PageBench bench, String word) {
    bench.until(() -> bench.addressed().contains(word), "the address to hold " + word);
  }

  private static int slips(PageBench bench) {
    return ((Long) bench.run("return document.querySelectorAll('.slip').length")).intValue();
  }
}
