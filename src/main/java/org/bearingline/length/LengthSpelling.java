package org.bearingline.length;

import java.text.Normalizer;
import java.util.Locale;

/** Brings the marks and fraction signs that keyboards and word processors make to plain ASCII. */
final class LengthSpelling {

  private static final char FRACTION_SLASH = '\u2044';

  private LengthSpelling() {}

  /** The text in lower case, with plain marks, plain digits and one space at most in a row. */
  static String plain(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> out.append(plain(c)));
    return out.toString().replace("''", "\"").replaceAll("\\s+", " ").strip();
  }

  private static String plain(int codePoint) {
    if (codePoint < 128) {
      // Nothing to fold, and no tables of Unicode to load for it.
      return Character.toString(Character.toLowerCase(codePoint));
    }
    switch (codePoint) {
      case '\u2033', '\u201c', '\u201d', '\u02ba':
        return "\"";
      case '\u2032', '\u2018', '\u2019', '\u02b9':
        return "'";
      case '\u2010', '\u2011', '\u2012', '\u2013', '\u2212':
        return "-";
      case FRACTION_SLASH:
        return "/";
      default:
        String folded = Normalizer.normalize(Character.toString(codePoint), Normalizer.Form.NFKD);
        if (folded.indexOf(FRACTION_SLASH) > 0) {
          // A space keeps "1½" from reading as 11/2.
          return " " + folded.replace(FRACTION_SLASH, '/');
        }
        return folded.toLowerCase(Locale.ROOT);
    }
  }
}
