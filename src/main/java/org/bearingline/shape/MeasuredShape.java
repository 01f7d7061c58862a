package org.bearingline.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.shape.figure.PartCheck;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;
import org.bearingline.shape.step.Outlines;
import org.bearingline.shape.step.Pen;

/** A shape whose measures are known and whose conditions hold. */
public final class MeasuredShape implements Design {

  private static final int MOST_MARKS = 2000;

  private final CheckedShape shape;
  private final Plan plan;
  private final Values values;
  private final Map<String, String> settings;

  MeasuredShape(CheckedShape shape, Plan plan, Values values, Map<String, String> settings) {
    this.shape = shape;
    this.plan = plan;
    this.values = values;
    this.settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
  }

  /**
   * The same with one measure set otherwise; refuses as {@link CheckedShape#measured} does.
   *
   * @param written as a maker writes it, such as {@code 3/8in}
   * @param bareNumbers the units of a length written without a unit; empty to refuse it
   */
  public MeasuredShape with(String measure, String written, Optional<Units> bareNumbers) {
    Map<String, String> changed = new LinkedHashMap<>(settings);
    changed.put(measure, written);
    return shape.measured(changed, bareNumbers);
  }

  /** The finished piece; what cannot be drawn is a Problem with its place in the shape file. */
  @Override
  public Part part() {
    Pen pen = Outlines.drawn(plan.outline(), values);
    Contour edge = pen.contour(plan.outlinePlace());
    PartCheck check = PartCheck.ofOutline(edge, pen.places());
    List<Cavity> cavities = plan.cavities().drawn(values, check);
    List<Mark> marks = new ArrayList<>();
    plan.marks()
        .forEach(
            values,
            (mark, inner) -> {
              if (marks.size() == MOST_MARKS) {
                throw new Problem(
                    plan.outlinePlace(), "the shape has more than " + MOST_MARKS + " marks");
              }
              marks.add(mark.drawn(inner));
            });
    return new Part(shape.name(), shape.about(), edge, cavities, marks, plan.notes());
  }

  /**
   * What an expression beside the shape may name: its measures and derived values.
   *
   * @param bareUnits the units of a bare length; empty to refuse one
   */
  @Override
  public Scope scope(Optional<Units> bareUnits) {
    return shape.scope(bareUnits);
  }

  /** The values of everything in {@link #scope}. */
  @Override
  public Values named() {
    return values;
  }

  /** What can be set, in the file's order. */
  public List<Measure> measures() {
    return shape.measures();
  }

  /** Each measure that is no choice, in the file's order: mm, degrees, or a number. */
  public Map<String, Double> values() {
    Map<String, Double> byName = new LinkedHashMap<>();
    for (Measure measure : shape.measures()) {
      if (measure.kind() != MeasureKind.CHOICE) {
        byName.put(measure.name(), values.get(measure.name()));
      }
    }
    return Collections.unmodifiableMap(byName);
  }

  /** Each measure that is a length, mm, in the file's order. */
  @Override
  public Map<String, Double> lengths() {
    Map<String, Double> byName = new LinkedHashMap<>();
    for (Measure measure : shape.measures()) {
      if (measure.kind() == MeasureKind.LENGTH) {
        byName.put(measure.name(), values.get(measure.name()));
      }
    }
    return Collections.unmodifiableMap(byName);
  }

  /** Each measure as written, by the maker where set, else in the shape file; for the card. */
  @Override
  public Map<String, String> settings() {
    return settings;
  }
}
