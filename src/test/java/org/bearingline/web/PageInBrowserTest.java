package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** That a browser gets the page, and that neither of them asks anybody else. */
class PageInBrowserTest {

  @Test
  void theAddressOpensThePageAndNothingLeavesTheMachine() {
    try (PageServer server = PageServer.start(0, ShopServer::fail);
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      browser.to(server.address());
      browser.await("document.readyState === 'complete'");
      assertTrue(browser.driver().getTitle().contains("Bearing Line"));
      assertNotNull(browser.picture("smoke"));
      String own = server.address().substring(0, server.address().indexOf('#'));
      List<String> requests = browser.requests();
      assertFalse(requests.isEmpty());
      for (String request : requests) {
        assertTrue(
            request.startsWith(own) || request.startsWith("blob:") || request.startsWith("data:"),
            request);
        assertFalse(request.contains(server.address().substring(own.length() + 7)), request);
      }
      assertEquals(List.of(), browser.complaints());
    }
  }
}
