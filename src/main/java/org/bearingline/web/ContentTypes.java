package org.bearingline.web;

import java.util.Map;
import java.util.Optional;

/** What a file is, by its ending. */
final class ContentTypes {

  private static final Map<String, String> TYPES =
      Map.ofEntries(
          Map.entry("html", "text/html; charset=utf-8"),
          Map.entry("css", "text/css; charset=utf-8"),
          Map.entry("js", "text/javascript; charset=utf-8"),
          Map.entry("mjs", "text/javascript; charset=utf-8"),
          Map.entry("json", "application/json"),
          Map.entry("webmanifest", "application/manifest+json"),
          Map.entry("svg", "image/svg+xml"),
          Map.entry("png", "image/png"),
          Map.entry("webp", "image/webp"),
          Map.entry("ico", "image/x-icon"),
          Map.entry("ttf", "font/ttf"),
          Map.entry("woff2", "font/woff2"),
          Map.entry("pdf", "application/pdf"),
          Map.entry("dxf", "image/vnd.dxf"),
          Map.entry("zip", "application/zip"));

  private ContentTypes() {}

  /** The type of a file's content; empty for an unknown ending. */
  static Optional<String> of(String fileName) {
    return Optional.ofNullable(TYPES.get(fileName.substring(fileName.lastIndexOf('.') + 1)));
  }
}
