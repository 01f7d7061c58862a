package org.bearingline.shape.step;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.construct.RoundedCorner;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;

/** Rounds corners of an outline being drawn. */
final class Corners {

  private Corners() {}

  /** Rounds the corner between the piece at {@code index} and the next. */
  static void round(List<Drawn> pieces, int index, double radius, Place place) {
    Drawn before = pieces.get(index);
    Drawn after = pieces.get(index + 1);
    RoundedCorner corner =
        Pen.at(place, () -> RoundedCorner.of(before.primitive(), after.primitive(), radius));
    List<Drawn> rounded = new ArrayList<>();
    corner.before().ifPresent(piece -> rounded.add(before.with(piece)));
    rounded.add(new Drawn(corner.arc(), EdgeKind.ROUTED, place));
    corner.after().ifPresent(piece -> rounded.add(after.with(piece)));
    pieces.subList(index, index + 2).clear();
    pieces.addAll(index, rounded);
  }

  /** Rounds the corner where the last piece meets the first. */
  static void roundClosing(List<Drawn> pieces, double radius, Place place) {
    List<Drawn> corner = new ArrayList<>();
    corner.add(pieces.remove(pieces.size() - 1));
    corner.add(pieces.remove(0));
    Drawn after = corner.get(1);
    round(corner, 0, radius, place);
    boolean afterLeft = corner.get(corner.size() - 1).place() == after.place();
    if (afterLeft) {
      pieces.add(0, corner.remove(corner.size() - 1));
    }
    pieces.addAll(corner);
  }
}
