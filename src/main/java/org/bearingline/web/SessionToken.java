package org.bearingline.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * What a request must bring to be answered. It stands in the address that is printed, behind the #,
 * which a browser keeps to itself, and comes back in a header that no other page can send.
 */
final class SessionToken {

  /** 192 bits: not to be guessed. */
  private static final int BYTES = 24;

  private static final String SCHEME = "Bearer ";

  private final String text;

  private SessionToken(String text) {
    this.text = text;
  }

  /** A new one for each run. */
  static SessionToken random() {
    byte[] bytes = new byte[BYTES];
    new SecureRandom().nextBytes(bytes);
    return new SessionToken(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
  }

  String text() {
    return text;
  }

  /** Whether an {@code Authorization} header brings it; null is no header. */
  boolean isIn(String header) {
    // Compared in a time that tells nothing of where it differs.
    return header != null
        && header.startsWith(SCHEME)
        && MessageDigest.isEqual(
            header.substring(SCHEME.length()).getBytes(StandardCharsets.UTF_8),
            text.getBytes(StandardCharsets.UTF_8));
  }
}
