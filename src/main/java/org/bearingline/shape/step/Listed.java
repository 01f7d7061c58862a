package org.bearingline.shape.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import org.bearingline.problem.CutOff;
import org.bearingline.shape.formula.Dimension;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;
import org.bearingline.yaml.YamlNode;

/**
 * A list of steps, openings or marks in which some may be repeated or stand under a condition.
 *
 * @param <T> what is listed
 */
public interface Listed<T> {

  /** Far more than any shape needs; stops a repeat that runs away. */
  int MOST_TIMES = 200;

  /** Hands on each item that counts under the given values, in order. */
  void forEach(Values values, BiConsumer<T, Values> action);

  /**
   * Reads a list.
   *
   * @param what the word for its items, under which a repeat or condition holds its own list
   * @param one reads one item
   */
  static <T> Listed<T> read(
      YamlNode list, Scope scope, String what, BiFunction<YamlNode, Scope, T> one) {
    List<Listed<T>> parts = new ArrayList<>();
    for (YamlNode item : list.items()) {
      if (item.isMapping() && item.optional("repeat").isPresent()) {
        item.allowOnly(Set.of("repeat"));
        parts.add(Repeat.read(item.field("repeat"), scope, what, one));
      } else if (item.isMapping() && item.optional("when").isPresent()) {
        item.allowOnly(Set.of("when"));
        parts.add(When.read(item.field("when"), scope, what, one));
      } else {
        T read = one.apply(item, scope);
        parts.add((values, action) -> action.accept(read, values));
      }
    }
    return (values, action) -> parts.forEach(part -> part.forEach(values, action));
  }

  /** The same list again and again, with a counter from 0. */
  record Repeat<T>(Formula times, Optional<String> counter, Listed<T> body) implements Listed<T> {

    private static <T> Listed<T> read(
        YamlNode node, Scope scope, String what, BiFunction<YamlNode, Scope, T> one) {
      Fields f = new Fields(node, scope).allowOnly("times", "counter", what);
      Optional<String> counter = node.optional("counter").map(name -> Names.checked(name, scope));
      Scope inner = counter.map(name -> scope.with(name, Dimension.NUMBER)).orElse(scope);
      return new Repeat<>(
          f.formula("times", Dimension.NUMBER),
          counter,
          Listed.read(node.field(what), inner, what, one));
    }

    @Override
    public void forEach(Values values, BiConsumer<T, Values> action) {
      int count = times.whole(values, 0, MOST_TIMES, "how often something is repeated");
      for (int i = 0; i < count; i++) {
        CutOff.check();
        int turn = i;
        body.forEach(counter.map(name -> values.with(name, turn)).orElse(values), action);
      }
    }
  }

  /** One list or another. */
  record When<T>(Formula holds, Listed<T> body, Optional<Listed<T>> otherwise)
      implements Listed<T> {

    private static <T> Listed<T> read(
        YamlNode node, Scope scope, String what, BiFunction<YamlNode, Scope, T> one) {
      Fields f = new Fields(node, scope).allowOnly("holds", what, "otherwise");
      return new When<>(
          f.formula("holds", Dimension.TRUTH),
          Listed.read(node.field(what), scope, what, one),
          node.optional("otherwise").map(list -> Listed.read(list, scope, what, one)));
    }

    @Override
    public void forEach(Values values, BiConsumer<T, Values> action) {
      if (holds.holds(values)) {
        body.forEach(values, action);
      } else {
        otherwise.ifPresent(list -> list.forEach(values, action));
      }
    }
  }
}
