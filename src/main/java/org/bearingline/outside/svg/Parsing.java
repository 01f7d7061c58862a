package org.bearingline.outside.svg;

import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.Parser;
import org.bearingline.problem.Problem;

/** Runs a parser of Batik over an attribute. */
final class Parsing {

  private Parsing() {}

  /** What is parsed goes to the parser's handler; what cannot be is a Problem at the element. */
  static void run(Parser parser, SvgElement element, String attribute, String text) {
    try {
      parser.parse(text);
    } catch (ParseException broken) {
      int at = broken.getColumnNumber();
      throw new Problem(
          element.place(),
          "the attribute "
              + attribute
              + " of this "
              + element.name()
              + " cannot be read"
              + (at > 0 ? " from its character " + at + " on" : "")
              + "; correct or remove the element",
          broken);
    }
  }
}
