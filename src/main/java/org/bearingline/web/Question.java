package org.bearingline.web;

import java.util.Map;

/**
 * A question that the page may ask.
 *
 * @param method of HTTP
 * @param bodyType content type of the request's body; empty for none
 * @param largest bytes of the body
 * @param patience milliseconds that working it out may take
 * @param work makes the answer
 */
record Question(String method, String bodyType, int largest, long patience, Work work) {

  /**
   * What came with a request.
   *
   * @param body its content
   * @param fileName that its sender tells
   * @param said by name in the address behind the question mark
   */
  record Sent(byte[] body, String fileName, Map<String, String> said) {}

  /** Works out an answer. */
  @FunctionalInterface
  interface Work {

    /** The answer to what was sent. */
    Answer answer(Sent sent);
  }
}
