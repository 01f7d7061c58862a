package org.bearingline.outside.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.outside.Tally;
import org.bearingline.problem.Problem;

/**
 * The rules of all style sheets in a drawing, by CSS 2.1. Rules whose selector is beyond it, and
 * sheets outside the file, are counted as ignored.
 */
final class StyleRules {

  /** A file with more rules than this was not drawn. */
  private static final int MOST_RULES = 1_000;

  private record Numbered(int number, StyleRule rule) {}

  /** Of two rules the later outdoes the earlier where it is no less particular. */
  private static final Comparator<Numbered> OUTDONE_FIRST =
      Comparator.comparingInt((Numbered one) -> one.rule.selector().weight())
          .thenComparingInt(Numbered::number);

  /** By one thing that an element must have; see {@link CssSelector#key}. */
  private final Map<String, List<Numbered>> rules = new HashMap<>();

  private final StyleTexts styles = new StyleTexts();

  private int count;

  /** The rules of every sheet of the drawing. */
  static StyleRules of(List<SvgElement> sheets, Tally ignored) {
    StyleRules rules = new StyleRules();
    for (SvgElement sheet : sheets) {
      String type = sheet.attribute("type").orElse("");
      if (type.isEmpty() || type.equals("text/css")) {
        StyleSheetReader.read(sheet, ignored).forEach(rule -> rules.add(rule, sheet));
      } else {
        ignored.add("style sheet of another language", "style sheets of another language");
      }
    }
    return rules;
  }

  /**
   * What holds for an element: its attributes, then the sheets, then its own style.
   *
   * @param limits counts what is read
   * @param isCopied whether this may be asked of the element any number of times
   */
  Map<String, String> declared(SvgElement element, DrawingLimits limits, boolean isCopied) {
    Map<String, String> all = new HashMap<>();
    for (String property : Style.READ) {
      element
          .attribute(property)
          .ifPresent(value -> all.put(property, word(element, property, value)));
    }
    List<StyleRule> matching = matching(element, limits);
    matching.forEach(rule -> all.putAll(rule.said().usual()));
    CssDeclarations own = styles.of(element, limits, isCopied);
    all.putAll(own.usual());
    matching.forEach(rule -> all.putAll(rule.said().pressed()));
    all.putAll(own.pressed());
    return all;
  }

  private List<StyleRule> matching(SvgElement element, DrawingLimits limits) {
    if (rules.isEmpty()) {
      return List.of();
    }
    List<Numbered> found = new ArrayList<>();
    for (String key : CssSelector.keysOf(element)) {
      for (Numbered one : rules.getOrDefault(key, List.of())) {
        limits.addLetters(one.rule.selector().letters(element), element.place());
        if (one.rule.selector().matches(element)) {
          found.add(one);
        }
      }
    }
    found.sort(OUTDONE_FIRST);
    return found.stream().map(Numbered::rule).toList();
  }

  private void add(StyleRule rule, SvgElement sheet) {
    rules
        .computeIfAbsent(rule.selector().key(), key -> new ArrayList<>())
        .add(new Numbered(count++, rule));
    if (count > MOST_RULES) {
      throw sheet.problem("the drawing has more than 1,000 style rules; save it as plain SVG");
    }
  }

  /** Refuses what would shape or move an element from within a style. */
  static void requireUnshaped(SvgElement element, Map<String, String> declared) {
    for (String property : StyleRule.SHAPING) {
      String value = declared.getOrDefault(property, "none");
      if (!value.equals("none") && !value.equals("auto") && !value.equals("inherit")) {
        throw new Problem(
            element.place(),
            property
                + " of this "
                + element.name()
                + " stands in a style, where it is not read; save the drawing as plain SVG, with"
                + " attributes");
      }
    }
  }

  private static String word(SvgElement element, String property, String written) {
    String value = written.toLowerCase(Locale.ROOT);
    if (value.contains("(")) {
      return CssDeclarations.ofAttribute(element, property, value);
    }
    if (CssDeclarations.isClear(value)) {
      return "transparent";
    }
    if (value.equals("#fff") || value.equals("#ffffff")) {
      return "white";
    }
    // Short, so that no pattern is tried on a text of a million noughts.
    return value.length() <= 8 && value.matches("0*\\.?0*%?") && value.contains("0") ? "0" : value;
  }
}
