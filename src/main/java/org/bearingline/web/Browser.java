package org.bearingline.web;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Asks the system to open an address in the maker's browser. */
public final class Browser {

  /** Milliseconds after which an opener that still runs is believed to be at work. */
  private static final long WAIT = 3000;

  private Browser() {}

  /**
   * Opens an address.
   *
   * @return whether an opener took it; never fails
   */
  public static boolean open(String address) {
    for (List<String> command : openers(System.getProperty("os.name").toLowerCase(Locale.ROOT))) {
      if (run(command, address)) {
        return true;
      }
    }
    return false;
  }

  static List<List<String>> openers(String system) {
    if (system.startsWith("windows")) {
      return List.of(List.of("rundll32", "url.dll,FileProtocolHandler"));
    }
    if (system.startsWith("mac")) {
      return List.of(List.of("open"));
    }
    return List.of(
        List.of("xdg-open"),
        List.of("gio", "open"),
        List.of("sensible-browser"),
        List.of("wslview"));
  }

  private static boolean run(List<String> command, String address) {
    try {
      Process process =
          new ProcessBuilder(withAddress(command, address))
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      return !process.waitFor(WAIT, TimeUnit.MILLISECONDS) || process.exitValue() == 0;
    } catch (IOException missing) {
      return false;
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      return true;
    }
  }

  private static List<String> withAddress(List<String> command, String address) {
    return Stream.concat(command.stream(), Stream.of(address)).toList();
  }
}
