package org.bearingline.routing;

/**
 * How one side of a panel sits in its groove.
 *
 * @param side of the frame
 * @param gap mm left to the groove's floor by design, at assembly
 * @param driest how it sits when driest
 * @param assembled when it is put in
 * @param dampest when dampest
 */
public record PanelSeat(BoardSide side, double gap, Fit driest, Fit assembled, Fit dampest) {

  /**
   * How a side sits at one moisture.
   *
   * @param seat least mm of the panel inside the groove, square to the frame's edge; negative where
   *     it is out
   * @param gap least mm between the panel and the groove's floor; negative where it would push
   */
  public record Fit(double seat, double gap) {}
}
