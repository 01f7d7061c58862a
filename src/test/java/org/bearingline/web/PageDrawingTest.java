package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/**
 * What a drawing brought to the page leaves open or has wrong is shown at its place on the board.
 */
class PageDrawingTest {

  private static String svg(String content) {
    return svg("width='240mm' height='140mm' viewBox='0 0 240 140'", content);
  }

  private static String svg(String size, String content) {
    return "<svg xmlns='http://www.w3.org/2000/svg' " + size + ">" + content + "</svg>";
  }

  private static String path(String d) {
    return "<path d='" + d + "' fill='none' stroke='#000'/>";
  }

  /** Its straights y = 20 + (x - 20) / 6 and y = 10 + (140 - x) / 2 meet at x 95, y 32.5. */
  private static final String CROSSED =
      svg(path("M20 20L140 40V10L60 50V120H220V70C180 70 170 20 20 20Z"));

  /** Two ends 70 mm apart, at x 20, y 40 and x 20, y 110. */
  private static final String OPEN =
      svg(path("M20 40V20H200C200 60 170 90 120 110H20") + path("M150 30h20v20h-20z"));

  /** The same closed. */
  private static final String MENDED =
      svg(path("M20 40V20H200C200 60 170 90 120 110H20Z") + path("M150 30h20v20h-20z"));

