package org.bearingline.routing;

import java.util.Objects;
import java.util.OptionalDouble;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.wood.Cut;
import org.bearingline.wood.MoistureRange;
import org.bearingline.wood.Species;

/**
 * What the maker chooses for a panel; lengths in mm.
 *
 * @param slot what cuts the frame's groove
 * @param species the panel's wood or sheet
 * @param cut how its boards lie in the log; flat-sawn is the safe assumption
 * @param moisture of the panel when it is made and put in, percent
 * @param range the least and most it will hold later
 * @param fibres which way they run
 * @param thickness of the panel
 * @param alongGap room to the groove's floor at the ends of the fibres, and all round a sheet
 * @param startGap room left across the fibres when the panel is dampest
 * @param acrossGap room across the fibres at assembly, if the maker fixes it; empty to compute it
 * @param leastSeat least that must stay in the groove when the panel is driest
 * @param slotFit how much thinner than the slot the panel's edge is left
 * @param shoulderGap room between the tongue's shoulder and the frame's edge when dampest
 * @param units for the sentences
 */
public record PanelSettings(
    SlotCutter slot,
    Species species,
    Cut cut,
    double moisture,
    MoistureRange range,
    Fibres fibres,
    double thickness,
    double alongGap,
    double startGap,
    OptionalDouble acrossGap,
    double leastSeat,
    double slotFit,
    double shoulderGap,
    Units units) {

  public PanelSettings {
    Objects.requireNonNull(slot);
    Objects.requireNonNull(species);
    Objects.requireNonNull(cut);
    Objects.requireNonNull(range);
    Objects.requireNonNull(fibres);
    Objects.requireNonNull(acrossGap);
    Objects.requireNonNull(units);
    check("thickness", thickness);
    check("gap along the fibres", alongGap);
    check("start gap", startGap);
    check("gap across the fibres", acrossGap.orElse(0));
    check("least seat", leastSeat);
    check("fit in the slot", slotFit);
    check("gap at the shoulder", shoulderGap);
    if (thickness == 0) {
      throw new Problem(Place.field("thickness"), "a panel needs a thickness above 0");
    }
  }

  private static void check(String name, double mm) {
    if (!(mm >= 0 && mm <= Length.LARGEST)) {
      throw new Problem(
          Place.field(name), "a length from 0 to " + Length.LARGEST / 1000 + " m is wanted");
    }
  }

  /** The usual choices, from the table of practice: flat-sawn with the fibres upright. */
  public static PanelSettings usual(
      SlotCutter slot,
      Species species,
      double thickness,
      double moisture,
      MoistureRange range,
      Units units) {
    Practice practice = Practice.of("panel.tsv");
    return new PanelSettings(
        slot,
        species,
        Cut.FLAT_SAWN,
        moisture,
        range,
        Fibres.UPRIGHT,
        thickness,
        practice.mm(species.solid() ? "along-gap" : "sheet-gap"),
        practice.mm("start-gap"),
        OptionalDouble.empty(),
        practice.mm("least-seat"),
        practice.mm("slot-fit"),
        practice.mm("shoulder-gap"),
        units);
  }

  public PanelSettings withCut(Cut other) {
    return new PanelSettings(
        slot,
        species,
        other,
        moisture,
        range,
        fibres,
        thickness,
        alongGap,
        startGap,
        acrossGap,
        leastSeat,
        slotFit,
        shoulderGap,
        units);
  }

  public PanelSettings withFibres(Fibres other) {
    return new PanelSettings(
        slot,
        species,
        cut,
        moisture,
        range,
        other,
        thickness,
        alongGap,
        startGap,
        acrossGap,
        leastSeat,
        slotFit,
        shoulderGap,
        units);
  }

  public PanelSettings withAlongGap(double mm) {
    return new PanelSettings(
        slot,
        species,
        cut,
        moisture,
        range,
        fibres,
        thickness,
        mm,
        startGap,
        acrossGap,
        leastSeat,
        slotFit,
        shoulderGap,
        units);
  }

  public PanelSettings withStartGap(double mm) {
    return new PanelSettings(
        slot,
        species,
        cut,
        moisture,
        range,
        fibres,
        thickness,
        alongGap,
        mm,
        acrossGap,
        leastSeat,
        slotFit,
        shoulderGap,
        units);
  }

  public PanelSettings withAcrossGap(double mm) {
    return new PanelSettings(
        slot,
        species,
        cut,
        moisture,
        range,
        fibres,
        thickness,
        alongGap,
        startGap,
        OptionalDouble.of(mm),
        leastSeat,
        slotFit,
        shoulderGap,
        units);
  }

  public PanelSettings withLeastSeat(double mm) {
    return new PanelSettings(
        slot,
        species,
        cut,
        moisture,
        range,
        fibres,
        thickness,
        alongGap,
        startGap,
        acrossGap,
        mm,
        slotFit,
        shoulderGap,
        units);
  }
}
