package org.bearingline.outside.svg;

import java.util.Map;
import java.util.Set;
import org.bearingline.outside.FillRule;

/**
 * What of an element's style matters to its outline; all of it is handed down to what lies inside.
 *
 * @param isVisible whether it may be seen at all
 * @param isFilled whether its inside has a colour
 * @param isWhite whether that colour is white, as that of a page
 * @param isStroked whether its line has a colour
 * @param rule which places are inside, where it is filled
 */
record Style(
    boolean isVisible, boolean isFilled, boolean isWhite, boolean isStroked, FillRule rule) {

  /** What SVG says where a file is silent. */
  static final Style INITIAL = new Style(true, true, false, false, FillRule.NON_ZERO);

  /** Properties that are read. */
  static final Set<String> READ =
      Set.of(
          "display",
          "visibility",
          "fill",
          "fill-opacity",
          "fill-rule",
          "stroke",
          "stroke-opacity",
          "opacity");

  /** Whether the element and all inside it are left out. */
  static boolean isAbsent(Map<String, String> declared) {
    return is(declared, "display", "none") || is(declared, "opacity", "0");
  }

  /** The style inside, by what the element declares. */
  Style with(Map<String, String> declared) {
    return new Style(
        switch (declared.getOrDefault("visibility", "inherit")) {
          case "visible" -> true;
          case "hidden", "collapse" -> false;
          default -> isVisible;
        },
        painted(declared, "fill", isFilled),
        switch (declared.getOrDefault("fill", "inherit")) {
          case "inherit", "" -> isWhite;
          default -> is(declared, "fill", "white");
        },
        painted(declared, "stroke", isStroked),
        switch (declared.getOrDefault("fill-rule", "inherit")) {
          case "evenodd" -> FillRule.EVEN_ODD;
          case "nonzero" -> FillRule.NON_ZERO;
          default -> rule;
        });
  }

  /** How the loops of one shape count. */
  FillRule loops() {
    return isFilled ? rule : FillRule.UNFILLED;
  }

  /** Whether line or inside of a shape have a colour. */
  boolean isPainted() {
    return isFilled || isStroked;
  }

  /** Whether the inside of a shape can be told from the page; white without a line cannot. */
  boolean isArea() {
    return isFilled && (!isWhite || isStroked);
  }

  private static boolean painted(Map<String, String> declared, String paint, boolean inherited) {
    if (is(declared, paint + "-opacity", "0")) {
      return false;
    }
    return switch (declared.getOrDefault(paint, "inherit")) {
      case "none", "transparent" -> false;
      case "inherit", "" -> inherited;
      default -> true;
    };
  }

  private static boolean is(Map<String, String> declared, String property, String value) {
    return value.equals(declared.get(property));
  }
}
