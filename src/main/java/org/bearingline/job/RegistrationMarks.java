package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Item;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.routing.family.Registration;

/** The lines by which a part is laid to a template that is not simply its own. */
final class RegistrationMarks {

  /** Words of neighbouring lines stand at changing heights, these shares of the way up. */
  private static final double[] HEIGHTS = {0.85, 0.15, 0.6, 0.35};

  private RegistrationMarks() {}

  static PlateMarks of(List<Registration> lines) {
    List<Item> marks = new ArrayList<>();
    List<PlateMarks.Said> words = new ArrayList<>();
    for (Registration line : lines) {
      marks.add(new Item.Stroke(Path.of(new Line(line.from(), line.to()))));
      boolean level = line.kind() == Registration.Kind.BACK;
      double share = level ? 0.5 : HEIGHTS[words.size() % HEIGHTS.length];
      Point at = line.from().towards(line.to(), share);
      words.add(new PlateMarks.Said(line.label(), at));
    }
    return new PlateMarks(List.of(), "", marks, words);
  }
}
