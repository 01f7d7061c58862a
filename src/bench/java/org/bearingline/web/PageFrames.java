package org.bearingline.web;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How soon a changed measure is on the screen: in a real browser, for every shape of the library,
 * the arrow key is pressed on its first measure at the start of a frame, and the time taken until
 * the new drawing is painted. Beside it stand the time until the answer is received, and, for
 * comparison in the same run, how long one frame lasts in which nothing changes.
 */
public final class PageFrames {

  private static final int WARM = 30;
  private static final int PRESSES = 30;

  /** Columns: the answer received; the drawing painted; a frame without any change. */
  private static final String PRESS =
      """
      const done = arguments[arguments.length - 1];
      const presses = arguments[0];
      const input = document.querySelector('.measure [role=spinbutton]');
      const frame = () => new Promise((next) => requestAnimationFrame(next));
      const shown = () => new Promise((next) => {
        const channel = new MessageChannel();
        channel.port1.onmessage = next;
        requestAnimationFrame(() => channel.port2.postMessage(0));
      });
      (async () => {
        const times = [];
        input.focus();
        for (let i = 0; i < presses; i++) {
          await frame();
          performance.clearMeasures();
          performance.clearResourceTimings();
          const start = performance.now();
          input.dispatchEvent(new KeyboardEvent('keydown',
            {key: i % 2 ? 'ArrowDown' : 'ArrowUp', bubbles: true, cancelable: true}));
          let drawn = [];
          while (!drawn.length) {
            await new Promise((next) => setTimeout(next, 0));
            drawn = performance.getEntriesByName('change to drawing');
          }
          const asked = performance.getEntriesByType('resource')
            .find((one) => one.name.endsWith('/api/draw'));
          await frame();
          const bare = performance.now();
          await frame();
          times.push([
            asked ? asked.responseEnd - start : NaN,
            drawn[0].startTime + drawn[0].duration - start,
            performance.now() - bare]);
          await new Promise((next) => setTimeout(next, 150));
        }
        done(times);
      })();
      """;

  private PageFrames() {}

  public static void main(String[] args) {
    System.out.println("| shape | answer ms | p95 | painted ms | p95 | bare frame ms | p95 |");
    System.out.println("|---|--:|--:|--:|--:|--:|--:|");
    List<double[]> all = new ArrayList<>();
    try (ShopServer server = ShopServer.start();
        ShopBrowser browser = ShopBrowser.sized(1280, 800)) {
      PageBench bench = PageBench.open(browser, server.address());
      browser.await("document.querySelectorAll('.thumb path').length > 20");
      List<?> shapes =
          (List<?>)
              bench.run(
                  "return [...document.querySelectorAll('.pattern')].map((one) => one.dataset.shape)");
      for (Object shape : shapes) {
        if (bench.is("!document.getElementById('picker').open")) {
          bench.click("#add-part");
        }
        bench.click("[data-shape='" + shape + "']").awaitDrawing();
        press(browser, WARM / 2);
        List<double[]> times = press(browser, PRESSES);
        all.addAll(times);
        System.out.println(row(shape.toString(), times));
      }
    }
    System.out.println(row("all", all));
  }

  private static List<double[]> press(ShopBrowser browser, int presses) {
    browser.driver().manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
    List<double[]> times = new ArrayList<>();
    for (Object row : (List<?>) browser.driver().executeAsyncScript(PRESS, presses)) {
      times.add(
          ((List<?>) row)
              .stream()
                  .mapToDouble(one -> one == null ? Double.NaN : ((Number) one).doubleValue())
                  .toArray());
    }
    return times;
  }

  private static String row(String name, List<double[]> times) {
    StringBuilder row = new StringBuilder("| " + name);
    for (int column = 0; column < 3; column++) {
      int at = column;
      double[] sorted =
          times.stream().mapToDouble(time -> time[at]).filter(Double::isFinite).sorted().toArray();
      row.append(
          String.format(
              Locale.ROOT, " | %.1f | %.1f", sorted[sorted.length / 2], quantile(sorted, 0.95)));
    }
    return row.append(" |").toString();
  }

  private static double quantile(double[] sorted, double share) {
    return sorted[Math.min(sorted.length - 1, (int) (sorted.length * share))];
  }
}
