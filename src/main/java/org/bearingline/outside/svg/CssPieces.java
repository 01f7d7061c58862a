package org.bearingline.outside.svg;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes CSS apart into its outermost rules or declarations (CSS 2.1, section 4.1), without reading
 * them, so that one which the parser does not know costs none of the others.
 */
final class CssPieces {

  /** More than any drawing has. */
  private static final int MOST = 10_000;

  private final String text;
  private final List<String> pieces = new ArrayList<>();
  private int begun;
  private int at;
  private int depth;

  private CssPieces(String text) {
    this.text = text;
  }

  /**
   * The pieces in their order, with the brace or semicolon that ends each.
   *
   * @param element whose style it is, for messages
   */
  static List<String> of(String text, SvgElement element) {
    CssPieces work = new CssPieces(text);
    while (work.at < text.length()) {
      work.step();
      if (work.pieces.size() > MOST) {
        throw element.problem("a style has more than 10,000 rules here; save it as plain SVG");
      }
    }
    work.end();
    return work.pieces;
  }

  private void step() {
    char c = text.charAt(at);
    if (c == '\\') {
      at += 2;
    } else if (text.startsWith("/*", at)) {
      skipPast("*/", at + 2);
    } else if (c == '"' || c == '\'') {
      skipString(c);
    } else {
      at++;
      if (c == '(' || c == '[' || c == '{') {
        depth++;
      } else if (c == ')' || c == ']' || c == '}') {
        depth = Math.max(0, depth - 1);
      }
      if (depth == 0 && (c == '}' || c == ';')) {
        end();
      }
    }
  }

  private void skipPast(String mark, int from) {
    int found = text.indexOf(mark, from);
    at = found < 0 ? text.length() : found + mark.length();
  }

  /** A string ends at its quote, or with its line where that is missing. */
  private void skipString(char quote) {
    at++;
    while (at < text.length() && text.charAt(at) != quote && text.charAt(at) != '\n') {
      at += text.charAt(at) == '\\' ? 2 : 1;
    }
    at++;
  }

  private void end() {
    at = Math.min(at, text.length());
    String piece = text.substring(begun, at);
    if (!piece.isBlank()) {
      pieces.add(piece);
    }
    begun = at;
  }
}
