package org.bearingline.outside.svg;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.batik.css.parser.DefaultDocumentHandler;
import org.w3c.css.sac.LexicalUnit;

/**
 * What CSS declares. Words are in small letters, numbers as they are.
 *
 * @param usual by property
 * @param pressed the same with {@code !important}
 */
record CssDeclarations(Map<String, String> usual, Map<String, String> pressed) {

  /** Four digits, or four pairs of them, the last for how much is seen. */
  private static final Pattern CLEAR =
      Pattern.compile("(?i)\\s*#([0-9a-f]{3}0|[0-9a-f]{6}00)\\s*;?\\s*");

  /** Nothing, to be added to. */
  static CssDeclarations none() {
    return new CssDeclarations(new HashMap<>(), new HashMap<>());
  }

  /** What the attribute {@code style} declares. */
  static CssDeclarations ofStyle(SvgElement element) {
    String text = element.attribute("style").orElse("");
    CssDeclarations declared = none();
    if (!text.isEmpty() && !declared.takes(element, text)) {
      for (String piece : CssPieces.of(text, element)) {
        if (!declared.takes(element, piece)) {
          declared.takes(element, inPlaceOf(piece));
        }
      }
    }
    return declared;
  }

  /** What an attribute says of a property, as if it stood in a style. */
  static String ofAttribute(SvgElement element, String property, String value) {
    CssDeclarations declared = none();
    return declared.takes(element, property + ":" + value)
        ? declared.usual.getOrDefault(property, value)
        : value;
  }

  /** Whether all of it was read; where not, nothing of it counts. */
  private boolean takes(SvgElement element, String text) {
    CssDeclarations heard = none();
    boolean isRead = CssText.isDeclarations(element, text, heard.handler());
    if (isRead) {
      usual.putAll(heard.usual);
      pressed.putAll(heard.pressed);
    }
    return isRead;
  }

  /**
   * A declaration that can be read, for one that cannot: of a property that matters, its value is
   * some value; empty for any other.
   */
  static String inPlaceOf(String unread) {
    String[] parts = unread.split(":", 2);
    String property = parts[0].strip().toLowerCase(Locale.ROOT);
    if (parts.length < 2 || !Style.READ.contains(property)) {
      return "";
    }
    return property + (isClear(parts[1]) ? ": transparent" : ": unread");
  }

  /** Whether a colour in hexadecimal digits says that nothing of it is seen. */
  static boolean isClear(String colour) {
    return colour.length() < 40 && CLEAR.matcher(colour).matches();
  }

  private DefaultDocumentHandler handler() {
    return new DefaultDocumentHandler() {
      @Override
      public void property(String name, LexicalUnit value, boolean important) {
        add(name.toLowerCase(Locale.ROOT), value, important);
      }
    };
  }

  boolean isEmpty() {
    return usual.isEmpty() && pressed.isEmpty();
  }

  /** One more; of two for a property the later holds. */
  void add(String property, LexicalUnit value, boolean isPressed) {
    (isPressed ? pressed : usual).put(property, word(value));
  }

  /** A single word, number or colour; anything longer or other is told apart from the words. */
  private static String word(LexicalUnit value) {
    if (value == null) {
      return "";
    }
    return switch (value.getLexicalUnitType()) {
      case LexicalUnit.SAC_IDENT -> value.getStringValue().toLowerCase(Locale.ROOT);
      case LexicalUnit.SAC_INHERIT -> "inherit";
      case LexicalUnit.SAC_INTEGER -> String.valueOf(value.getIntegerValue());
      case LexicalUnit.SAC_REAL -> value.getFloatValue() == 0 ? "0" : "a number";
      case LexicalUnit.SAC_PERCENTAGE -> value.getFloatValue() == 0 ? "0" : "a share";
      case LexicalUnit.SAC_RGBCOLOR -> isWhite(value) ? "white" : "a value";
      case LexicalUnit.SAC_FUNCTION -> isClear(value) ? "transparent" : "a value";
      default -> "a value";
    };
  }

  private static boolean isWhite(LexicalUnit colour) {
    for (LexicalUnit one = colour.getParameters(); one != null; one = one.getNextLexicalUnit()) {
      boolean isComma = one.getLexicalUnitType() == LexicalUnit.SAC_OPERATOR_COMMA;
      if (!isComma && !word(one).equals("255")) {
        return false;
      }
    }
    return true;
  }

  /** Whether a colour such as {@code rgba(0, 0, 0, 0)} has none of itself left to be seen. */
  private static boolean isClear(LexicalUnit colour) {
    int commas = 0;
    LexicalUnit last = null;
    for (LexicalUnit one = colour.getParameters(); one != null; one = one.getNextLexicalUnit()) {
      commas += one.getLexicalUnitType() == LexicalUnit.SAC_OPERATOR_COMMA ? 1 : 0;
      last = one;
    }
    return colour.getFunctionName().matches("(?i)(rgb|hsl)a?")
        && commas == 3
        && word(last).equals("0");
  }
}
