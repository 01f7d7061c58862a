package org.bearingline.routing;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.part.Part;
import org.bearingline.wood.Movement;

/**
 * The panel of a frame: the frame's opening grown by the depth of the groove less the gap that each
 * side needs, so that it stays in the groove when driest and does not push when dampest.
 *
 * @param opening the hole it fills
 * @param settings what the maker chose
 * @param movement across the fibres
 * @param outline the panel in the frame's place, mm
 * @param floors of the frame's grooves in the frame's place: top, bottom, left, right
 * @param seats one for each side
 * @param tongue empty where the panel is no thicker than the slot
 * @param part the panel as a piece to make, its fibres along x: rails' curves routed, straights
 *     sawn
 * @param cautions sentences for the maker
 */
public record Panel(
    FrameOpening opening,
    PanelSettings settings,
    Movement movement,
    Outline outline,
    List<Path> floors,
    List<PanelSeat> seats,
    Optional<Tongue> tongue,
    Part part,
    List<String> cautions) {

  public Panel {
    floors = List.copyOf(floors);
    seats = List.copyOf(seats);
    cautions = List.copyOf(cautions);
  }

  /** mm from side to side as it stands in the frame, at assembly. */
  public double width() {
    return outline.bounds().width();
  }

  /** mm from top to bottom as it stands in the frame, at its highest. */
  public double height() {
    return outline.bounds().height();
  }

  public PanelSeat seat(BoardSide side) {
    return seats.stream().filter(seat -> seat.side() == side).findFirst().orElseThrow();
  }

  /**
   * Fits a panel to an opening.
   *
   * @param name of the part
   * @throws org.bearingline.problem.Problem where it would fall out when driest, burst the frame
   *     when dampest, has no room to move, or the groove's bearing cannot follow a rail's edge
   */
  public static Panel fit(String name, FrameOpening opening, PanelSettings settings) {
    return PanelMaker.fit(name, opening, settings);
  }
}
