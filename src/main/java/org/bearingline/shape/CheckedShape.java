package org.bearingline.shape;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.length.Units;

/** A shape whose file has been understood: every name known, every expression of one kind. */
public final class CheckedShape {

  CheckedShape() {}

  public String name() {
    throw new UnsupportedOperationException();
  }

  /** One line for a person. */
  public String about() {
    throw new UnsupportedOperationException();
  }

  /** In the order of the file. */
  public List<Measure> measures() {
    throw new UnsupportedOperationException();
  }

  /**
   * The shape with its measures set; what is not set keeps its default. An unknown measure, a
   * setting out of range and a failed condition are Problems whose place is the measure's name.
   *
   * @param settings measure to what the maker wrote, such as {@code rise} to {@code 3/4in}
   * @param bareNumbers the units of a length written without a unit; empty to refuse it
   */
  public MeasuredShape measured(Map<String, String> settings, Optional<Units> bareNumbers) {
    throw new UnsupportedOperationException();
  }
}
