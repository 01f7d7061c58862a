package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** What is too large, too slow or not of the form the page sends is refused in words. */
class BadRequestsTest extends WithServer {

  private static void assertRefused(int status, HttpResponse<byte[]> answer) {
    assertEquals(status, answer.statusCode(), () -> new String(answer.body()));
    String sentence = ShopServer.json(answer).path("problem").path("sentence").asText();
    assertTrue(sentence.length() > 10, sentence);
  }

  @Test
  void whatIsNoJsonIsRefused() {
    for (String body :
        List.of(
            "", "{", "nonsense", "[]", "{} {}", "{\"a\":1,\"a\":2}", "\"x\"", "{\"state\":NaN}")) {
      assertRefused(400, server.ask("/api/draw", body));
    }
    assertRefused(400, server.ask("/api/draw", "{\"state\":{}}"));
    assertRefused(400, server.ask("/api/draw", "{\"state\":{\"job\":[]}}"));
    assertRefused(
        400, server.ask("/api/draw", "{\"state\":{\"job\":{},\"files\":{\"a.yaml\":5}}}"));
  }

  @Test
  void deepJsonIsRefused() {
    int deep = 100_000;
    String body = "{\"state\":" + "[".repeat(deep) + "]".repeat(deep) + "}";
    assertRefused(400, server.ask("/api/draw", body));
    String objects = "{\"state\":" + "{\"a\":".repeat(60) + "1" + "}".repeat(61);
    assertRefused(400, server.ask("/api/draw", objects));
  }

