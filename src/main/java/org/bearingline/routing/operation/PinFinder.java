package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Line;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.routing.Practice;

/**
 * Finds two places for pins that every template of a part has: in holes that the part has anyhow,
 * or behind its sawn edges, in the templates' margin and the work's waste.
 */
final class PinFinder {

  /** Pins nearer together than this, in mm, hold a plate badly. */
  private static final double NEAREST = 60;

  /** Two points nearer than this, in mm, are one. */
  private static final double SAME = 0.5;

  private final Part part;
  private final List<Outline> plates;
  private final Optional<Similarity> lopsided;
  private final Units units;
  private final Practice facts = Facts.shipped();

  /**
   * @param lopsided the mirror in which the pins had better not be their own image, so that a plate
   *     fits one side up only; empty for a symmetrical part
   * @param units for the sentences
   */
  PinFinder(Part part, List<Outline> plates, Optional<Similarity> lopsided, Units units) {
    this.part = part;
    this.plates = plates;
    this.lopsided = lopsided;
    this.units = units;
  }

  /** Two of the part's own holes of one diameter. */
  Optional<Registration.Pins> inOwnHoles() {
    List<Mark.DrillCentre> holes = new ArrayList<>();
    for (Mark mark : part.marks()) {
      if (mark instanceof Mark.DrillCentre hole && isInPlates(hole.at(), hole.diameter() / 2)) {
        holes.add(hole);
      }
    }
    for (Mark.DrillCentre first : holes) {
      List<Point> alike =
          holes.stream()
              .filter(hole -> hole.diameter() == first.diameter())
              .map(Mark.DrillCentre::at)
              .toList();
      Optional<List<Point>> pair = farthest(alike);
      if (pair.isPresent()) {
        return Optional.of(
            new Registration.Pins(
                pair.get(),
                first.diameter(),
                List.of(
                    "Drill two of the part's own "
                        + Length.print(first.diameter(), units)
                        + " holes right through first, square to the face, and through every"
                        + " template: pins in them locate the templates on both faces.")));
      }
    }
    return Optional.empty();
  }

  /** Two places behind sawn edges. */
  Optional<Registration.Pins> inWaste() {
    double behind = facts.mm("pin-from-edge");
    double radius = facts.mm("pin-diameter") / 2;
    double fromEnd = facts.mm("pin-from-end");
    List<Point> places = new ArrayList<>();
    for (Line side : SawnSides.of(part)) {
      Point out = SawnSides.outward(side).times(behind);
      for (double at :
          new double[] {
            fromEnd,
            2 * fromEnd,
            side.length() / 2,
            side.length() - 2 * fromEnd,
            side.length() - fromEnd
          }) {
        if (at >= fromEnd / 2 && at <= side.length() - fromEnd / 2) {
          Point p = side.pointAt(at / side.length()).plus(out);
          if (isInPlates(p, radius) && isBehind(p, behind)) {
            places.add(p);
          }
        }
      }
    }
    return farthest(places)
        .map(pair -> new Registration.Pins(pair, 2 * radius, wasteWords(pair, behind, radius)));
  }

  private List<String> wasteWords(List<Point> pair, double behind, double radius) {
    List<String> sides = new ArrayList<>();
    for (Point pin : pair) {
      String word =
          SawnSides.word(
              SawnSides.of(part).stream()
                  .min(Comparator.comparingDouble(side -> side.distanceTo(pin)))
                  .orElseThrow());
      if (!sides.contains(word)) {
        sides.add(word);
      }
    }
    return List.of(
        "Leave the work at least "
            + Length.printAtLeast(behind + radius + facts.mm("pin-waste"), units)
            + " wider beyond its "
            + Sentences.list(sides)
            + (sides.size() == 1 ? " edge" : " edges")
            + " until both faces are worked, and saw to the line last.",
        "Drill the two "
            + Length.print(2 * radius, units)
            + " pin holes square through every template and through that waste: pins in them locate"
            + " the templates on both faces.");
  }

  /** Pins of the mirror image of another part, told of as they lie on this one. */
  Registration.Pins retold(Registration.Pins pins) {
    boolean inOwnHoles = part.contour().loop().contains(pins.centres().get(0));
    return inOwnHoles
        ? pins
        : new Registration.Pins(
            pins.centres(),
            pins.diameter(),
            wasteWords(pins.centres(), facts.mm("pin-from-edge"), pins.diameter() / 2));
  }

  private boolean isInPlates(Point p, double radius) {
    double clear = radius + facts.mm("pin-waste");
    return plates.stream().allMatch(plate -> plate.contains(p) && plate.distanceTo(p) >= clear);
  }

  private boolean isBehind(Point p, double behind) {
    return !part.contour().loop().contains(p)
        && part.contour().loop().distanceTo(p) > behind - SAME;
  }

  /** The pair farthest apart; one that is not its own mirror image goes before one that is. */
  private Optional<List<Point>> farthest(List<Point> places) {
    List<Point> best = List.of();
    double most = NEAREST;
    boolean bestIsEven = true;
    for (int i = 0; i < places.size(); i++) {
      for (int j = i + 1; j < places.size(); j++) {
        double distance = places.get(i).distanceTo(places.get(j));
        boolean even = isEven(places.get(i), places.get(j));
        boolean better = bestIsEven && !even || bestIsEven == even && distance > most + SAME;
        if (distance >= NEAREST && better) {
          best = List.of(places.get(i), places.get(j));
          most = distance;
          bestIsEven = even;
        }
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  private boolean isEven(Point a, Point b) {
    if (lopsided.isEmpty()) {
      return false;
    }
    Point imageOfA = lopsided.get().apply(a);
    Point imageOfB = lopsided.get().apply(b);
    return imageOfA.distanceTo(b) < SAME
        || imageOfA.distanceTo(a) < SAME && imageOfB.distanceTo(b) < SAME;
  }
}
