package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.bearingline.cli.Main;
import org.junit.jupiter.api.Test;

/** The command in a process of its own: its first line, its port, its end and its return. */
class PageCommandTest {

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private record Running(Process process, BufferedReader out, String address)
      implements AutoCloseable {

    static Running start(String... options) throws IOException {
      List<String> line =
          new ArrayList<>(
              List.of(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-Djava.awt.headless=true",
                  "-cp",
                  System.getProperty("java.class.path"),
                  Main.class.getName(),
                  "page",
                  "--no-open"));
      line.addAll(List.of(options));
      Process process =
          new ProcessBuilder(line).redirectError(ProcessBuilder.Redirect.INHERIT).start();
      BufferedReader out =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
      return new Running(process, out, out.readLine());
    }

    String origin() {
      return address.substring(0, address.indexOf("/#"));
    }

    String token() {
      return address.substring(address.indexOf('=') + 1);
    }

    int status(String token) throws IOException, InterruptedException {
      HttpRequest request =
          HttpRequest.newBuilder(URI.create(origin() + "/api/shop"))
              .header("Authorization", "Bearer " + token)
              .build();
      return CLIENT.send(request, HttpResponse.BodyHandlers.discarding()).statusCode();
    }

    @Override
    public void close() {
      process.destroyForcibly();
    }
  }

  private static String refusal(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    assertEquals(2, Main.run(args, new PrintWriter(out), new PrintWriter(err)));
    assertEquals("", out.toString());
    return err.toString().strip();
  }

  @Test
  void theFirstLineIsTheAddressWithItsToken() throws IOException, InterruptedException {
    try (Running page = Running.start()) {
      assertTrue(
          page.address().matches("http://127\\.0\\.0\\.1:[0-9]+/#token=[A-Za-z0-9_-]{32}"),
          page.address());
      assertEquals(200, page.status(page.token()));
      // Ctrl-C: the same signal as this.
      page.process().destroy();
      assertTrue(page.process().waitFor(2, TimeUnit.MINUTES), "it does not end");
    }
  }

  @Test
  void killedAndStartedAnewItHasAnotherToken() throws IOException, InterruptedException {
    String port;
    String old;
    try (Running page = Running.start()) {
      port = String.valueOf(URI.create(page.origin()).getPort());
      old = page.token();
      page.process().destroyForcibly().waitFor();
      try {
        page.status(old);
        throw new AssertionError("it still answers");
      } catch (ConnectException gone) {
        assertFalse(page.process().isAlive());
      }
    }
    try (Running again = Running.start("--port", port)) {
      assertEquals("http://127.0.0.1:" + port, again.origin());
      assertEquals(401, again.status(old));
      assertEquals(200, again.status(again.token()));
      assertEquals(
          "bearingline: --port: port "
              + port
              + " is in use or not yours to take; choose another, or leave it out",
          refusal("page", "--no-open", "--port", port));
    }
  }

  @Test
  void aPortThatIsNoneIsRefused() {
    for (String port : List.of("0", "-1", "70000", "web", "")) {
      String said = refusal("page", "--no-open", "--port", port);
      assertTrue(said.startsWith("bearingline: --port: "), said);
    }
  }

  @Test
  void everySystemHasAnOpener() {
    for (String system : List.of("linux", "mac os x", "windows 11", "freebsd")) {
      assertFalse(Browser.openers(system).isEmpty(), system);
    }
    assertEquals(List.of("open"), Browser.openers("mac os x").get(0));
    assertEquals("rundll32", Browser.openers("windows 11").get(0).get(0));
    assertEquals(List.of("xdg-open"), Browser.openers("linux").get(0));
  }
}
