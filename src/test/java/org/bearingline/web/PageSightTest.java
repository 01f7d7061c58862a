package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The page at each size it is used at: no barrier that axe-core calls serious, nothing cut off at
 * the side, targets large enough for a finger, and no request that leaves the machine. Pictures are
 * left in {@code target/page-pictures}.
 */
class PageSightTest {

  /** Targets of 44 px: WCAG 2.2, success criterion 2.5.5; 24 px is the least, 2.5.8. */
  private static final int TARGET = 44;

  @Test
  void onADesk() {
    looks(ShopBrowser.sized(1280, 800), "desk");
  }

  @Test
  void onATablet() {
    looks(ShopBrowser.touched(1024, 768), "tablet");
  }

  @Test
  void onAPhone() {
    looks(ShopBrowser.touched(390, 844), "phone");
  }

  /** A window of 1280 by 800 at 200 % shows 640 by 400 CSS pixels. */
  @Test
  void enlargedTwice() {
    looks(ShopBrowser.sized(640, 400), "enlarged");
  }

  private static void looks(ShopBrowser opened, String name) {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = opened) {
      PageBench bench = PageBench.open(browser, server.address());
      assertEquals(List.of(), browser.barriers());
      browser.await("document.querySelectorAll('.thumb path').length > 8");
      browser.picture(name + "-patterns");
      bench.click("[data-shape='recessed-pull']").awaitDrawing();
      bench.run("document.getElementById('units-in').click()");
      bench.awaitDrawing();
      browser.await("document.querySelectorAll('.bit').length > 3");
      bench.click("[data-write='1-1/8in']").awaitText("#verdict-words", "leaves 2 places");
      bench.run("scrollTo(0, 0)");
      browser.picture(name);
      bench.run("document.querySelector('.flag').click()");
      bench.run("document.getElementById('map-button').click()");
      browser.await("document.querySelectorAll('.sheet').length > 0");
      browser.picture(name + "-sheets");
      assertEquals(List.of(), browser.barriers());
      assertTrue(
          bench.is("document.documentElement.scrollWidth <= document.documentElement.clientWidth"),
          "nothing hangs over");
      assertEquals(List.of(), bench.run(SMALL_TARGETS, TARGET));
      String own = server.origin();
      for (String request : browser.requests()) {
        assertTrue(request.startsWith(own) || request.startsWith("blob:"), request);
      }
      assertEquals(List.of(), server.defects());
    }
  }

  /** Buttons, fields and switches in sight that are lower than a finger needs. */
  private static final String SMALL_TARGETS =
      """
      const least = arguments[0];
      const small = [];
      for (const one of document.querySelectorAll('button, select, input[type=text]')) {
        const box = one.getBoundingClientRect();
        const after = getComputedStyle(one, '::after');
        const grown = after.content !== 'none' && after.position === 'absolute'
          ? -2 * parseFloat(after.top || 0) : 0;
        if (box.height > 0 && box.height + Math.max(0, grown) < least) {
          small.push(one.id + ' ' + one.className + ' ' + box.height);
        }
      }
      return small;
      """;
}
