package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** That nobody but the page of this run is answered, and nothing but what the page asks. */
class ForeignRequestsTest extends WithServer {

  private static final String STATE =
      "{\"state\":{\"job\":{\"job\":\"t\",\"parts\":[{\"name\":\"rail\",\"shape\":\"straight-rail\"}]}},"
          + "\"part\":\"rail\"}";

  /** Sends lines as they are and gives all that comes back until the server closes. */
  private static String raw(String request) {
    try (Socket socket = new Socket("127.0.0.1", server.port())) {
      socket.setSoTimeout(120_000);
      OutputStream out = socket.getOutputStream();
      out.write(request.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
      out.flush();
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException cutOff) {
      return "";
    }
  }

  private static String draw(String... headers) {
    return raw(
        "POST /api/draw HTTP/1.1\nConnection: close\nContent-Type: application/json\nContent-Length: "
            + STATE.length()
            + "\n"
            + String.join("\n", headers)
            + "\n\n"
            + STATE);
  }

  private static String own() {
    return "Host: 127.0.0.1:" + server.port();
  }

  private static String token() {
    return "Authorization: Bearer " + server.token();
  }

  private static void assertStatus(int status, String response) {
    assertTrue(response.startsWith("HTTP/1.1 " + status + " "), response);
    if (status >= 400) {
      assertTrue(response.contains("{\"problem\":{\"sentence\":\""), response);
      assertFalse(response.contains("\"layers\""), response);
    }
  }

  @Test
  void thePagesOwnRequestIsAnswered() {
    assertStatus(200, draw(own(), token()));
    assertStatus(200, draw(own(), token(), "Origin: http://127.0.0.1:" + server.port()));
    assertStatus(200, draw(own(), token(), "Sec-Fetch-Site: same-origin"));
    assertStatus(
        200,
        draw(
            "Host: localhost:" + server.port(),
            token(),
            "Origin: http://localhost:" + server.port()));
  }

  @Test
  void aForeignHostIsRefused() {
    // A name of a foreign page made to lead to this machine is sent as the host.
    for (String host : List.of("evil.example", "evil.example:" + server.port(), "127.0.0.1")) {
      assertStatus(403, draw("Host: " + host, token()));
    }
    assertStatus(403, draw("Host: 127.0.0.1.evil.example:" + server.port(), token()));
    assertStatus(400, draw("Host: ", token()));
    assertStatus(400, draw(own(), own(), token()));
    assertStatus(400, draw(token()));
    assertStatus(
        400, raw("GET http://evil.example/ HTTP/1.1\n" + own() + "\nConnection: close\n\n"));
    assertStatus(403, raw("GET / HTTP/1.1\nHost: evil.example\nConnection: close\n\n"));
  }

  @Test
  void aForeignOriginIsRefused() {
    for (String origin :
        List.of(
            "http://evil.example",
            "https://127.0.0.1:" + server.port(),
            "http://127.0.0.1:" + (server.port() ^ 1),
            "http://localhost:" + server.port(),
            "null")) {
      assertStatus(403, draw(own(), token(), "Origin: " + origin));
    }
    for (String site : List.of("cross-site", "same-site")) {
      assertStatus(403, draw(own(), token(), "Sec-Fetch-Site: " + site));
      assertStatus(
          403,
          raw(
              "GET / HTTP/1.1\n"
                  + own()
                  + "\nSec-Fetch-Site: "
                  + site
                  + "\nConnection: close\n\n"));
    }
    assertStatus(
        403,
        draw(
            own(),
            token(),
            "Origin: http://127.0.0.1:" + server.port(),
            "Origin: http://evil.example"));
  }

  @Test
  void noPreflightLetsAForeignPageIn() {
    String asked =
        raw(
            "OPTIONS /api/draw HTTP/1.1\n"
                + own()
                + "\nOrigin: http://evil.example\nAccess-Control-Request-Method: POST\n"
                + "Access-Control-Request-Headers: authorization\nConnection: close\n\n");
    assertStatus(403, asked);
    assertFalse(asked.toLowerCase(java.util.Locale.ROOT).contains("access-control-allow"), asked);
  }

  @Test
  void withoutTheTokenNothingIsSaid() {
    assertStatus(401, draw(own()));
    for (String wrong : List.of("Bearer", "Bearer ", "Bearer x", "Basic " + server.token())) {
      assertStatus(401, draw(own(), "Authorization: " + wrong));
    }
    assertStatus(401, draw(own(), token() + "x"));
    // Not even which addresses there are.
    assertStatus(401, raw("GET /api/nothing HTTP/1.1\n" + own() + "\nConnection: close\n\n"));
    assertStatus(
        401,
        raw(
            "GET /api/shop?token="
                + server.token()
                + " HTTP/1.1\n"
                + own()
                + "\nConnection: close\n\n"));
  }

  @Test
  void anotherRunsTokenIsNoGood() {
    try (ShopServer other = ShopServer.start()) {
      assertFalse(other.token().equals(server.token()));
      assertEquals(32, other.token().length());
      assertStatus(401, draw(own(), "Authorization: Bearer " + other.token()));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/page/../SessionToken.class",
        "/page/..%2fSessionToken.class",
        "/page/%2e%2e/SessionToken.class",
        "/page/..\\SessionToken.class",
        "/page//etc/passwd",
        "/../../../../etc/passwd",
        "/page/index.html/..;/x",
        "/page/index.html%00.css",
        "/page/",
        "/page",
        "/page/.hidden.js",
        "/page/a/b.js",
        "/font/../page/index.html",
        "/api/../page/index.html",
        "/org/bearingline/web/page/index.html",
        "//evil.example/",
      })
  void pathsLeadNowhere(String path) {
    String answer =
        raw("GET " + path + " HTTP/1.1\n" + own() + "\n" + token() + "\nConnection: close\n\n");
    assertTrue(
        answer.startsWith("HTTP/1.1 404 ")
            || answer.startsWith("HTTP/1.1 400 ")
            || answer.startsWith("HTTP/1.1 403 "),
        answer);
    assertTrue(answer.contains("{\"problem\":"), answer);
    assertFalse(answer.contains("root:"), answer);
  }

  @Test
  void everyMethodButItsOwnIsRefused() {
    for (String method : List.of("GET", "PUT", "DELETE", "PATCH", "TRACE", "HEAD")) {
      HttpResponse<byte[]> answer =
          server.send(server.request("/api/draw").method(method, BodyPublishers.noBody()));
      assertEquals(405, answer.statusCode(), method);
      assertEquals("POST", answer.headers().firstValue("Allow").orElse(""), method);
    }
    assertEquals(405, server.ask("/api/shop", "{}").statusCode());
    assertEquals(405, server.ask("/", "{}").statusCode());
  }

  @Test
  void everyAnswerForbidsWhatThePageDoesNotNeed() {
    List<HttpResponse<byte[]>> answers =
        List.of(
            server.send(server.request("/")),
            server.send(server.request("/nothing")),
            server.send(server.request("/api/shop")),
            server.ask("/api/draw", STATE),
            server.ask("/api/draw", "nonsense"));
    for (HttpResponse<byte[]> answer : answers) {
      String policy = answer.headers().firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.startsWith("default-src 'none';"), policy);
      assertFalse(policy.contains("unsafe"), policy);
      assertFalse(policy.contains("http"), policy);
      assertEquals("nosniff", answer.headers().firstValue("X-Content-Type-Options").orElse(""));
      assertEquals("no-store", answer.headers().firstValue("Cache-Control").orElse(""));
      assertEquals("no-referrer", answer.headers().firstValue("Referrer-Policy").orElse(""));
      assertTrue(answer.headers().firstValue("Server").isEmpty());
      assertTrue(answer.headers().firstValue("Set-Cookie").isEmpty());
    }
  }

  @Test
  void onlyThisMachineIsListenedTo() throws IOException {
    for (NetworkInterface one : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress address : Collections.list(one.getInetAddresses())) {
        if (!address.isLoopbackAddress()) {
          try (Socket socket = new Socket()) {
            socket.connect(new java.net.InetSocketAddress(address, server.port()), 1000);
            assertFalse(socket.isConnected(), "listens on " + address);
          } catch (IOException refused) {
            // As it should be.
          }
        }
      }
    }
  }
}
