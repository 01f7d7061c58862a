package org.bearingline.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.export.font.Typeface;

/** Breaks text into lines at blanks, and within a word only where one is wider than the line. */
record TextFlow(Fonts fonts, Typeface face, double size) {

  /** The lines of {@code text} in {@code width} mm; an empty text has none. */
  List<String> lines(String text, double width) {
    List<String> lines = new ArrayList<>();
    double blank = face.width(" ", size);
    String line = "";
    double used = 0;
    for (String word : fonts.clean(face, text).strip().split(" +")) {
      double wide = face.width(word, size);
      if (!line.isEmpty() && used + blank + wide <= width) {
        line += " " + word;
        used += blank + wide;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      used = wide;
      while (used > width && line.codePointCount(0, line.length()) > 1) {
        int fits = fitting(line, width);
        lines.add(line.substring(0, fits));
        line = line.substring(fits);
        used = face.width(line, size);
      }
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }

  /** How many chars of a word that is too wide stand in {@code width}; one letter at least. */
  private int fitting(String word, double width) {
    int fits = word.offsetByCodePoints(0, 1);
    while (fits < word.length()) {
      int next = word.offsetByCodePoints(fits, 1);
      if (face.width(word.substring(0, next), size) > width) {
        break;
      }
      fits = next;
    }
    return fits;
  }

  double width(String line) {
    return fonts.width(face, size, line);
  }
}
