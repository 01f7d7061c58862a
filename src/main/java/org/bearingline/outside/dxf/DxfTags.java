package org.bearingline.outside.dxf;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.bearingline.outside.Quoted;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** The group codes and values of an ASCII DXF file, one after the other. */
final class DxfTags {

  /** As the DXF reference has it for the files from 2007 on, with room to spare. */
  private static final int LONGEST_LINE = 100_000;

  /** What the code pages of older files are most often; only names are spelt with it. */
  private static final Charset OLD = Charset.forName("windows-1252");

  private final String file;
  private final byte[] bytes;
  private int at;
  private int line;
  private DxfTag ahead;

  DxfTags(String file, byte[] bytes) {
    this.file = file;
    this.bytes = bytes;
    // A mark of UTF-8 before the first line.
    this.at =
        bytes.length >= 3
                && bytes[0] == (byte) 0xef
                && bytes[1] == (byte) 0xbb
                && bytes[2] == (byte) 0xbf
            ? 3
            : 0;
  }

  /** Where the reading stands. */
  Place place() {
    return Place.spot(file, Math.max(1, line), 1);
  }

  /** The next pair, comments left out; it stays the next one. */
  DxfTag peek() {
    if (ahead == null) {
      ahead = read();
    }
    return ahead;
  }

  /** The next pair, comments left out; a file that ends here is cut short. */
  DxfTag next() {
    DxfTag tag = peek();
    ahead = null;
    return tag;
  }

  private DxfTag read() {
    while (true) {
      int code = code(text());
      String value = text();
      if (code != 999) {
        return new DxfTag(code, value, place());
      }
    }
  }

  private int code(String text) {
    try {
      int code = Integer.parseInt(text);
      if (code >= -10 && code <= 1100) {
        return code;
      }
    } catch (NumberFormatException noCode) {
      // Refused below.
    }
    throw new Problem(
        place(),
        "a group code must stand here and not “"
            + Quoted.of(text)
            + "”; the file is damaged or no DXF");
  }

  private String text() {
    if (at >= bytes.length) {
      throw new Problem(
          place(), "the file is cut short: its end mark is missing; save the drawing again");
    }
    int from = at;
    while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
      at++;
    }
    int to = at;
    if (at + 1 < bytes.length && bytes[at] == '\r' && bytes[at + 1] == '\n') {
      at++;
    }
    at++;
    line++;
    if (to - from > LONGEST_LINE) {
      throw new Problem(place(), "the line is longer than any of a DXF; the file is damaged");
    }
    while (from < to && bytes[from] <= ' ' && bytes[from] >= 0) {
      from++;
    }
    while (from < to && bytes[to - 1] <= ' ' && bytes[to - 1] >= 0) {
      to--;
    }
    return decoded(from, to);
  }

  private String decoded(int from, int to) {
    boolean isAscii = true;
    for (int i = from; i < to; i++) {
      isAscii &= bytes[i] >= 0;
    }
    if (isAscii) {
      return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
    }
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(bytes, from, to - from))
          .toString();
    } catch (CharacterCodingException old) {
      return new String(bytes, from, to - from, OLD);
    }
  }
}
