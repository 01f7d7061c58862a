package org.bearingline.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bearingline.export.font.Typeface;

/** The page's own files, out of the program's jar; none of them holds anything of the maker's. */
final class PageFiles {

  private static final Pattern PLAIN = Pattern.compile("/page/([a-z0-9][a-z0-9-]*(\\.[a-z0-9]+)+)");

  private static final Map<String, Typeface> FONTS =
      Map.of(
          "/font/OpenSans-Regular.ttf", Typeface.REGULAR,
          "/font/OpenSans-Semibold.ttf", Typeface.SEMIBOLD);

  private PageFiles() {}

  /** The file at a path; empty where there is none. */
  static Optional<Answer> at(String path) {
    if (path.equals("/")) {
      return at("/page/index.html");
    }
    Typeface font = FONTS.get(path);
    if (font != null) {
      return read(font.open(), "font/ttf");
    }
    Matcher plain = PLAIN.matcher(path);
    return plain.matches()
        ? ContentTypes.of(plain.group(1))
            .flatMap(
                type -> read(PageFiles.class.getResourceAsStream("page/" + plain.group(1)), type))
        : Optional.empty();
  }

  private static Optional<Answer> read(InputStream file, String type) {
    if (file == null) {
      return Optional.empty();
    }
    try (file) {
      return Optional.of(Answer.bytes(type, file.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
