package org.bearingline.shape.formula;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bearingline.length.Length;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlNode;

/**
 * A length or an angle as written inside an expression.
 *
 * <p>A number and its fraction are one value: {@code 2-1/2in} is two and a half inches. A minus
 * belongs to a mixed number only where a whole number stands right before it and a fraction with an
 * inch mark right after, so {@code a-1/2in} and {@code 2in-1/2in} subtract.
 *
 * @param value mm or degrees
 * @param dimension length or angle
 * @param end index after its last letter
 */
record Literal(double value, Dimension dimension, int end) {

  /** Starts the names that stand for literals: a letter that no expression may hold. */
  static final String PREFIX = "ℓ";

  private static final String UNIT = "(?:in|ft|mm|cm|m)(?![A-Za-z0-9_])|\"|″|'|′";

  private static final String FRACTIONS = "¼½¾⅛⅜⅝⅞";

  private static final Pattern LENGTH =
      Pattern.compile(
          "(?:\\d+\\h*['′]\\h*(?=[\\d"
              + FRACTIONS
              + "]))?"
              + "(?:(?:\\d+(?:-|\\h+))?\\d+/\\d+|\\d*["
              + FRACTIONS
              + "]|\\d*\\.?\\d+(?:[eE][+-]?\\d+)?)\\h*(?:"
              + UNIT
              + ")");

  private static final Pattern ANGLE =
      Pattern.compile("(\\d*\\.?\\d+)\\h*(?:deg(?![A-Za-z0-9_])|°)");

  private static final Pattern WORD =
      Pattern.compile("[A-Za-z_][A-Za-z0-9_]*|\\d*\\.?\\d+(?:[eE][+-]?\\d+)?\\.?");

  /** The literal that starts at a letter, or null. */
  static Literal at(String text, int start, YamlNode node) {
    if (!mayStartWith(text.charAt(start))) {
      return null;
    }
    Matcher angle = ANGLE.matcher(text).region(start, text.length());
    angle.useTransparentBounds(true);
    if (angle.lookingAt()) {
      return new Literal(Double.parseDouble(angle.group(1)), Dimension.ANGLE, angle.end());
    }
    Matcher length = LENGTH.matcher(text).region(start, text.length());
    if (!length.lookingAt()) {
      return null;
    }
    try {
      return new Literal(Length.parse(length.group()), Dimension.LENGTH, length.end());
    } catch (Problem unread) {
      throw new Problem(node.placeOf(start), unread.getMessage(), unread);
    }
  }

  /** Looking at one letter spares the patterns at most places of an expression. */
  private static boolean mayStartWith(char letter) {
    return letter >= '0' && letter <= '9' || letter == '.' || FRACTIONS.indexOf(letter) >= 0;
  }

  /** The index after the word, number or sign that starts at a letter. */
  static int endOfWord(String text, int start) {
    Matcher word = WORD.matcher(text).region(start, text.length());
    return word.lookingAt() ? word.end() : start + 1;
  }
}
