package org.bearingline.web;

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

  /** Works out an answer. */
  @FunctionalInterface
  interface Work {

    /**
     * @param body of the request
     * @param fileName that the request tells; empty where none
     */
    Answer answer(byte[] body, String fileName);
  }
}
