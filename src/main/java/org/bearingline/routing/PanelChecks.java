package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.wood.Movement;

/** Refuses a panel that falls out, bursts its frame or cannot move, and tells what would help. */
final class PanelChecks {

  /** Room for rounding, mm. */
  private static final double ROUNDING = 1e-6;

  private final PanelSettings settings;
  private final Movement movement;
  private final Units units;
  private final double depth;

  PanelChecks(PanelSettings settings, Movement movement) {
    this.settings = settings;
    this.movement = movement;
    this.units = settings.units();
    this.depth = settings.slot().depth();
  }

  /** Before there is a shape: with such a gap something of the panel must be in the groove. */
  void checkGap(BoardSide side, double gap) {
    if (moves() && gap <= ROUNDING) {
      throw noRoom(side);
    }
    if (gap >= depth - ROUNDING) {
      throw new Problem(
          Place.field("groove"),
          "the panel needs a gap of "
              + Length.printAtLeast(gap, units)
              + " at the "
              + side.word()
              + " to move in and the groove is only "
              + Length.print(depth, units)
              + " deep, so nothing of it would be held; make the groove at least "
              + Length.printAtLeast(gap + settings.leastSeat(), units)
              + " deep"
              + orLessMovement());
    }
  }

  void checkSeat(PanelSeat seat) {
    if (seat.dampest().gap() < -ROUNDING) {
      throw new Problem(
          Place.field("gap"),
          "the panel would push the frame apart at the "
              + seat.side().word()
              + ": when dampest it wants "
              + Length.printAtLeast(-seat.dampest().gap(), units)
              + " more than its groove has; leave a gap of at least "
              + Length.printAtLeast(seat.gap() - seat.dampest().gap() + settings.startGap(), units)
              + " there when it is put in");
    }
    if (moves() && seat.dampest().gap() <= ROUNDING) {
      throw noRoom(seat.side());
    }
    double driest = seat.driest().seat();
    if (driest < settings.leastSeat() - ROUNDING) {
      throw fallsOut(seat, driest);
    }
  }

  private boolean moves() {
    return movement.growth() + movement.shrink() > 0;
  }

  private Problem noRoom(BoardSide side) {
    return new Problem(
        Place.field("gap"),
        "the panel cannot move at the "
            + side.word()
            + ": no gap is left to the floor of the groove; leave at least "
            + Length.printAtLeast(settings.startGap(), units)
            + " more");
  }

  private Problem fallsOut(PanelSeat seat, double driest) {
    String held =
        driest <= 0
            ? "the panel falls out of its groove at the " + seat.side().word() + " when driest"
            : "the panel is held by only "
                + Length.print(driest, units)
                + " at the "
                + seat.side().word()
                + " when driest, less than "
                + Length.print(settings.leastSeat(), units);
    // A wider panel moves more, in proportion.
    double missing = (settings.leastSeat() - driest) * (1 + movement.growth() + movement.shrink());
    return new Problem(
        Place.field("groove"),
        held
            + "; make the groove at least "
            + Length.printAtLeast(depth + missing, units)
            + " deep"
            + orLessMovement());
  }

  private String orLessMovement() {
    return moves() ? ", narrow the humidity range, or take quarter-sawn wood or plywood" : "";
  }

  /** Whether the panel's edge must be thinned; fails where nothing of it would be left. */
  boolean needsTongue() {
    double slot = settings.slot().thickness();
    if (settings.slotFit() >= slot) {
      throw new Problem(
          Place.field("fit in the slot"),
          "a slot "
              + Length.print(slot, units)
              + " wide leaves nothing for a tongue "
              + Length.print(settings.slotFit(), units)
              + " thinner; make the fit closer");
    }
    return settings.thickness() > slot + ROUNDING;
  }

  List<String> cautions(List<PanelSeat> seats) {
    List<String> cautions = new ArrayList<>();
    double loose = settings.slot().thickness() - settings.thickness();
    if (loose > Practice.of("panel.tsv").mm("loose-panel")) {
      cautions.add(
          "The panel is "
              + Length.print(loose, units)
              + " thinner than its slot and would rattle: cut a narrower slot or pack it out.");
    }
    for (PanelSeat seat : seats) {
      double lost = depth - seat.gap() - seat.assembled().seat();
      if (lost > ROUNDING) {
        cautions.add(
            "At the "
                + seat.side().word()
                + " the slot cutter's bearing cannot follow the rail everywhere; the panel sits "
                + Length.print(lost, units)
                + " less deep there. A smaller bearing with a smaller cutter mends it.");
      }
    }
    return cautions;
  }
}
