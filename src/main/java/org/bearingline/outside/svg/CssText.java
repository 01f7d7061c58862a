package org.bearingline.outside.svg;

import java.io.IOException;
import java.io.StringReader;
import org.apache.batik.css.parser.Parser;
import org.bearingline.problem.Problem;
import org.w3c.css.sac.CSSException;
import org.w3c.css.sac.CSSParseException;
import org.w3c.css.sac.DocumentHandler;
import org.w3c.css.sac.ErrorHandler;
import org.w3c.css.sac.InputSource;

/** Hands CSS to Batik's parser, which opens nothing. */
final class CssText {

  /** The parser descends into brackets; deeper ones than any style has would exhaust it. */
  private static final int DEEPEST_BRACKETS = 30;

  private CssText() {}

  /** Whether all of a style sheet could be read; where not, what follows may be missing. */
  static boolean isSheet(SvgElement element, String text, DocumentHandler handler) {
    return isRead(element, text, handler, false);
  }

  /** The same for the declarations of an attribute {@code style}. */
  static boolean isDeclarations(SvgElement element, String text, DocumentHandler handler) {
    return isRead(element, text, handler, true);
  }

  private static boolean isRead(
      SvgElement element, String text, DocumentHandler handler, boolean isAttribute) {
    requireShallow(element, text);
    Parser parser = new Parser();
    Mistakes mistakes = new Mistakes();
    parser.setDocumentHandler(handler);
    parser.setErrorHandler(mistakes);
    InputSource source = new InputSource(new StringReader(text));
    try {
      if (isAttribute) {
        parser.parseStyleDeclaration(source);
      } else {
        parser.parseStyleSheet(source);
      }
    } catch (NumberFormatException noNumber) {
      return false; // Batik's parser takes a sign alone for a number and does not tell of it.
    } catch (IOException | CSSException broken) {
      throw new Problem(
          element.place(),
          "the style of this " + element.name() + " is no CSS; correct or remove it",
          broken);
    }
    return !mistakes.met;
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

  private static final class Mistakes implements ErrorHandler {
    private boolean met;

    @Override
    public void warning(CSSParseException mistake) {
      // Nothing is lost.
    }

    @Override
    public void error(CSSParseException mistake) {
      met = true;
    }

    @Override
    public void fatalError(CSSParseException mistake) {
      met = true;
    }
  }
}
