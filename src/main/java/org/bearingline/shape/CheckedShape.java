package org.bearingline.shape;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bearingline.length.Units;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Dimension;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;

/** A shape whose file has been understood: every name known, every expression of one kind. */
public final class CheckedShape {

  private final String name;
  private final String about;
  private final List<Measure> measures;
  private final Map<String, Formula> derived;
  private final List<Condition> conditions;
  private final Plan plan;

  /**
   * @param derived in an order in which each value stands after those it needs
   */
  CheckedShape(
      String name,
      String about,
      List<Measure> measures,
      Map<String, Formula> derived,
      List<Condition> conditions,
      Plan plan) {
    this.name = name;
    this.about = about;
    this.measures = List.copyOf(measures);
    this.derived = Collections.unmodifiableMap(new LinkedHashMap<>(derived));
    this.conditions = List.copyOf(conditions);
    this.plan = plan;
  }

  public String name() {
    return name;
  }

  /** One line for a person. */
  public String about() {
    return about;
  }

  /** In the order of the file. */
  public List<Measure> measures() {
    return measures;
  }

  /**
   * The shape with its measures set; what is not set keeps its default. An unknown measure, a
   * setting out of range and a failed condition are Problems whose place is the measure's name.
   *
   * @param settings measure to what the maker wrote, such as {@code rise} to {@code 3/4in}
   * @param bareNumbers the units of a length written without a unit; empty to refuse it
   */
  public MeasuredShape measured(Map<String, String> settings, Optional<Units> bareNumbers) {
    refuseUnknown(settings.keySet());
    Map<String, Double> values = new LinkedHashMap<>();
    Map<String, String> written = new LinkedHashMap<>();
    List<String> words = words();
    for (Measure measure : measures) {
      String given = settings.get(measure.name());
      double value =
          given == null ? measure.value() : Setting.read(measure, given.strip(), bareNumbers);
      values.put(
          measure.name(),
          measure.kind() == MeasureKind.CHOICE
              ? words.indexOf(measure.choices().get((int) value))
              : value);
      written.put(measure.name(), given == null ? measure.written() : given.strip());
    }
    Derivation derivation = new Derivation(derived, Values.of(values));
    for (Condition condition : conditions) {
      if (!condition.must().holds(derivation.knowing(condition.must().names()))) {
        throw new Problem(blamed(condition, settings.keySet()), condition.sentence());
      }
    }
    Values all = derivation.knowing(derived.keySet());
    return new MeasuredShape(this, plan, all, written);
  }

  Scope scope(Optional<Units> bareUnits) {
    Map<String, Dimension> names = new LinkedHashMap<>();
    measures.forEach(measure -> names.put(measure.name(), measure.kind().dimension()));
    derived.forEach((one, formula) -> names.put(one, formula.dimension()));
    return new Scope(names, words(), bareUnits);
  }

  private List<String> words() {
    return measures.stream().flatMap(measure -> measure.choices().stream()).distinct().toList();
  }

  private void refuseUnknown(Set<String> given) {
    List<String> known = measures.stream().map(Measure::name).toList();
    for (String measure : given) {
      if (!known.contains(measure)) {
        throw new Problem(
            Place.field(measure),
            "the shape "
                + name
                + " has no such measure"
                + NearestName.among(known, measure)
                    .map(near -> "; did you mean " + near + "?")
                    .orElse(
                        known.isEmpty() ? "" : "; its measures are " + String.join(", ", known)));
      }
    }
  }

  /** The first measure that was set and that the condition reads, else the condition itself. */
  private Place blamed(Condition condition, Set<String> set) {
    Set<String> read = new TreeSet<>();
    condition.must().names().forEach(one -> collect(one, read));
    for (Measure measure : measures) {
      if (set.contains(measure.name()) && read.contains(measure.name())) {
        return Place.field(measure.name());
      }
    }
    return condition.must().place();
  }

  private void collect(String one, Set<String> read) {
    Formula formula = derived.get(one);
    if (read.add(one) && formula != null) {
      formula.names().forEach(next -> collect(next, read));
    }
  }
}
