package org.bearingline.export.dxf;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.bearingline.outline.Point;

/**
 * The tags of a DXF file: a group code on one line, its value on the next. Handles are counted up
 * from 1, so the same drawing gives the same file.
 */
final class DxfTags {

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

  /** Words: the file is plain ASCII, other letters are written by their code point. */
  DxfTags words(int code, String words) {
    StringBuilder safe = new StringBuilder();
    for (int c : words.codePoints().toArray()) {
      if (c == '^') {
        safe.append("^ ");
      } else if (c >= ' ' && c < 0x7f) {
        safe.append((char) c);
      } else if (Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE) {
        safe.append(' ');
      } else if (Character.isBmpCodePoint(c)) {
        safe.append(String.format(Locale.ROOT, "\\U+%04X", c));
      } else {
        safe.append('?');
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
    return text.toString().getBytes(StandardCharsets.US_ASCII);
  }

  DxfTags append(DxfTags other) {
    text.append(other.text);
    return this;
  }

  private static String hex(int handle) {
    return Integer.toHexString(handle).toUpperCase(Locale.ROOT);
  }
}
