package org.bearingline.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A server of the page under test, with a client that asks as the page does. */
final class ShopServer implements AutoCloseable {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final PageServer server;
  private final HttpClient client = HttpClient.newHttpClient();
  private final List<Throwable> defects;

  private ShopServer(PageServer server, List<Throwable> defects) {
    this.server = server;
    this.defects = defects;
  }

  static ShopServer start() {
    List<Throwable> defects = new CopyOnWriteArrayList<>();
    return new ShopServer(PageServer.start(0, defects::add), defects);
  }

  /** For a server of which no defect is expected. */
  static void fail(Throwable defect) {
    throw new AssertionError("the server met a defect", defect);
  }

  String address() {
    return server.address();
  }

  /** Scheme, host and port. */
  String origin() {
    return address().substring(0, address().indexOf("/#"));
  }

  int port() {
    return URI.create(origin()).getPort();
  }

  String token() {
    return address().substring(address().indexOf('=') + 1);
  }

  /** A request with the token. */
  HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(origin() + path))
        .header("Authorization", "Bearer " + token());
  }

  HttpResponse<byte[]> send(HttpRequest.Builder request) {
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  /** Asks as the page does. */
  HttpResponse<byte[]> ask(String path, String json) {
    return send(
        request(path)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(json)));
  }

  /** Hands a file over as the page does. */
  HttpResponse<byte[]> hand(String path, String name, byte[] content) {
    return send(
        request(path)
            .header("Content-Type", "application/octet-stream")
            .header("X-File-Name", name)
            .POST(HttpRequest.BodyPublishers.ofByteArray(content)));
  }

  static JsonNode json(HttpResponse<byte[]> response) {
    try {
      return JSON.readTree(response.body());
    } catch (IOException e) {
      throw new UncheckedIOException(new String(response.body()), e);
    }
  }

  /** Defects that the server met. */
  List<Throwable> defects() {
    return defects;
  }

  @Override
  public void close() {
    server.close();
  }
}
