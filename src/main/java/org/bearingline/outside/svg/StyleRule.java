package org.bearingline.outside.svg;

import java.util.Set;

/**
 * A rule of a style sheet for one selector.
 *
 * @param selector which elements it is for
 * @param said what it says of them
 */
record StyleRule(CssSelector selector, CssDeclarations said) {

  /** Moves or shapes an element from within a style, as CSS allows since SVG 2. */
  static final Set<String> SHAPING =
      Set.of(
          "transform", "translate", "rotate", "scale", "d", "cx", "cy", "r", "rx", "ry", "x", "y");

  /** Whether a property matters to outlines. */
  static boolean concerns(String property) {
    return Style.READ.contains(property) || SHAPING.contains(property);
  }
}
