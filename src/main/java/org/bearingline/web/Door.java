package org.bearingline.web;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;

/**
 * Says which requests come from the page itself. Other pages in the same browser can send requests
 * here too, and a name of theirs can be made to lead to this machine; the headers a browser sends
 * tell them apart.
 */
final class Door {

  /** Sent with every answer. */
  static final Map<String, String> HEADERS =
      Map.of(
          "Content-Security-Policy",
          "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:;"
              + " font-src 'self'; connect-src 'self'; manifest-src 'self'; frame-src blob:;"
              + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
          "X-Content-Type-Options",
          "nosniff",
          "Cache-Control",
          "no-store",
          "Referrer-Policy",
          "no-referrer",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cross-Origin-Resource-Policy",
          "same-origin",
          "X-Frame-Options",
          "DENY");

  private static final Set<String> OWN_SITES = Set.of("same-origin", "none");

  private static final int FOREIGN = 403;

  private final Set<String> hosts;

  /**
   * @param port on which the server listens
   */
  Door(int port) {
    this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
  }

  /** A refusal, or nothing where the request may pass. */
  Optional<Answer> refusal(Request request) {
    HttpFields headers = request.getHeaders();
    String host = headers.get(HttpHeader.HOST);
    if (host == null
        || !hosts.contains(host)
        || !host.equals(request.getHttpURI().getAuthority())) {
      return foreign("for another machine's name");
    }
    String origin = only(headers, HttpHeader.ORIGIN.asString());
    if (origin != null && !origin.equals("http://" + host)) {
      return foreign("from another page");
    }
    String site = only(headers, "Sec-Fetch-Site");
    if (site != null && !OWN_SITES.contains(site)) {
      return foreign("from another page");
    }
    return Optional.empty();
  }

  /** The one header of that name; several are as foreign as a wrong one. */
  private static String only(HttpFields headers, String name) {
    String value = null;
    for (HttpField field : headers) {
      if (field.is(name)) {
        value = value == null ? field.getValue() : "several";
      }
    }
    return value == null ? null : value.strip();
  }

  private static Optional<Answer> foreign(String whence) {
    return Optional.of(
        Refusal.of(
            FOREIGN,
            "this request is " + whence + "; open the address that bearingline page printed"));
  }
}
