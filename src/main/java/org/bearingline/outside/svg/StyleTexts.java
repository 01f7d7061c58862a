package org.bearingline.outside.svg;

import java.util.LinkedHashMap;
import java.util.Map;
import org.bearingline.outside.DrawingLimits;

/** Reads the attributes {@code style}: many elements say the same, and copies always do. */
final class StyleTexts {

  private static final int MOST_KEPT = 1_000;

  /**
   * Such a text is read, where it is no CSS, in so many times the time of any other, piece by piece
   * as it is then; measured a good hundred, of which some is made up for by texts that are CSS.
   */
  private static final int LETTERS_A_LETTER = 30;

  /** The last ones, the longest unasked first. */
  private final Map<String, CssDeclarations> kept = new LinkedHashMap<>(16, 0.75f, true);

  /**
   * What the style of an element declares.
   *
   * @param isCopied whether it may be read any number of times, and must be counted
   */
  CssDeclarations of(SvgElement element, DrawingLimits limits, boolean isCopied) {
    String text = element.attribute("style").orElse("");
    CssDeclarations known = kept.get(text);
    if (known != null) {
      return known;
    }
    if (isCopied) {
      limits.addLetters((long) LETTERS_A_LETTER * text.length(), element.place());
    }
    CssDeclarations declared = CssDeclarations.ofStyle(element);
    kept.put(text, declared);
    if (kept.size() > MOST_KEPT) {
      kept.remove(kept.keySet().iterator().next());
    }
    return declared;
  }
}
