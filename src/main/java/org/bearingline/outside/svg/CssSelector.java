package org.bearingline.outside.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bearingline.outside.DrawingLimits;
import org.w3c.css.sac.DescendantSelector;
import org.w3c.css.sac.Selector;
import org.w3c.css.sac.SiblingSelector;

/**
 * A selector of CSS 2.1, chapter 5: what an element is, what it lies in and what it follows.
 *
 * @param steps from the element outwards
 */
record CssSelector(List<Step> steps) {

  /** Longer ones nobody writes. */
  private static final int MOST_STEPS = 20;

  /** As measured: one element is held against a step while so many letters are read. */
  private static final int LETTERS_A_STEP = 20;

  /** How an element lies to the one that the step before is about. */
  private enum Relation {
    ITSELF,
    PARENT,
    ANCESTOR,
    PREVIOUS
  }

  /** What one element on the way must be. */
  private record Step(Relation relation, SimpleSelector own) {}

  CssSelector {
    steps = List.copyOf(steps);
  }

  /** The selector; empty where it is beyond CSS 2.1 or asks for what a drawing has not. */
  static Optional<CssSelector> of(Selector selector) {
    List<Step> steps = new ArrayList<>();
    Relation relation = Relation.ITSELF;
    Selector rest = selector;
    while (rest != null && steps.size() < MOST_STEPS) {
      Selector own = rest;
      Relation next = Relation.ITSELF;
      Selector outer = null;
      if (rest instanceof DescendantSelector within) {
        own = within.getSimpleSelector();
        outer = within.getAncestorSelector();
        boolean isChild = within.getSelectorType() == Selector.SAC_CHILD_SELECTOR;
        next = isChild ? Relation.PARENT : Relation.ANCESTOR;
      } else if (rest instanceof SiblingSelector after) {
        own = after.getSiblingSelector();
        outer = after.getSelector();
        next = Relation.PREVIOUS;
      }
      Optional<SimpleSelector> simple = SimpleSelector.of(own);
      if (simple.isEmpty()) {
        return Optional.empty();
      }
      steps.add(new Step(relation, simple.get()));
      relation = next;
      rest = outer;
    }
    return rest == null ? Optional.of(new CssSelector(steps)) : Optional.empty();
  }

  /** How particular it is, by CSS 2.1, section 6.4.3. */
  int weight() {
    return steps.stream().mapToInt(step -> step.own().weight()).sum();
  }

  /** One thing that every element it matches has: {@code .class}, {@code #id}, a name, or *. */
  String key() {
    return steps.get(0).own().key();
  }

  /** All keys of selectors that may match an element. */
  static Set<String> keysOf(SvgElement element) {
    return SimpleSelector.keysOf(element);
  }

  /** How long a look at an element takes at most, in {@link DrawingLimits#addLetters letters}. */
  int letters(SvgElement element) {
    return LETTERS_A_STEP * (1 + (after(0) < steps.size() ? element.depth() : 0));
  }

  boolean matches(SvgElement element) {
    int from = 0;
    SvgElement at = run(0, element);
    while (at != null && after(from) < steps.size()) {
      from = after(from);
      // The nearest that fits leaves the most room for what lies further out.
      SvgElement found = null;
      for (SvgElement out = at.parent(); out != null && found == null; out = out.parent()) {
        found = run(from, out);
      }
      at = found;
    }
    return at != null;
  }

  /** The last element of the steps that hang together from one on; null where one is not met. */
  private SvgElement run(int from, SvgElement first) {
    SvgElement at = first;
    for (int i = from; i < after(from); i++) {
      Step step = steps.get(i);
      if (i > from) {
        at = step.relation() == Relation.PARENT ? at.parent() : at.previous();
      }
      if (at == null || !step.own().matches(at)) {
        return null;
      }
    }
    return at;
  }

  private int after(int from) {
    int i = from + 1;
    while (i < steps.size() && steps.get(i).relation() != Relation.ANCESTOR) {
      i++;
    }
    return i;
  }
}
