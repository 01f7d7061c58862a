package org.bearingline.outside.scan;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The kinds of picture that are read, known by their first bytes and not by their name. */
public enum ImageKind {
  JPEG("jpeg"),
  PNG("png"),
  TIFF("tiff");

  private final String format;

  ImageKind(String format) {
    this.format = format;
  }

  /** The name under which the platform has its reader. */
  String format() {
    return format;
  }

  /** The kind that the first bytes of a file tell, if it is one of these. */
  public static Optional<ImageKind> of(byte[] start) {
    if (begins(start, 0xff, 0xd8, 0xff)) {
      return Optional.of(JPEG);
    }
    if (begins(start, 0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a)) {
      return Optional.of(PNG);
    }
    if (begins(start, 'I', 'I', 42, 0) || begins(start, 'M', 'M', 0, 42)) {
      return Optional.of(TIFF);
    }
    return Optional.empty();
  }

  /** What to say of a file that is none of these. */
  static String unread(byte[] start) {
    // ISO/IEC 14496-12, 4.3: a box "ftyp" comes first; its brand tells which kind.
    String brand = start.length < 12 ? "" : new String(start, 4, 8, StandardCharsets.ISO_8859_1);
    if (brand.matches("ftyp(heic|heix|hevc|mif1|msf1|avif)")) {
      return "is a HEIC or AVIF photo; let the phone or a program save it as JPEG";
    }
    return "is no PNG, JPEG or TIFF picture; save the scan as one";
  }

  private static boolean begins(byte[] start, int... bytes) {
    if (start.length < bytes.length) {
      return false;
    }
    for (int i = 0; i < bytes.length; i++) {
      if ((start[i] & 0xff) != bytes[i]) {
        return false;
      }
    }
    return true;
  }
}
