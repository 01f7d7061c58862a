package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;

/**
 * A browser asks several questions on one connection. A server that ends one must say so in the
 * answer before (RFC 9112, 9.6), or the next question is lost on its way.
 */
class KeptConnectionsTest extends WithServer {

  private static final int OFTEN = 50;

  private static HttpRequest.BodyPublisher unknownLength(int bytes) {
    return BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(new byte[bytes]));
  }

  private HttpResponse<byte[]> post(String path, String type, HttpRequest.BodyPublisher body) {
    return server.send(server.request(path).header("Content-Type", type).POST(body));
  }

  private void nextIsHeard() {
    assertEquals(400, server.ask("/api/draw", "{").statusCode());
  }

  @Test
  void afterOneThatDoesNotTellItsLength() {
    for (int i = 0; i < OFTEN; i++) {
      assertEquals(411, post("/api/draw", "application/json", unknownLength(300_000)).statusCode());
      nextIsHeard();
    }
  }

  @Test
  void afterOneOfAnotherKindOrToAnotherPlace() {
    for (int i = 0; i < OFTEN; i++) {
      byte[] body = new byte[300_000];
      assertEquals(
          415, post("/api/draw", "text/plain", BodyPublishers.ofByteArray(body)).statusCode());
      nextIsHeard();
      assertEquals(
          404, post("/api/none", "text/plain", BodyPublishers.ofByteArray(body)).statusCode());
      nextIsHeard();
      assertEquals(404, post("/api/none", "text/plain", unknownLength(300_000)).statusCode());
      nextIsHeard();
    }
  }

  @Test
  void afterOneToAFile() {
    for (int i = 0; i < OFTEN; i++) {
      HttpResponse<byte[]> answer =
          post("/index.html", "text/plain", BodyPublishers.ofByteArray(new byte[10]));
      assertEquals(405, answer.statusCode());
      assertEquals("close", answer.headers().firstValue("Connection").orElse(""));
      nextIsHeard();
    }
  }
}
