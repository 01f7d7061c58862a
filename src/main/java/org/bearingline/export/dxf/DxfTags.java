package org.bearingline.export.dxf;

import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Locale;
import org.bearingline.outline.Point;

/**
 * The tags of a DXF file: a group code on one line, its value on the next. Handles are counted up
 * from 1, so the same drawing gives the same file.
 */
final class DxfTags {

  /** The page named ANSI_1252 in the header. */
  private static final Charset CODE_PAGE = Charset.forName("windows-1252");

  private final StringBuilder text = new StringBuilder();
  private int lastHandle;

  /** A new handle, in hexadecimal. */
  String handle() {
    return hex(++lastHandle);
  }

  /** A handle higher than all given out. */
  String nextHandle() {
    return hex(lastHandle + 1);
  }

  DxfTags tag(int code, String value) {
    text.append(code).append('\n').append(value).append('\n');
    return this;
  }

  DxfTags tag(int code, int value) {
    return tag(code, Integer.toString(value));
  }

  /** All digits of the number, so that a reader gets the same double back. */
  DxfTags tag(int code, double value) {
    BigDecimal number = BigDecimal.valueOf(value).stripTrailingZeros();
    String plain = number.signum() == 0 ? "0" : number.toPlainString();
    return tag(code, plain.indexOf('.') < 0 ? plain + ".0" : plain);
  }

  /** A point in the plane: x under {@code code}, y under {@code code} + 10. */
  DxfTags point(int code, double x, double y) {
    return tag(code, x).tag(code + 10, y);
  }

  /** A point in space on the drawing's plane. */
  DxfTags spot(int code, double x, double y) {
    return point(code, x, y).tag(code + 20, 0.0);
  }

  DxfTags spot(int code, Point p) {
    return spot(code, p.x(), p.y());
  }

  /**
   * Words, in the letters of the code page that the header names. Signs it lacks are written by
   * their nearest ones there or, failing that, by their code point in AutoCAD's notation, which not
   * every reader knows.
   */
  DxfTags words(int code, String words) {
    StringBuilder safe = new StringBuilder();
    CharsetEncoder letters = CODE_PAGE.newEncoder();
    for (char c : words.toCharArray()) {
      switch (c) {
        case '^' -> safe.append("^ ");
        case '″' -> safe.append('"');
        case '′' -> safe.append('\'');
        case '≈' -> safe.append('~');
        default -> {
          if (Character.isISOControl(c) || Character.isSurrogate(c)) {
            safe.append(' ');
          } else if (letters.canEncode(c)) {
            safe.append(c);
          } else {
            safe.append(String.format(Locale.ROOT, "\\U+%04X", (int) c));
          }
        }
      }
    }
    return tag(code, safe.toString());
  }

  DxfTags section(String name) {
    return tag(0, "SECTION").tag(2, name);
  }

  DxfTags endSection() {
    return tag(0, "ENDSEC");
  }

  byte[] bytes() {
    return text.toString().getBytes(CODE_PAGE);
  }

  DxfTags append(DxfTags other) {
    text.append(other.text);
    return this;
  }

  private static String hex(int handle) {
    return Integer.toHexString(handle).toUpperCase(Locale.ROOT);
  }
}
