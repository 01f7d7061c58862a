package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.shape.Design;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;

/**
 * A part of a frame that is grooved for a panel: the groove itself is drawn as it is cut, so the
 * shape's own mark for it falls away.
 *
 * @param shape as it is without its frame
 * @param notes sentences for the maker beside the shape's
 */
record FramedDesign(Design shape, List<String> notes) implements Design {

  /** The label of a shape's mark for the floor of its groove. */
  private static final String GROOVE = "groove";

  FramedDesign {
    notes = List.copyOf(notes);
  }

  /** The same with more to say, each sentence once. */
  static FramedDesign of(Design shape, List<String> more) {
    List<String> said =
        new ArrayList<>(shape instanceof FramedDesign framed ? framed.notes() : List.of());
    more.stream().filter(note -> !said.contains(note)).forEach(said::add);
    return new FramedDesign(shape instanceof FramedDesign framed ? framed.shape() : shape, said);
  }

  @Override
  public Part part() {
    Part plain = shape.part();
    List<Mark> marks = plain.marks().stream().filter(mark -> !isGroove(mark)).toList();
    List<String> said = new ArrayList<>(plain.notes());
    said.addAll(notes);
    return new Part(plain.name(), plain.about(), plain.contour(), plain.cavities(), marks, said);
  }

  private static boolean isGroove(Mark mark) {
    return mark instanceof Mark.ShoulderLine line && line.label().equals(GROOVE);
  }

  @Override
  public Scope scope(Optional<Units> bareUnits) {
    return shape.scope(bareUnits);
  }

  @Override
  public Values named() {
    return shape.named();
  }

  @Override
  public Map<String, Double> lengths() {
    return shape.lengths();
  }

  @Override
  public Map<String, String> settings() {
    return shape.settings();
  }
}
