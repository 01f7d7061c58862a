package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;

/**
 * Operations that take the same wood, where that is hardly meant: a screw in a mortise, a hole in
 * an opening, two recesses that overlap. Not told is what is made so on purpose: what lies whole on
 * the floor of a shallower recess or ledge, a counterbore, a pocket and its plug, and a groove,
 * which runs across tenons and mortises. Cuts from both faces that meet inside the stock are
 * refused elsewhere.
 */
public final class OperationMeetings {

  /** Less wood than this in common, in mm², is rounding. */
  private static final double CRUMB_AREA = 0.01;

  /** Centres and depths nearer than this, in mm, are the same. */
  private static final double SAME = 0.02;

  private final Units units;
  private final List<String> sentences = new ArrayList<>();

  private OperationMeetings(Units units) {
    this.units = units;
  }

  /** A sentence for each two operations that meet, naming both and the place. */
  public static List<String> sentences(List<Operation> operations, Units units) {
    OperationMeetings meetings = new OperationMeetings(units);
    for (int i = 0; i < operations.size(); i++) {
      for (int j = i + 1; j < operations.size(); j++) {
        meetings.look(operations.get(i), operations.get(j));
      }
    }
    return List.copyOf(meetings.sentences);
  }

  private void look(Operation a, Operation b) {
    if (takesNoWood(a) || takesNoWood(b) || neverMeet(a, b)) {
      return;
    }
    if (a instanceof Hollow first && b instanceof Hollow second) {
      hollows(first, second);
    } else if (a instanceof Hollow hollow && b instanceof Drilled) {
      holes(b, hollow);
    } else if (b instanceof Hollow hollow && a instanceof Drilled) {
      holes(a, hollow);
    } else if (a instanceof Drilled && b instanceof Drilled) {
      drilled(a, b);
    }
  }

  private static boolean takesNoWood(Operation operation) {
    return operation instanceof InlayPlug
        || !(operation instanceof Hollow || operation instanceof Drilled);
  }

  /** Two stopped cuts from the two faces; where they would meet all the same is refused. */
  private static boolean neverMeet(Operation a, Operation b) {
    return a.face() != b.face() && a.depth().isPresent() && b.depth().isPresent();
  }

  private void hollows(Hollow a, Hollow b) {
    Region first = region(a);
    Region second = region(b);
    Region both = Overlay.intersection(first, second);
    if (both.area() <= CRUMB_AREA) {
      return;
    }
    boolean aLiesInB = both.area() >= first.area() - CRUMB_AREA;
    boolean bLiesInA = both.area() >= second.area() - CRUMB_AREA;
    if (aLiesInB && isDeeper(a, b) || bLiesInA && isDeeper(b, a)) {
      return;
    }
    Point at = center(both);
    sentences.add(
        aLiesInB || bLiesInA
            ? (aLiesInB ? a : b).name()
                + " lies in "
                + (aLiesInB ? b : a).name()
                + place(at)
                + ", which takes its wood: is one of them too much, or a depth wrong?"
            : a.name() + " and " + b.name() + " run into each other" + place(at) + asked());
  }

  private void holes(Operation drilled, Hollow hollow) {
    Region opening = region(hollow);
    List<String> gone = new ArrayList<>();
    List<String> inside = new ArrayList<>();
    List<String> across = new ArrayList<>();
    for (Hole hole : drilled.holes()) {
      Region round = round(hole);
      double common = Overlay.intersection(round, opening).area();
      boolean whole = common >= round.area() - CRUMB_AREA;
      if (common > CRUMB_AREA && !(whole && isFloor(hollow) && isDeeper(drilled, hollow))) {
        (!whole ? across : hollow.depth().isEmpty() ? gone : inside).add(place(hole.at()));
      }
    }
    String lie = " of " + drilled.name() + " lies in " + hollow.name();
    holes(gone, lie, ", where no wood stays: move it or leave it out.");
    holes(inside, lie, asked());
    holes(across, " of " + drilled.name() + " runs into " + hollow.name(), asked());
  }

  private void holes(List<String> places, String what, String advice) {
    if (!places.isEmpty()) {
      sentences.add(
          (places.size() == 1 ? "A hole" : "Each of " + places.size() + " holes")
              + what
              + String.join(" and", places)
              + advice);
    }
  }

  private void drilled(Operation a, Operation b) {
    for (Hole one : a.holes()) {
      for (Hole other : b.holes()) {
        double apart = one.at().distanceTo(other.at());
        boolean bored = apart <= SAME && Math.abs(one.diameter() - other.diameter()) > SAME;
        if (!bored && apart < (one.diameter() + other.diameter()) / 2 - SAME) {
          sentences.add(
              "Holes of "
                  + a.name()
                  + " and "
                  + b.name()
                  + " run into each other"
                  + place(one.at())
                  + asked());
        }
      }
    }
  }

  /** What has a floor that is screwed or bored through: not a mortise, which a tenon fills. */
  private static boolean isFloor(Hollow hollow) {
    return hollow.depth().isPresent()
        && (hollow instanceof Recess || hollow instanceof Ledge || hollow instanceof HingeLeaf);
  }

  /** Whether something is left for {@code a} to take below {@code b}. */
  private static boolean isDeeper(Operation a, Operation b) {
    OptionalDouble deep = a.depth();
    OptionalDouble over = b.depth();
    return over.isPresent()
        && (deep.isEmpty()
            || a.face() == b.face() && deep.getAsDouble() > over.getAsDouble() + SAME);
  }

  private String place(Point at) {
    return " near " + about(at.x()) + " from the left, " + about(at.y()) + " up";
  }

  private String about(double mm) {
    return Length.printRough(mm, units).replace("≈ ", "");
  }

  private static String asked() {
    return ": is that meant? Else move one.";
  }

  private static Point center(Region region) {
    return region.pieces().get(0).bounds().center();
  }

  private static Region region(Hollow hollow) {
    return Region.of(Outline.of(hollow.edge().contour().counterClockwise().loop()));
  }

  private static Region round(Hole hole) {
    return Region.of(Outline.of(Loop.of(Arc.circle(hole.at(), hole.diameter() / 2))));
  }
}
