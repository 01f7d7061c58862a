package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.support.ui.Select;

/** What is refused stands at its field in the command's own sentence, and the drawing stays. */
class PageRefusalTest {

  @TempDir Path folder;

  /** Whether a field's refusal lies within the window and under nothing else. */
  private static final String SEEN =
      "((line) => { const box = line.getBoundingClientRect(); return line.contains("
          + "document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2)); })"
          + "(document.getElementById(arguments[0] + '-refusal'))";

  private static final String JOB =
      "job: my job\nunits: in\nparts:\n  - {name: %s, shape: cloud-lift-rail, %s}\n";

  @Test
  void everyFieldRefusesInTheCommandsSentence() throws IOException {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.with(browser, server.address(), "cloud-lift-rail");
      String drawn = bench.outline();
      for (String rise : new String[] {"9in", "foo", "2in", "3/0in", "-1in"}) {
        refuses(bench, "measure-rise", rise, measure("rise=" + rise));
        assertEquals(drawn, bench.outline());
      }
      bench.click("#undo").awaitDrawing();
      bench.type("#measure-rise", "3/4in").awaitDrawing();
      assertEquals("", bench.text("#measure-rise-refusal"));
      assertFalse(bench.is("document.getElementById('board-window').matches('.stale')"));

      bench.run("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
      refuses(bench, "allowance", "foo", job("a", "allowance: foo"));
      bench.type("#allowance", "").awaitDrawing();
      refuses(bench, "thickness", "0in", job("a", "thickness: 0in"));
      bench.type("#thickness", "").awaitDrawing();
      refuses(bench, "part-quantity", "x", job("a", "quantity: x"));
      bench.type("#part-quantity", "1").awaitDrawing();
      bench.type("#part-name", "Front Rail").keys(Keys.TAB);
      shows(bench, "part-name", job("Front Rail", "quantity: 1"));
      bench.type("#part-name", "rail").keys(Keys.TAB);
      bench.awaitDrawing();
      assertEquals("", bench.text("#part-name-refusal"));

      bench.click("[data-write='7/8in']").awaitText("#verdict-words", "7/8 in bit");
      new Select(browser.find("#rides")).selectByValue("collar 5/8in");
      shows(bench, "rides", job("a", "bit: 7/8in, collar: 5/8in"));
    }
  }

  @Test
  void paperSawAndKitRefuseAtOnceWhileTheDrawingIsAsked() throws IOException {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(390, 844)) {
      PageBench bench = PageBench.with(browser, server.address(), "cloud-lift-rail");
      bench.run("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
      for (String[] field :
          new String[][] {
            {"printed", "\"frog\""},
            {"printed", "\"80,80\""},
            {"margin", "frog"},
            {"kerf", "40mm"},
            {"run-out", "-1in"},
            {"deepest-pass", "0in"}
          }) {
        refuses(bench, field[0], field[1].replace("\"", ""), job("a", field[0] + ": " + field[1]));
        assertTrue(bench.is(SEEN, field[0]), field[0]);
        bench.type("#" + field[0], "").awaitDrawing();
        assertEquals("", bench.text("#" + field[0] + "-refusal"));
      }
      bench.click("#kit-open").type("#kit-bits-diameter", "frog").keys(Keys.ENTER);
      bench.awaitText("#kit-dialog form .refusal", "“frog” is not a length");
      assertEquals("frog", bench.value("#kit-bits-diameter"));
      bench.type("#kit-bits-diameter", "13/16in").keys(Keys.ENTER);
      bench.awaitText(".kind li:last-child", "13/16 in");
      assertEquals("", bench.text("#kit-dialog form .refusal"));
    }
  }

  @Test
  void aBitTooWideForAnOpeningIsToldAtTheRack() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.with(browser, server.address(), "mortise-guide");
      bench.awaitText("[data-write='7/8in']", "cannot cut it").click("[data-write='7/8in']");
      bench.awaitText("#shelf-refusal", "the bit is wider than this opening");
      bench.awaitText("#verdict-words", "see the field marked red");
    }
  }

  private void refuses(PageBench bench, String field, String text, String command) {
    bench.type("#" + field, text);
    shows(bench, field, command);
    assertTrue(bench.is("document.getElementById('board-window').matches('.stale')"), text);
    assertEquals(
        "true", bench.run("return document.getElementById(arguments[0]).ariaInvalid", field), text);
    String described =
        (String)
            bench.run(
                "return document.getElementById(arguments[0]).getAttribute('aria-describedby')",
                field);
    assertTrue(described.contains(field + "-refusal"), described);
  }

  private static void shows(PageBench bench, String field, String command) {
    bench.until(
        () -> {
          String shown = bench.text("#" + field + "-refusal");
          return !shown.isEmpty() && command.endsWith(shown);
        },
        field
            + " to say the end of “"
            + command
            + "”, not "
            + bench.text("#" + field + "-refusal"));
  }

  private String measure(String set) {
    return PageBench.refusal(
        "layout", "cloud-lift-rail", "--set", set, "--into", folder.resolve("x").toString());
  }

  private String job(String name, String fields) throws IOException {
    Path file = Files.writeString(folder.resolve("job.yaml"), JOB.formatted(name, fields));
    return PageBench.refusal("layout", file.toString(), "--into", folder.resolve("x").toString());
  }
}
