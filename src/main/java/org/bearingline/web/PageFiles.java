package org.bearingline.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page's own files, out of the program's jar; none of them holds anything of the maker's. */
final class PageFiles {

  private static final Pattern PLAIN = Pattern.compile("/page/([a-z0-9][a-z0-9-]*(\\.[a-z0-9]+)+)");

  /** The shipped font, in which the drawings' words were measured. */
  private static final Set<String> FONTS =
      Set.of("/font/OpenSans-Regular.ttf", "/font/OpenSans-Semibold.ttf");

  private PageFiles() {}

  /** The file at a path; empty where there is none. */
  static Optional<Answer> at(String path) {
    if (path.equals("/")) {
      return at("/page/index.html");
    }
    if (FONTS.contains(path)) {
      return read("/org/bearingline/export" + path, "font/ttf");
    }
    Matcher plain = PLAIN.matcher(path);
    return plain.matches()
        ? ContentTypes.of(path).flatMap(type -> read("page/" + plain.group(1), type))
        : Optional.empty();
  }

  private static Optional<Answer> read(String resource, String type) {
    try (InputStream file = PageFiles.class.getResourceAsStream(resource)) {
      return file == null ? Optional.empty() : Optional.of(Answer.bytes(type, file.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
