package org.bearingline.outside.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.batik.css.parser.DefaultDocumentHandler;
import org.bearingline.outside.Tally;
import org.w3c.css.sac.LexicalUnit;
import org.w3c.css.sac.SACMediaList;
import org.w3c.css.sac.SelectorList;

/** Reads the rules of one style sheet; what cannot be read is counted, and costs nothing else. */
final class StyleSheetReader {

  static final String OUTSIDE = "style sheet of another file";

  static final String OUTSIDE_MANY = "style sheets of other files";

  private static final String SCREEN = "style for one kind of screen";

  private static final String SCREEN_MANY = "styles for one kind of screen";

  private final SvgElement style;
  private final Tally ignored;
  private final List<StyleRule> rules = new ArrayList<>();

  private StyleSheetReader(SvgElement style, Tally ignored) {
    this.style = style;
    this.ignored = ignored;
  }

  /** The rules in their order; those that say nothing of interest are left out. */
  static List<StyleRule> read(SvgElement style, Tally ignored) {
    StyleSheetReader reader = new StyleSheetReader(style, ignored);
    String text = style.text().toString();
    if (!reader.takes(text)) {
      CssPieces.of(text, style).forEach(reader::piece);
    }
    return reader.rules;
  }

  private void piece(String text) {
    if (takes(text)) {
      return;
    }
    int open = text.indexOf('{');
    int close = text.lastIndexOf('}');
    String head = open < 0 ? text : text.substring(0, open);
    if (head.strip().startsWith("@")) {
      if (head.toLowerCase(Locale.ROOT).contains("@media")) {
        ignored.add(SCREEN, SCREEN_MANY);
      }
    } else if (open < 0 || close < open || !takes(head + "{}")) {
      ignored.add("style rule", "style rules");
    } else {
      for (String one : CssPieces.of(text.substring(open + 1, close), style)) {
        if (!takes(head + "{" + one + "}")) {
          takes(head + "{" + CssDeclarations.inPlaceOf(one) + "}");
        }
      }
    }
  }

  /** Whether all of it was read; where not, nothing of it counts. */
  private boolean takes(String text) {
    Heard heard = new Heard();
    if (!CssText.isSheet(style, text, heard)) {
      return false;
    }
    rules.addAll(heard.rules);
    heard.left.forEach(Runnable::run);
    return true;
  }

  /** What the parser tells of a sheet. */
  private final class Heard extends DefaultDocumentHandler {

    private final List<StyleRule> rules = new ArrayList<>();
    private final List<Runnable> left = new ArrayList<>();
    private CssDeclarations declared = CssDeclarations.none();
    private boolean isInSelector;
    private int media;

    @Override
    public void importStyle(String uri, SACMediaList kinds, String prefix) {
      left.add(() -> ignored.add(OUTSIDE, OUTSIDE_MANY));
    }

    @Override
    public void startMedia(SACMediaList kinds) {
      media++;
      left.add(() -> ignored.add(SCREEN, SCREEN_MANY));
    }

    @Override
    public void endMedia(SACMediaList kinds) {
      media--;
    }

    @Override
    public void startSelector(SelectorList selectors) {
      isInSelector = true;
      declared = CssDeclarations.none();
    }

    @Override
    public void property(String name, LexicalUnit value, boolean important) {
      String property = name.toLowerCase(Locale.ROOT);
      if (isInSelector && StyleRule.concerns(property)) {
        declared.add(property, value, important);
      }
    }

    @Override
    public void endSelector(SelectorList selectors) {
      isInSelector = false;
      if (declared.isEmpty() || media > 0) {
        return;
      }
      for (int i = 0; i < selectors.getLength(); i++) {
        CssSelector.of(selectors.item(i))
            .ifPresentOrElse(
                selector -> rules.add(new StyleRule(selector, declared)),
                () -> left.add(() -> ignored.add("style rule", "style rules")));
      }
    }
  }
}
