package org.bearingline.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.bearingline.external.ExternalProgram;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A real browser without a window, with a folder of its own. A test that wants one where Chromium
 * is missing is skipped and says so; with {@code CI=true} it fails.
 */
final class ShopBrowser implements AutoCloseable {

  /**
   * How long a page is waited for: what does not come at all is told late, and nothing that a
   * loaded machine takes its time for is told for missing.
   */
  static final Duration PATIENCE = Duration.ofMinutes(2);

  private static final Path PICTURES = Path.of("target", "page-pictures");

  private static final ObjectMapper JSON = new ObjectMapper();

  private final ChromeDriver driver;
  private final Path folder;

  private ShopBrowser(ChromeDriver driver, Path folder) {
    this.driver = driver;
    this.folder = folder;
  }

  /** A browser whose page is so large, in CSS pixels. */
  static ShopBrowser sized(int width, int height) {
    return started(width, height, List.of());
  }

  /** The same for fingers: a coarse pointer that cannot hover. */
  static ShopBrowser touched(int width, int height) {
    return started(
        width,
        height,
        List.of(
            "--touch-events=enabled",
            "--blink-settings=primaryPointerType=2,availablePointerTypes=2,"
                + "primaryHoverType=1,availableHoverTypes=1"));
  }

  private static ShopBrowser started(int width, int height, List<String> more) {
    Path chromium = ExternalProgram.named("chromium").path();
    Path chromedriver = ExternalProgram.named("chromedriver").path();
    Logger.getLogger("org.openqa.selenium").setLevel(Level.SEVERE);
    try {
      Path folder = Files.createTempDirectory("bearingline-browser");
      ChromeOptions options = new ChromeOptions();
      options.setBinary(chromium.toString());
      options.addArguments(
          "--headless",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-dev-shm-usage",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--force-color-profile=srgb",
          "--lang=en-GB",
          "--window-size=" + width + "," + height,
          "--user-data-dir=" + folder.resolve("profile"));
      options.addArguments(more);
      options.setExperimentalOption(
          "prefs", Map.of("download.default_directory", folder.resolve("downloads").toString()));
      LoggingPreferences logs = new LoggingPreferences();
      logs.enable(LogType.PERFORMANCE, Level.ALL);
      logs.enable(LogType.BROWSER, Level.ALL);
      options.setCapability("goog:loggingPrefs", logs);
      ChromeDriverService service =
          new ChromeDriverService.Builder()
              .usingDriverExecutable(chromedriver.toFile())
              .usingAnyFreePort()
              .withSilent(true)
              .build();
      ChromeDriver driver = new ChromeDriver(service, options);
      ShopBrowser browser = new ShopBrowser(driver, folder);
      driver.manage().timeouts().scriptTimeout(PATIENCE);
      browser.fit(width, height);
      // The browser's own empty page is none of ours.
      browser.to("about:blank").requests();
      return browser;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The window's frame is no part of the page. */
  private void fit(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  ChromeDriver driver() {
    return driver;
  }

  /** Goes to an address. */
  ShopBrowser to(String address) {
    driver.get(address);
    return this;
  }

  /** The first element of a CSS selector, waited for. */
  WebElement find(String selector) {
    return new WebDriverWait(driver, PATIENCE).until(d -> d.findElement(By.cssSelector(selector)));
  }

  /** Waits until a script, a function's body, returns something true. */
  void await(String script) {
    new WebDriverWait(driver, PATIENCE)
        .until(d -> Boolean.TRUE.equals(driver.executeScript("return !!(" + script + ")")));
  }

  /** The addresses asked for since the last look, those of the page itself included. */
  List<String> requests() {
    List<String> asked = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
      JsonNode message = json(entry.getMessage()).path("message");
      if (message.path("method").asText().equals("Network.requestWillBeSent")) {
        asked.add(message.path("params").path("request").path("url").asText());
      }
    }
    return asked;
  }

  /** What the page complained of since the last look: errors and refused content. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.SEVERE.intValue())
        .map(LogEntry::getMessage)
        .toList();
  }

  /** Where the browser puts what is downloaded; made with the first. */
  Path downloads() {
    return folder.resolve("downloads");
  }

  /** A downloaded file, waited for until it is whole. */
  byte[] downloaded(String name) {
    Path file = downloads().resolve(name);
    new WebDriverWait(driver, PATIENCE).until(d -> Files.exists(file));
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Keeps a picture of the page in {@code target/page-pictures}. */
  Path picture(String name) {
    try {
      Files.createDirectories(PICTURES);
      Path file = PICTURES.resolve(name + ".png");
      return Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What axe-core finds of WCAG 2.2 A and AA that is serious or worse: rule and element. */
  List<String> barriers() {
    try (InputStream script =
        Objects.requireNonNull(ShopBrowser.class.getResourceAsStream("/axe.min.js"))) {
      driver.executeScript(new String(script.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Object said =
        driver.executeAsyncScript(
            """
            const done = arguments[arguments.length - 1];
            const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
            axe.run(document, {runOnly: {type: 'tag', values: tags}}).then(
              (found) => done(JSON.stringify(found.violations)),
              (failed) => done('failed: ' + failed));
            """);
    List<String> barriers = new ArrayList<>();
    for (JsonNode rule : json((String) said)) {
      String impact = rule.path("impact").asText();
      if (impact.equals("serious") || impact.equals("critical")) {
        for (JsonNode node : rule.path("nodes")) {
          barriers.add(
              rule.path("id").asText()
                  + ": "
                  + node.path("target")
                  + " "
                  + node.path("failureSummary").asText());
        }
      }
    }
    return barriers;
  }

  private static JsonNode json(String text) {
    try {
      return JSON.readTree(text);
    } catch (IOException e) {
      throw new UncheckedIOException(text, e);
    }
  }

  @Override
  public void close() {
    driver.quit();
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    } catch (IOException | UncheckedIOException left) {
      // A file of the browser that goes away at the same time; the folder is a temporary one.
    }
  }
}
