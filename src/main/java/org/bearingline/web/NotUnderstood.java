package org.bearingline.web;

/** A request that is not of the form the page sends. */
final class NotUnderstood extends RuntimeException {

  private static final long serialVersionUID = 1L;

  NotUnderstood(String sentence) {
    super(sentence);
  }
}
