package org.bearingline.outside.svg;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.w3c.css.sac.AttributeCondition;
import org.w3c.css.sac.CombinatorCondition;
import org.w3c.css.sac.Condition;
import org.w3c.css.sac.ConditionalSelector;
import org.w3c.css.sac.ElementSelector;
import org.w3c.css.sac.Selector;

/**
 * A selector by an element's own name, classes and id, as {@code path.edge#apron}.
 *
 * @param name empty for any
 * @param classes all of which it has
 * @param id empty for any
 */
record SimpleSelector(Optional<String> name, Set<String> classes, Optional<String> id) {

  /** The selector, where it is so simple. */
  static Optional<SimpleSelector> of(Selector selector) {
    Set<String> classes = new HashSet<>();
    Set<String> ids = new HashSet<>();
    Selector bare = selector;
    while (bare instanceof ConditionalSelector conditional) {
      if (!collect(conditional.getCondition(), classes, ids)) {
        return Optional.empty();
      }
      bare = conditional.getSimpleSelector();
    }
    if (bare.getSelectorType() != Selector.SAC_ELEMENT_NODE_SELECTOR || ids.size() > 1) {
      return Optional.empty();
    }
    Optional<String> name = Optional.ofNullable(((ElementSelector) bare).getLocalName());
    return Optional.of(new SimpleSelector(name, classes, ids.stream().findFirst()));
  }

  private static boolean collect(Condition condition, Set<String> classes, Set<String> ids) {
    return switch (condition.getConditionType()) {
      case Condition.SAC_CLASS_CONDITION ->
          classes.add(((AttributeCondition) condition).getValue()) || true;
      case Condition.SAC_ID_CONDITION ->
          ids.add(((AttributeCondition) condition).getValue()) || true;
      case Condition.SAC_AND_CONDITION -> {
        CombinatorCondition both = (CombinatorCondition) condition;
        yield collect(both.getFirstCondition(), classes, ids)
            && collect(both.getSecondCondition(), classes, ids);
      }
      default -> false;
    };
  }

  /** How particular it is, by CSS 2.1, section 6.4.3. */
  int weight() {
    return (id.isPresent() ? 1_000_000 : 0) + 1_000 * classes.size() + (name.isPresent() ? 1 : 0);
  }

  /** One thing that every element it matches has: {@code .class}, {@code #id}, a name, or *. */
  String key() {
    if (!classes.isEmpty()) {
      return "." + classes.iterator().next();
    }
    return id.map(one -> "#" + one).or(() -> name).orElse("*");
  }

  /** All keys of selectors that may match an element. */
  static Set<String> keysOf(SvgElement element) {
    Set<String> keys = new HashSet<>();
    classesOf(element).forEach(one -> keys.add("." + one));
    element.id().ifPresent(id -> keys.add("#" + id));
    keys.add(element.name());
    keys.add("*");
    return keys;
  }

  boolean matches(SvgElement element) {
    return name.map(element::isA).orElse(true)
        && id.map(one -> element.id().equals(Optional.of(one))).orElse(true)
        && (classes.isEmpty() || classesOf(element).containsAll(classes));
  }

  private static Set<String> classesOf(SvgElement element) {
    return new HashSet<>(Arrays.asList(element.attribute("class").orElse("").split("\\s+")));
  }
}
