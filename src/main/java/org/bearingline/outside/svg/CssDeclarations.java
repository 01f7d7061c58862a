package org.bearingline.outside.svg;

import java.io.IOException;
import java.io.StringReader;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.batik.css.parser.DefaultDocumentHandler;
import org.apache.batik.css.parser.Parser;
import org.bearingline.problem.Problem;
import org.w3c.css.sac.CSSException;
import org.w3c.css.sac.DocumentHandler;
import org.w3c.css.sac.InputSource;
import org.w3c.css.sac.LexicalUnit;

/** Reads CSS by Batik's parser, which opens nothing. */
final class CssDeclarations {

  /** The parser descends into brackets; deeper ones than any style has would exhaust it. */
  private static final int DEEPEST_BRACKETS = 30;

  private CssDeclarations() {}

  /** What the attribute {@code style} declares: words in small letters, numbers as they are. */
  static Map<String, String> ofStyle(SvgElement element) {
    String text = element.attribute("style").orElse("");
    Map<String, String> declared = new HashMap<>();
    if (!text.isEmpty()) {
      parse(
          element,
          text,
          new DefaultDocumentHandler() {
            @Override
            public void property(String name, LexicalUnit value, boolean important) {
              declared.put(name.toLowerCase(Locale.ROOT), word(value));
            }
          },
          true);
    }
    return declared;
  }

  /** Hands the rules of a sheet to a handler. */
  static void ofSheet(SvgElement style, DocumentHandler handler) {
    parse(style, style.text().toString(), handler, false);
  }

  private static void parse(
      SvgElement element, String text, DocumentHandler handler, boolean isAttribute) {
    requireShallow(element, text);
    Parser parser = new Parser();
    parser.setDocumentHandler(handler);
    InputSource source = new InputSource(new StringReader(text));
    try {
      if (isAttribute) {
        parser.parseStyleDeclaration(source);
      } else {
        parser.parseStyleSheet(source);
      }
    } catch (IOException | CSSException broken) {
      throw new Problem(
          element.place(),
          "the style of this " + element.name() + " is no CSS; correct or remove it",
          broken);
    }
  }

  private static void requireShallow(SvgElement element, String text) {
    int depth = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '(' || c == '[' || c == '{') {
        depth++;
      } else if ((c == ')' || c == ']' || c == '}') && depth > 0) {
        depth--;
      }
      if (depth > DEEPEST_BRACKETS) {
        throw element.problem("brackets lie too deep in each other in this style; remove it");
      }
    }
  }

  /** A single word, number or colour; anything longer or other is told apart from the words. */
  static String word(LexicalUnit value) {
    if (value == null) {
      return "";
    }
    return switch (value.getLexicalUnitType()) {
      case LexicalUnit.SAC_IDENT -> value.getStringValue().toLowerCase(Locale.ROOT);
      case LexicalUnit.SAC_INHERIT -> "inherit";
      case LexicalUnit.SAC_INTEGER -> String.valueOf(value.getIntegerValue());
      case LexicalUnit.SAC_REAL -> value.getFloatValue() == 0 ? "0" : "a number";
      case LexicalUnit.SAC_PERCENTAGE -> value.getFloatValue() == 0 ? "0" : "a share";
      default -> "a value";
    };
  }
}
