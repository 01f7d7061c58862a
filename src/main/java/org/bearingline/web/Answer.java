package org.bearingline.web;

import java.util.HashMap;
import java.util.Map;

/**
 * An answer to a request.
 *
 * @param status of HTTP
 * @param type of the content
 * @param content the body
 * @param headers further ones
 */
record Answer(int status, String type, byte[] content, Map<String, String> headers) {

  static final String JSON = "application/json";

  Answer {
    headers = Map.copyOf(headers);
  }

  static Answer json(Object value) {
    return new Answer(200, JSON, Json.write(value), Map.of());
  }

  static Answer bytes(String type, byte[] content) {
    return new Answer(200, type, content, Map.of());
  }

  /** The same with one more header. */
  Answer with(String name, String value) {
    Map<String, String> more = new HashMap<>(headers);
    more.put(name, value);
    return new Answer(status, type, content, more);
  }
}
