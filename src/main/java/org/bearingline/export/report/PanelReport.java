package org.bearingline.export.report;

import java.util.List;
import org.bearingline.outline.Bounds;

/**
 * How a panel sits in the grooves of its frame, as the field {@code panel} of a part; lengths in
 * mm, moisture in percent.
 *
 * @param opening width between the stiles and height at the left one
 * @param made width and height of the panel as it stands in the frame
 * @param grooveDepth from the frame's edge to the groove's floor
 * @param species of the panel
 * @param moves whether it moves with the seasons; false for a sheet
 * @param assembled moisture when it is put in
 * @param driest least moisture later
 * @param dampest most moisture later
 * @param shrinks mm of its width across the fibres, from put in to driest
 * @param swells likewise to dampest
 * @param leastSeat mm that must stay in the groove
 * @param seats one for each side
 */
public record PanelReport(
    Bounds opening,
    Bounds made,
    double grooveDepth,
    String species,
    boolean moves,
    double assembled,
    double driest,
    double dampest,
    double shrinks,
    double swells,
    double leastSeat,
    List<Seat> seats) {

  public PanelReport {
    seats = List.copyOf(seats);
  }

  /**
   * One side.
   *
   * @param side of the frame
   * @param driest how it sits when driest, and so the next two
   */
  public record Seat(String side, Fit driest, Fit assembled, Fit dampest) {}

  /**
   * At one moisture.
   *
   * @param held mm in the groove
   * @param gap mm to its floor
   */
  public record Fit(double held, double gap) {}
}
