package org.bearingline.outside.svg;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.w3c.css.sac.AttributeCondition;
import org.w3c.css.sac.CombinatorCondition;
import org.w3c.css.sac.Condition;
import org.w3c.css.sac.ConditionalSelector;
import org.w3c.css.sac.ElementSelector;
import org.w3c.css.sac.Selector;

/**
 * A selector by what an element itself is, as {@code path.edge#apron}.
 *
 * @param name empty for any
 * @param classes all of which it has
 * @param ids all of which are its own
 * @param conditions what else must hold: attributes, being the root or the first child
 */
record SimpleSelector(
    Optional<String> name,
    Set<String> classes,
    Set<String> ids,
    List<Predicate<SvgElement>> conditions) {

  /** The selector, where CSS 2.1 has it and a drawing can answer it. */
  static Optional<SimpleSelector> of(Selector selector) {
    SimpleSelector parts =
        new SimpleSelector(Optional.empty(), new HashSet<>(), new HashSet<>(), new ArrayList<>());
    Selector bare = selector;
    while (bare instanceof ConditionalSelector conditional) {
      if (!parts.collect(conditional.getCondition())) {
        return Optional.empty();
      }
      bare = conditional.getSimpleSelector();
    }
    if (bare.getSelectorType() != Selector.SAC_ELEMENT_NODE_SELECTOR) {
      return Optional.empty();
    }
    Optional<String> name = Optional.ofNullable(((ElementSelector) bare).getLocalName());
    return Optional.of(new SimpleSelector(name, parts.classes, parts.ids, parts.conditions));
  }

  private boolean collect(Condition condition) {
    switch (condition.getConditionType()) {
      case Condition.SAC_CLASS_CONDITION -> classes.add(value(condition));
      case Condition.SAC_ID_CONDITION -> ids.add(value(condition));
      case Condition.SAC_AND_CONDITION -> {
        CombinatorCondition both = (CombinatorCondition) condition;
        return collect(both.getFirstCondition()) && collect(both.getSecondCondition());
      }
      case Condition.SAC_ATTRIBUTE_CONDITION ->
          attribute(condition, has -> value(condition) == null || has.equals(value(condition)));
      case Condition.SAC_ONE_OF_ATTRIBUTE_CONDITION ->
          attribute(condition, has -> words(has).contains(value(condition)));
      case Condition.SAC_BEGIN_HYPHEN_ATTRIBUTE_CONDITION ->
          attribute(condition, has -> (has + "-").startsWith(value(condition) + "-"));
      case Condition.SAC_PSEUDO_CLASS_CONDITION -> {
        boolean isRoot = value(condition).equals("root");
        if (!isRoot && !value(condition).equals("first-child")) {
          return false;
        }
        conditions.add(
            element -> (element.parent() == null) == isRoot && element.previous() == null);
      }
      default -> {
        return false;
      }
    }
    return true;
  }

  private static String value(Condition condition) {
    return ((AttributeCondition) condition).getValue();
  }

  private void attribute(Condition condition, Predicate<String> holds) {
    String named = ((AttributeCondition) condition).getLocalName();
    conditions.add(element -> element.attribute(named).filter(holds).isPresent());
  }

  /** How particular it is, by CSS 2.1, section 6.4.3. */
  int weight() {
    return 1_000_000 * ids.size()
        + 1_000 * (classes.size() + conditions.size())
        + (name.isPresent() ? 1 : 0);
  }

  /** One thing that every element it matches has: {@code .class}, {@code #id}, a name, or *. */
  String key() {
    if (!classes.isEmpty()) {
      return "." + classes.iterator().next();
    }
    return ids.stream().findFirst().map(one -> "#" + one).or(() -> name).orElse("*");
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
        && ids.stream().allMatch(id -> element.id().equals(Optional.of(id)))
        && (classes.isEmpty() || classesOf(element).containsAll(classes))
        && conditions.stream().allMatch(condition -> condition.test(element));
  }

  private static Set<String> classesOf(SvgElement element) {
    return words(element.attribute("class").orElse(""));
  }

  private static Set<String> words(String text) {
    return new HashSet<>(Arrays.asList(text.split("\\s+")));
  }
}
