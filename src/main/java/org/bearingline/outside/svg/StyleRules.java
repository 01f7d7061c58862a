package org.bearingline.outside.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.batik.css.parser.DefaultDocumentHandler;
import org.bearingline.outside.Tally;
import org.bearingline.problem.Problem;
import org.w3c.css.sac.LexicalUnit;
import org.w3c.css.sac.SACMediaList;
import org.w3c.css.sac.SelectorList;

/**
 * The rules of all style sheets in a drawing: those whose selector is made of an element's name,
 * classes and id. What other rules say, and sheets outside the file, are counted as ignored.
 */
final class StyleRules {

  static final String SHEET_OUTSIDE = "style sheet of another file";

  static final String SHEETS_OUTSIDE = "style sheets of other files";

  /** A file with more rules than this was not drawn. */
  private static final int MOST_RULES = 1_000;

  /** Moves or shapes an element from within a style, as CSS allows since SVG 2. */
  private static final Set<String> SHAPING =
      Set.of(
          "transform", "translate", "rotate", "scale", "d", "cx", "cy", "r", "rx", "ry", "x", "y");

  private record Rule(int number, SimpleSelector selector, Map<String, String> declared) {}

  /** Of two rules the later outdoes the earlier where it is no less particular. */
  private static final Comparator<Rule> OUTDONE_FIRST =
      Comparator.comparingInt((Rule rule) -> rule.selector.weight()).thenComparingInt(Rule::number);

  /** By one thing that an element must have; see {@link SimpleSelector#key}. */
  private final Map<String, List<Rule>> rules = new HashMap<>();

  private int count;

  /** The rules of every sheet of the drawing. */
  static StyleRules of(List<SvgElement> sheets, Tally ignored) {
    StyleRules rules = new StyleRules();
    for (SvgElement sheet : sheets) {
      String type = sheet.attribute("type").orElse("");
      if (type.isEmpty() || type.equals("text/css")) {
        CssDeclarations.ofSheet(sheet, rules.new Sheet(sheet, ignored));
      } else {
        ignored.add("style sheet of another language", "style sheets of another language");
      }
    }
    return rules;
  }

  /** What holds for an element: its attributes, then the sheets, then its own style. */
  Map<String, String> declared(SvgElement element) {
    Map<String, String> all = new HashMap<>();
    for (String property : Style.READ) {
      element
          .attribute(property)
          .ifPresent(value -> all.put(property, number(value.toLowerCase(Locale.ROOT))));
    }
    matching(element).forEach(rule -> all.putAll(rule.declared));
    all.putAll(CssDeclarations.ofStyle(element));
    return all;
  }

  private List<Rule> matching(SvgElement element) {
    if (rules.isEmpty()) {
      return List.of();
    }
    List<Rule> found = new ArrayList<>();
    for (String key : SimpleSelector.keysOf(element)) {
      for (Rule rule : rules.getOrDefault(key, List.of())) {
        if (rule.selector.matches(element)) {
          found.add(rule);
        }
      }
    }
    found.sort(OUTDONE_FIRST);
    return found;
  }

  private void add(SimpleSelector selector, Map<String, String> declared) {
    rules
        .computeIfAbsent(selector.key(), key -> new ArrayList<>())
        .add(new Rule(count++, selector, declared));
  }

  /** Refuses what would shape or move an element from within a style. */
  static void requireUnshaped(SvgElement element, Map<String, String> declared) {
    for (String property : SHAPING) {
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

  private static String number(String value) {
    // Short, so that no pattern is tried on a text of a million noughts.
    return value.length() <= 8 && value.matches("0*\\.?0*%?") && value.contains("0") ? "0" : value;
  }

  /** Collects the rules of one sheet. */
  private final class Sheet extends DefaultDocumentHandler {

    private final SvgElement style;
    private final Tally ignored;
    private Map<String, String> declared = new HashMap<>();
    private boolean isInSelector;
    private int media;

    Sheet(SvgElement style, Tally ignored) {
      this.style = style;
      this.ignored = ignored;
    }

    @Override
    public void importStyle(String uri, SACMediaList media, String prefix) {
      ignored.add(SHEET_OUTSIDE, SHEETS_OUTSIDE);
    }

    @Override
    public void startMedia(SACMediaList given) {
      media++;
      ignored.add("style for one kind of screen", "styles for one kind of screen");
    }

    @Override
    public void endMedia(SACMediaList given) {
      media--;
    }

    @Override
    public void startSelector(SelectorList selectors) {
      isInSelector = true;
      declared = new HashMap<>();
    }

    @Override
    public void property(String name, LexicalUnit value, boolean important) {
      String property = name.toLowerCase(Locale.ROOT);
      if (isInSelector && (Style.READ.contains(property) || SHAPING.contains(property))) {
        declared.put(property, CssDeclarations.word(value));
      }
    }

    @Override
    public void endSelector(SelectorList selectors) {
      isInSelector = false;
      if (declared.isEmpty() || media > 0) {
        return;
      }
      for (int i = 0; i < selectors.getLength(); i++) {
        SimpleSelector.of(selectors.item(i))
            .ifPresentOrElse(
                selector -> add(selector, declared),
                () -> ignored.add("style rule", "style rules"));
      }
      if (count > MOST_RULES) {
        throw style.problem("the drawing has more than 1,000 style rules; save it as plain SVG");
      }
    }
  }
}