  @Test
  void faultsAreNumberedOnTheBoardAndInTheListAndGoWhenTheDrawingIsMended() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.drop("apron.svg", OPEN).awaitText("#verdict-words", "Not drawn: the line ends here");
      browser.await("document.querySelectorAll('#drawing-places button').length === 2");
      assertTrue(bench.text("#drawing-places").contains("x 20, y 40 of the file"));
      assertTrue(bench.text("#drawing-places").contains("x 20, y 110 of the file"));
      assertFalse(bench.is("document.getElementById('board-window').matches('.stale')"));
      browser.picture("drawing-open");
      // Each flag's line begins at its fault, where the drawn line is on the screen.
      assertEquals("M20 40L", bench.run("return " + DRAWN + ".slice(0, 7)"));
      for (String[] fault : new String[][] {{"1", "20", "40"}, {"2", "20", "110"}}) {
        double off =
            ((Number) bench.run(OFF, fault[0], Double.valueOf(fault[1]), Double.valueOf(fault[2])))
                .doubleValue();
        assertTrue(off < 1.5, "flag " + fault[0] + " is " + off + " px off");
      }
      // By keys from the list, and by a touch on the board.
      bench.tabTo("#drawing-places button").keys(Keys.ENTER);
      browser.await(PRESSED_FLAG + " === '1'");
      assertEquals("true", bench.run(ROW_PRESSED, "1"));
      assertTrue(bench.is("document.querySelector('.loupe').checkVisibility()"));
      browser.picture("drawing-open-looked");
      bench.run("document.querySelectorAll('.flag')[1].click()");
      browser.await(PRESSED_FLAG + " === '2'");
      assertEquals("true", bench.run(ROW_PRESSED, "2"));
      assertTrue(
          bench.is(
              "document.querySelectorAll('.flag')[1].getAttribute('aria-label').startsWith('Fault 2"
                  + " of the drawing: the line ends here')"));
      assertEquals(List.of(), browser.barriers());
      // Mended and dropped again it is the same part, and the numbers are gone.
      bench.drop("apron.svg", MENDED);
      bench.until(() -> bench.text("#verdict-part").startsWith("apron,"), "the part");
      browser.await("!document.getElementById('drawing-box').matches('.faulty')");
      assertEquals(
          0L, bench.run("return document.querySelectorAll('.flag[aria-label^=Fault]').length"));
      assertEquals(1L, bench.run("return document.querySelectorAll('.slip').length"));
      assertEquals(List.of(), server.defects());
    }
  }

  private static final String DRAWN =
      "document.querySelector('#drawn [data-layer=drawn] path').getAttribute('d')";

  private static final String PRESSED_FLAG =
      "document.querySelector('.flag[aria-pressed=true]')?.textContent";

  private static final String ROW_PRESSED =
      "return document.querySelector(`#drawing-places [data-place='${arguments[0]}']`)"
          + ".getAttribute('aria-pressed')";

  /** Pixels between where the line of a flag begins and a point of the drawing. */
  private static final String OFF =
      """
      const flags = [...document.querySelectorAll('.flag')];
      const flag = flags.findIndex((one) => one.textContent === arguments[0]);
      const leader = document.querySelectorAll('.leader')[flag];
      const at = new DOMMatrix(getComputedStyle(leader).transform);
      const base = leader.offsetParent.getBoundingClientRect();
      const matrix = document.querySelector('#drawn').getScreenCTM();
      const point = new DOMPoint(arguments[1], arguments[2]).matrixTransform(matrix);
      const x = base.x + leader.offsetLeft + at.e;
      const y = base.y + leader.offsetTop + at.f;
      return Math.hypot(x - point.x, y - point.y);
      """;

  @Test
  void whereTheOutlineCrossesItselfIsShown() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.drop("crossed.svg", CROSSED).awaitText("#verdict-words", "crosses itself");
      browser.await("document.querySelectorAll('#drawing-places button').length > 0");
      bench.awaitText("#drawing-places", "x 95, y 32.5 of the file");
      browser.picture("drawing-crossed");
      assertTrue(bench.is("document.querySelectorAll('.flag').length > 0"));
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void ofSeveralOutlinesTheMakerChoosesALayer() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      String two =
          svg(
              "<g id='bracket'>"
                  + path("M10 10H90V60H10Z")
                  + path("M30 20h10v10h-10z")
                  + "</g><g id='g7' xmlns:i='http://www.inkscape.org/namespaces/inkscape'"
                  + " i:label='Cleat'>"
                  + path("M120 10H230V40H120Z")
                  + "</g><g id='empty'/>");
      bench.drop("two.svg", two).awaitText("#drawing-head", "2 outlines side by side");
      browser.await("document.querySelectorAll('#drawing-choices .drawing-choice').length === 2");
      assertEquals(
          List.of("bracket 2 lines", "Cleat 1 line"),
          bench.run(
              "return [...document.querySelectorAll('#drawing-choices .drawing-choice')].map((one) =>"
                  + " one.textContent)"));
      browser.picture("drawing-layers");
      bench.click("[data-choice='Cleat']").awaitDrawing();
      bench.run("document.getElementById('units-mm').click()");
      bench.until(() -> bench.text("#verdict-part").contains("110 mm × 30 mm"), "the cleat");
      assertEquals("Cleat", bench.value("#drawn-layer"));
      // The other one by the field.
      bench.run(
          "const field = document.getElementById('drawn-layer'); field.value = 'bracket';"
              + " field.dispatchEvent(new Event('change'))");
      bench.until(() -> bench.text("#verdict-part").contains("80 mm × 50 mm"), "the bracket");
      assertEquals(List.of(), server.defects());
    }
  }

  /** All on one layer, the largest drawn neither first nor last. */
  @Test
  void ofSeveralOutlinesOnOneLayerTheMakerChoosesByNumber() {
    String three =
        svg(
            path("M130 70H210V110H130Z")
                + path("M10 70H50V130H10Z")
                + path("M10 10H150V50H10Z")
                + path("M170 20H200V40H170Z"));
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.run("document.getElementById('units-mm').click()");
      bench.drop("three.svg", three).awaitText("#drawing-head", "4 outlines side by side");
      bench.awaitText("#drawing-head", "Which of them is it?");
      browser.await("document.querySelectorAll('#drawing-places .drawing-choice').length === 4");
      assertEquals(
          List.of("1", "2", "3", "4"),
          bench.run(
              "return [...document.querySelectorAll('.flag')].map((one) => one.textContent)"));
      // In the refusal, the list and on the board the same one has the same number.
      assertTrue(bench.text("#verdict-words").contains("2: 80.0 × 40.0 mm round x 170, y 90"));
      assertTrue(
          bench.text("#drawing-places li:nth-child(2)").contains("round x 170, y 90 of the file"));
      double off = ((Number) bench.run(OFF, "2", 170.0, 90.0)).doubleValue();
      assertTrue(off < 1.5, "flag 2 is " + off + " px off");
      browser.picture("drawing-numbers");
      assertEquals(List.of(), browser.barriers());
      bench.click("[data-choice='outline 2']").awaitDrawing();
      bench.until(() -> bench.text("#verdict-part").contains("80 mm × 40 mm"), "the second");
      assertEquals("2", bench.value("#drawn-outline"));
      bench.awaitText("#drawing-words", "Left out of the drawing: 3 other outlines.");
      browser.await("document.querySelectorAll('.drawing-choice').length === 0");
      browser.picture("drawing-chosen");
      // By the field another, then one that is not there: all are numbered again.
      bench.run(
          "const field = document.getElementById('drawn-outline'); field.value = '1';"
              + " field.dispatchEvent(new Event('input'))");
      bench.until(() -> bench.text("#verdict-part").contains("140 mm × 40 mm"), "the largest");
      bench.run(
          "const field = document.getElementById('drawn-outline'); field.value = '7';"
              + " field.dispatchEvent(new Event('input'))");
      bench.awaitText("#drawn-outline-refusal", "none of number 7; choose from 1, the largest, to");
      browser.await("document.querySelectorAll('#drawing-places .drawing-choice').length === 4");
      browser.picture("drawing-wrong-number");
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void shapesOverEachOtherAreUnitedByOnePress() {
    String over =
        svg(
            "<rect x='20' y='40' width='150' height='60'/><circle cx='170' cy='40' r='25'/>"
                + "<rect x='20' y='80' width='40' height='50' rx='8'/>");
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.drop("over.svg", over).awaitText("#verdict-words", "two outlines cross or touch");
      browser.await("document.querySelectorAll('#drawing-choices .drawing-choice').length === 1");
      bench.awaitText("#drawing-head", "Unite them, or mend the drawing at the");
      browser.picture("drawing-over");
      assertEquals(List.of(), browser.barriers());
      bench.click("[data-choice='unite']").awaitDrawing();
      bench.run("document.getElementById('units-mm').click()");
      bench.until(() -> bench.text("#verdict-part").contains("175 mm × 115 mm"), "the union");
      assertEquals("yes", bench.value("#drawn-unite"));
      bench.awaitText("#drawing-words", "3 shapes of ");
      browser.await("document.querySelectorAll('.drawing-choice').length === 0");
      browser.picture("drawing-united");
      // By the field they are left as drawn again.
      bench.run(
          "const field = document.getElementById('drawn-unite'); field.value = '';"
              + " field.dispatchEvent(new Event('change'))");
      bench.awaitText("#verdict-words", "two outlines cross or touch");
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void aDrawingWithoutUnitsIsSizedByOnePress() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.drop("bare.svg", svg("viewBox='0 0 300 100'", path("M20 10H270V90H20Z")));
      bench.awaitText("#drawing-head", "What is one unit of it?");
      browser.await("document.querySelectorAll('.drawing-choice').length === 5");
      bench.run("document.getElementById('units-mm').click()");
      bench.awaitText("[data-choice='mm']", "250 mm × 80 mm");
      // 250 units of 1/96 in are 66.1 mm.
      assertTrue(bench.text("[data-choice='px']").contains("66.15 mm × "));
      browser.picture("drawing-units");
      bench.click("[data-choice='mm']").awaitDrawing();
      bench.run("document.getElementById('units-mm').click()");
      bench.until(() -> bench.text("#verdict-part").contains("250 mm × 80 mm"), "its size");
      browser.await("document.querySelectorAll('.drawing-choice').length === 0");
      assertEquals(List.of(), server.defects());
    }
  }

  /** A circle of 200 mm by so many points that their text is longer than a state may be. */
  @Test
  void aVeryLongDrawingIsMadeCleanAtOnce(@TempDir Path folder) throws IOException {
    StringBuilder d = new StringBuilder();
    for (int i = 0; i < 60_000; i++) {
      double turn = 2 * Math.PI * i / 60_000;
      d.append(i == 0 ? 'M' : 'L')
          .append(
              String.format(
                  Locale.ROOT,
                  "%.6f %.6f",
                  120 + 100 * Math.cos(turn),
                  120 + 100 * Math.sin(turn)));
    }
    Path file = folder.resolve("long.svg");
    Files.writeString(
        file, svg("width='240mm' height='240mm' viewBox='0 0 240 240'", path(d + "Z")));
    assertTrue(Files.size(file) > 1_000_000);
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      bench.hand(file).awaitDrawing();
      bench.run("document.getElementById('units-mm').click()");
      bench.until(() -> bench.text("#verdict-part").contains("200 mm × "), "its size");
      bench.awaitText("#traced-head", "Made clean from long.svg");
      assertEquals(List.of(), server.defects());
    }
  }

  @Test
  void ofASoundDrawingTheClosedGapAndTheLargestMoveAreShown() {
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      String gap = svg(path("M20 20H200C200 60 170 90 120 110H20") + path("M20.05 110V20"));
      bench.drop("gap.svg", gap).awaitDrawing();
      bench.run("document.getElementById('units-mm').click()");
      browser.await("document.querySelectorAll('#drawing-places [data-place]').length > 1");
      browser.await("document.querySelectorAll('.drawn-ring').length > 1");
      assertFalse(bench.is("document.getElementById('drawing-box').matches('.faulty')"));
      bench.awaitText("#drawing-places", "a gap was closed at x 20");
      bench.awaitText("#drawing-places", "the clean line lies furthest from the drawn one, by 0.0");
      // The list is made again in the units of the job.
      bench.awaitText("#drawing-places li:last-child", " mm");
      bench.click("#drawing-places li:last-child button");
      browser.await("document.querySelectorAll('.drawn-ring.looked-at').length === 1");
      assertTrue(bench.is("document.querySelector('.loupe').checkVisibility()"));
      browser.picture("drawing-sound");
      // As all lines it can be put away.
      bench.run("document.getElementById('layer-drawn').click()");
      browser.await("getComputedStyle(document.getElementById('as-drawn')).display === 'none'");
      assertEquals(List.of(), browser.barriers());
      assertEquals(List.of(), server.defects());
    }
  }
}