  @Test
  void whatIsTooLargeIsRefusedBeforeItIsRead() {
    byte[] large = new byte[2_000_001];
    assertRefused(
        413,
        server.send(
            server
                .request("/api/draw")
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofByteArray(large))));
    assertRefused(413, server.hand("/api/open", "big.yaml", new byte[8_000_001]));
    // Said to be short, and endless.
    assertRefused(
        411,
        server.send(
            server
                .request("/api/draw")
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(new byte[9])))));
  }

  @Test
  void longHeadersAreRefused() {
    HttpResponse<byte[]> answer =
        server.send(server.request("/api/shop").header("X-Long", "x".repeat(20_000)));
    assertEquals(431, answer.statusCode());
  }

  @Test
  void anotherKindOfContentIsRefused() {
    // A form of a foreign page could be sent without asking; it can never be of this kind.
    for (String type : List.of("text/plain", "application/x-www-form-urlencoded", "")) {
      assertRefused(
          415,
          server.send(
              (type.isEmpty()
                      ? server.request("/api/draw")
                      : server.request("/api/draw").header("Content-Type", type))
                  .POST(BodyPublishers.ofString("{}"))));
    }
  }

  @Test
  void pathsInNamesAreRefused() {
    for (String name :
        List.of(
            "../kit.yaml",
            "/etc/passwd",
            "a/b.yaml",
            "kit",
            "kit.yml",
            ".yaml",
            "job.yaml",
            "A.yaml")) {
      HttpResponse<byte[]> answer =
          server.ask(
              "/api/draw",
              "{\"part\":\"a\",\"state\":{\"job\":{\"parts\":[]},\"files\":{\""
                  + name
                  + "\":\"x\"}}}");
      assertRefused(422, answer);
      assertTrue(new String(answer.body()).contains("cannot name a file"), name);
    }
    for (String shape : List.of("/etc/passwd", "../../shapes/oval-top.yaml", "C:\\\\x.yaml")) {
      HttpResponse<byte[]> answer =
          server.ask(
              "/api/draw",
              "{\"part\":\"a\",\"state\":{\"job\":{\"parts\":[{\"name\":\"a\",\"shape\":\""
                  + shape
                  + "\"}]}}}");
      assertRefused(422, answer);
      assertTrue(new String(answer.body()).contains("did not come with it"), shape);
    }
    HttpResponse<byte[]> kit =
        server.ask(
            "/api/draw",
            "{\"part\":\"a\",\"state\":{\"job\":{\"kit\":\"/etc/passwd\",\"parts\":[{\"name\":\"a\","
                + "\"shape\":\"oval-top\"}]}}}");
    assertRefused(422, kit);
    HttpResponse<byte[]> file =
        server.ask(
            "/api/file",
            "{\"name\":\"a/../../etc/passwd\",\"state\":{\"job\":{\"parts\":[{\"name\":\"a\","
                + "\"shape\":\"straight-rail\"}]}}}");
    assertRefused(422, file);
  }

  @Test
  void mistakesAreToldAtTheirField() {
    HttpResponse<byte[]> range =
        server.ask(
            "/api/draw",
            "{\"part\":\"b\",\"state\":{\"job\":{\"job\":\"t\",\"parts\":[{\"name\":\"a\",\"shape\":"
                + "\"straight-rail\"},{\"name\":\"b\",\"shape\":\"cloud-lift-rail\",\"measures\":{"
                + "\"rise\":\"20in\"}}]}}}");
    assertRefused(422, range);
    JsonNode problem = ShopServer.json(range).path("problem");
    assertEquals("/parts/1/measures/rise", problem.path("field").asText());
    assertEquals(
        "20in is outside the range of this measure, 1/8in to 3in",
        problem.path("sentence").asText());
    assertTrue(problem.path("spoken").asText().startsWith("job.yaml:"), problem.toString());
    assertEquals("b", problem.path("part").asText());

    HttpResponse<byte[]> bit =
        server.ask(
            "/api/draw",
            "{\"part\":\"a\",\"state\":{\"job\":{\"parts\":[{\"name\":\"a\",\"shape\":"
                + "\"straight-rail\",\"bit\":\"wide\"}]}}}");
    assertRefused(422, bit);
    assertEquals("/parts/0/bit", ShopServer.json(bit).path("problem").path("field").asText());

    HttpResponse<byte[]> paper =
        server.ask(
            "/api/pages",
            "{\"part\":\"a\",\"state\":{\"job\":{\"paper\":\"A9\",\"parts\":[{\"name\":\"a\",\"shape\":"
                + "\"straight-rail\"}]}}}");
    assertRefused(422, paper);
    assertEquals("/paper", ShopServer.json(paper).path("problem").path("field").asText());
  }

  @Test
  void aSlowSenderIsCutOff() throws IOException {
    try (Socket head = new Socket("127.0.0.1", server.port());
        Socket body = new Socket("127.0.0.1", server.port())) {
      OutputStream out = body.getOutputStream();
      out.write(
          ("POST /api/draw HTTP/1.1\r\nHost: 127.0.0.1:"
                  + server.port()
                  + "\r\nAuthorization: Bearer "
                  + server.token()
                  + "\r\nContent-Type: application/json\r\nContent-Length: 100000\r\n\r\n")
              .getBytes(StandardCharsets.US_ASCII));
      assertCutOff(head, "GET / HTTP/1.1\r\n" + "X-Slow: x\r\n".repeat(1000));
      assertCutOff(body, " ".repeat(1000));
    }
    // The others were served meanwhile.
    assertEquals(200, server.send(server.request("/api/shop")).statusCode());
  }

  /** Sends a letter now and then; the server must end it long before the request is whole. */
  private static void assertCutOff(Socket socket, String slowly) throws IOException {
    socket.setSoTimeout(200);
    InputStream in = socket.getInputStream();
    long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(3);
    for (int i = 0; System.nanoTime() < end; i++) {
      try {
        socket.getOutputStream().write(slowly.charAt(i % slowly.length()));
        if (in.read(new byte[10_000]) < 0) {
          return;
        }
      } catch (SocketTimeoutException goesOn) {
        continue;
      } catch (IOException closed) {
        return;
      }
    }
    throw new AssertionError("a slow sender may go on for three minutes");
  }
}
