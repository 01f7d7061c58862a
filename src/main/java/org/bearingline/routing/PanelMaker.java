package org.bearingline.routing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.part.Part;
import org.bearingline.wood.Movement;

/** Fits a panel: gaps, shape, seats, tongue, part. */
final class PanelMaker {

  private final FrameOpening opening;
  private final PanelSettings settings;
  private final Movement movement;
  private final Map<BoardSide, FrameSide> members;
  private final Map<BoardSide, Double> gaps = new EnumMap<>(BoardSide.class);
  private final List<PanelSeat> seats = new ArrayList<>();
  private double leastSeat = Double.POSITIVE_INFINITY;
  private double deepest;

  private PanelMaker(FrameOpening opening, PanelSettings settings) {
    this.opening = opening;
    this.settings = settings;
    this.movement =
        Movement.of(settings.species(), settings.cut(), settings.moisture(), settings.range());
    this.members = FrameSide.around(opening, settings.slot());
  }

  static Panel fit(String name, FrameOpening opening, PanelSettings settings) {
    return new PanelMaker(opening, settings).panel(name);
  }

  private Panel panel(String name) {
    PanelChecks checks = new PanelChecks(settings, movement);
    PanelGaps needed = new PanelGaps(opening, settings, movement);
    members.forEach((side, member) -> gaps.put(side, needed.of(member)));
    gaps.forEach(checks::checkGap);
    PanelShape shape = PanelShape.between(members, gaps);
    for (BoardSide side : BoardSide.values()) {
      measure(shape, side);
    }
    seats.forEach(checks::checkSeat);
    Optional<Tongue> tongue = tongue(checks);
    Part part = PanelPart.of(name, opening, settings, shape, tongue);
    return new Panel(
        opening,
        settings,
        movement,
        Outline.of(shape.loop()),
        floors(),
        seats,
        tongue,
        part,
        checks.cautions(seats));
  }

  private void measure(PanelShape shape, BoardSide side) {
    Point across = settings.fibres().across();
    PanelFit fit =
        new PanelFit(shape.on(side), members.get(side), PanelGaps.middle(opening), across);
    PanelFit.Extremes driest = fit.driest(movement);
    PanelFit.Extremes dampest = fit.dampest(movement);
    leastSeat = Math.min(leastSeat, driest.seat());
    deepest = Math.max(deepest, dampest.deepest());
    seats.add(
        new PanelSeat(side, gaps.get(side), driest.fit(), fit.assembled().fit(), dampest.fit()));
  }

  private List<Path> floors() {
    Map<BoardSide, Double> none = new EnumMap<>(BoardSide.class);
    for (BoardSide side : BoardSide.values()) {
      none.put(side, 0.0);
    }
    PanelShape grown = PanelShape.between(members, none);
    List<Path> floors = new ArrayList<>();
    for (BoardSide side : BoardSide.values()) {
      floors.add(new Path(grown.on(side)));
    }
    return floors;
  }

  private Optional<Tongue> tongue(PanelChecks checks) {
    if (!checks.needsTongue()) {
      return Optional.empty();
    }
    double thickness = settings.slot().thickness() - settings.slotFit();
    double width = deepest + settings.shoulderGap();
    return Optional.of(
        new Tongue(
            width,
            thickness,
            settings.thickness() - thickness,
            width - leastSeat,
            settings.shoulderGap()));
  }
}
