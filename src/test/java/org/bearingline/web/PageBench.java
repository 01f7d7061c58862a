package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import org.bearingline.cli.Main;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The page as a maker handles it: by pointer, by keys, and by looking. */
final class PageBench {

  private static final int MOST_TABS = 150;

  private final ShopBrowser browser;
  private int actions;

  PageBench(ShopBrowser browser) {
    this.browser = browser;
  }

  /** Opens the address that the program printed; the wall of patterns appears. */
  static PageBench open(ShopBrowser browser, String address) {
    PageBench bench = new PageBench(browser);
    browser.to(address);
    bench.actions++;
    browser.await("document.querySelectorAll('.pattern').length > 0");
    return bench;
  }

  /** Opens the page, measures in inches, with one part of a shape on the board. */
  static PageBench with(ShopBrowser browser, String address, String shape) {
    PageBench bench = open(browser, address);
    bench.click("[data-shape='" + shape + "']");
    bench.awaitDrawing();
    bench.run("document.getElementById('units-in').click()");
    bench.awaitDrawing();
    return bench;
  }

  /** Maker's actions since the page was opened: clicks, words typed and keys. */
  int actions() {
    return actions;
  }

  PageBench click(String selector) {
    WebElement element = browser.find(selector);
    run("arguments[0].scrollIntoView({block: 'center'})", element);
    element.click();
    actions++;
    return this;
  }

  /** Writes into a field in place of what stood there. */
  PageBench type(String selector, String text) {
    WebElement field = browser.find(selector);
    run("arguments[0].scrollIntoView({block: 'center'})", field);
    field.click();
    field.sendKeys(Keys.chord(Keys.CONTROL, "a"));
    field.sendKeys(text.isEmpty() ? Keys.DELETE : text);
    actions++;
    return this;
  }

  PageBench keys(CharSequence... keys) {
    new Actions(browser.driver()).sendKeys(keys).perform();
    actions++;
    return this;
  }

  /** Presses a letter with the control key. */
  PageBench control(String letter) {
    new Actions(browser.driver())
        .keyDown(Keys.CONTROL)
        .sendKeys(letter)
        .keyUp(Keys.CONTROL)
        .perform();
    actions++;
    return this;
  }

  /** Presses Tab until the element of a selector has the focus. */
  PageBench tabTo(String selector) {
    for (int i = 0; i < MOST_TABS; i++) {
      if (is("document.activeElement.matches(arguments[0])", selector)) {
        return this;
      }
      new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
    }
    throw new AssertionError("no Tab leads to " + selector);
  }

  /** Waits until what is drawn, or refused, is what was last asked for. */
  PageBench awaitDrawing() {
    browser.await(
        "document.getElementById('board-window').getAttribute('aria-busy') === 'false'"
            + " && document.getElementById('verdict-words').textContent");
    return this;
  }

  /** Waits until an element says something. */
  PageBench awaitText(String selector, String part) {
    until(() -> text(selector).contains(part), selector + " to say “" + part + "”");
    return this;
  }

  void until(BooleanSupplier holds, String what) {
    long end = System.nanoTime() + ShopBrowser.PATIENCE.toNanos();
    while (!holds.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, () -> "waited in vain for " + what + "; " + state());
      pause();
    }
  }

  private String state() {
    return text("#verdict-words") + " | " + text("#note-text") + " | " + text("#trouble");
  }

  private static void pause() {
    try {
      Thread.sleep(30);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  /** What an element says, hidden or not. */
  String text(String selector) {
    return (String)
        run(
            "return (document.querySelector(arguments[0]) ?? {textContent: ''}).textContent",
            selector);
  }

  String value(String selector) {
    return (String) run("return document.querySelector(arguments[0]).value", selector);
  }

  /** The work in the page's address, as JSON; {@code null} where there is none. */
  String addressed() {
    return (String)
        browser
            .driver()
            .executeAsyncScript(
                """
                const done = arguments[arguments.length - 1];
                import('/page/address.js')
                  .then((address) => address.unpacked(address.parts(location.hash).state ?? ''))
                  .then((work) => done(JSON.stringify(work)), (failed) => done(`failed: ${failed}`));
                """);
  }

  boolean is(String expression, Object... arguments) {
    return Boolean.TRUE.equals(run("return !!(" + expression + ")", arguments));
  }

  Object run(String script, Object... arguments) {
    return browser.driver().executeScript(script, arguments);
  }

  /** The outline on the board, as it is drawn. */
  String outline() {
    return (String) run("return document.getElementById('wood').getAttribute('d')");
  }

  /** Hands a file over by the page's choice of files. */
  PageBench hand(Path file) {
    browser.driver().findElement(By.id("file-input")).sendKeys(file.toAbsolutePath().toString());
    actions++;
    return this;
  }

  /** Lets a text file fall on the page. */
  PageBench drop(String name, String text) {
    run(
        """
        const carried = new DataTransfer();
        carried.items.add(new File([arguments[1]], arguments[0]));
        for (const kind of ['dragenter', 'dragover', 'drop']) {
          document.body.dispatchEvent(
            new DragEvent(kind, {dataTransfer: carried, bubbles: true, cancelable: true}));
        }
        """,
        name,
        text);
    actions++;
    return this;
  }

  /** Takes a file away from the page. */
  byte[] take(String name) {
    browser.await("document.querySelector('[data-file=\"" + name + "\"]')");
    click("[data-file='" + name + "']");
    return browser.downloaded(name);
  }

  /** What a command says on standard error. */
  static String refusal(String... command) {
    StringWriter err = new StringWriter();
    Main.run(command, new PrintWriter(new StringWriter()), new PrintWriter(err, true));
    return err.toString().strip();
  }

  /** A file that a command writes into a folder. */
  static byte[] written(Path into, String name, String... command) {
    StringWriter err = new StringWriter();
    int status = Main.run(command, new PrintWriter(new StringWriter()), new PrintWriter(err));
    if (status != 0) {
      throw new AssertionError(err.toString());
    }
    return bytes(into.resolve(name));
  }

  static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
