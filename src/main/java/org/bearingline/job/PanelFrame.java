package org.bearingline.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Problem;
import org.bearingline.routing.BoardSide;
import org.bearingline.routing.FrameMember;
import org.bearingline.routing.FrameOpening;
import org.bearingline.routing.GrooveExtent;
import org.bearingline.routing.StilePlace;
import org.bearingline.yaml.YamlNode;

/**
 * The parts that stand round one panel, as its block names them.
 *
 * @param node the panel's block
 * @param named the order of each side's part; none for a side that no part is named for
 * @param members likewise, with the edges that hold the panel
 * @param rightIsLeft whether the right stile is the mirror image of a part that is drawn as a left
 *     stile
 * @param units for sentences
 */
record PanelFrame(
    YamlNode node,
    Map<BoardSide, PartOrder> named,
    Map<BoardSide, FrameMember> members,
    boolean rightIsLeft,
    Units units) {

  private static final List<BoardSide> RAILS = List.of(BoardSide.TOP, BoardSide.BOTTOM);

  private static final List<BoardSide> STILES = List.of(BoardSide.LEFT, BoardSide.RIGHT);

  /** The field that names each side's part. */
  static String field(YamlNode node, BoardSide side) {
    if (STILES.contains(side) && node.optional("stiles").isPresent()) {
      return "stiles";
    }
    return side.word() + (STILES.contains(side) ? "-stile" : "-rail");
  }

  Optional<FrameMember> member(BoardSide side) {
    return Optional.ofNullable(members.get(side));
  }

  /** Whether one part is both stiles. */
  boolean oneStile() {
    return members.containsKey(BoardSide.LEFT)
        && named.get(BoardSide.LEFT).equals(named.get(BoardSide.RIGHT));
  }

  private boolean isMuntin(BoardSide side) {
    return member(side).filter(FrameMember::hasShoulders).isPresent();
  }

  FrameOpening opening(double width, double height, OptionalDouble written) {
    var top = member(BoardSide.TOP).map(FrameMember::grooved);
    var bottom = member(BoardSide.BOTTOM).map(FrameMember::grooved);
    OptionalDouble from = written.isPresent() ? written : from(width);
    return from.isPresent()
        ? FrameOpening.part(width, height, top, bottom, from.getAsDouble(), units)
        : FrameOpening.of(width, height, top, bottom, units);
  }

  /** mm along the rails to an opening beside a muntin; empty where it takes all of them. */
  private OptionalDouble from(double width) {
    boolean left = isMuntin(BoardSide.LEFT);
    boolean right = isMuntin(BoardSide.RIGHT);
    Optional<FrameMember> rail = member(BoardSide.TOP).or(() -> member(BoardSide.BOTTOM));
    if (!left && !right || rail.isEmpty()) {
      return OptionalDouble.empty();
    }
    double free = rail.get().between() - width;
    return OptionalDouble.of(left && right ? free / 2 : left ? free : 0);
  }

  /**
   * How far each member's groove runs: through along rails and muntins, stopped before the ends of
   * a stile.
   */
  Map<BoardSide, GrooveExtent> extents(FrameOpening opening, SlotCutter slot, boolean through) {
    Map<BoardSide, GrooveExtent> extents = new EnumMap<>(BoardSide.class);
    for (BoardSide side : RAILS) {
      member(side).ifPresent(rail -> extents.put(side, rail.extent()));
    }
    for (BoardSide side : STILES) {
      if (isMuntin(side)) {
        StilePlace.checkMuntin(members.get(side), height(opening, side), units);
        extents.put(side, members.get(side).extent());
      } else if (members.containsKey(side)) {
        StilePlace place = place(opening, side, slot);
        boolean left = isDrawnAsLeft(side);
        // Wood on its left, the inner edge of the left stile runs up, that of the right one down.
        extents.put(
            side,
            through
                ? members.get(side).extent()
                : members
                    .get(side)
                    .stopped(
                        OptionalDouble.of(left ? place.beforeFoot() : place.beforeHead()),
                        OptionalDouble.of(left ? place.beforeHead() : place.beforeFoot())));
      }
    }
    return extents;
  }

  private boolean isDrawnAsLeft(BoardSide side) {
    return side == BoardSide.LEFT || rightIsLeft;
  }

  private static double height(FrameOpening opening, BoardSide side) {
    return side == BoardSide.LEFT ? opening.height() : opening.heightRight();
  }

  private StilePlace place(FrameOpening opening, BoardSide side, SlotCutter slot) {
    return StilePlace.of(
        members.get(side),
        height(opening, side),
        new StilePlace.Known(foot(), width(BoardSide.BOTTOM, side), width(BoardSide.TOP, side)),
        slot,
        units);
  }

  private OptionalDouble foot() {
    Optional<YamlNode> written = node.optional("foot");
    if (written.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(Length.parse(written.get().text(), units));
    } catch (Problem problem) {
      throw problem.at(written.get().place());
    }
  }

  /** mm of a rail's wood at one stile. */
  private OptionalDouble width(BoardSide rail, BoardSide stile) {
    if (!members.containsKey(rail)) {
      return OptionalDouble.empty();
    }
    // Wood on its left, the top rail's edge runs to the right and the bottom rail's to the left.
    boolean atStart = (rail == BoardSide.TOP) == (stile == BoardSide.LEFT);
    FrameMember member = members.get(rail);
    return OptionalDouble.of(atStart ? member.widthAtStart() : member.widthAtEnd());
  }

  /** What the cards of the stiles say of where the opening lies, by the side of the frame. */
  Map<BoardSide, List<String>> notes(FrameOpening opening, SlotCutter slot, boolean through) {
    Map<BoardSide, List<String>> notes = new LinkedHashMap<>();
    for (BoardSide side : STILES) {
      if (members.containsKey(side) && !isMuntin(side)) {
        List<String> said =
            new ArrayList<>(
                place(opening, side, slot).sentences(slot, through, isDrawnAsLeft(side), units));
        if (rightIsLeft && (oneStile() || side == BoardSide.RIGHT)) {
          said.add(StilePlace.BOTH_HANDS);
        }
        notes.put(side, said);
      } else if (isMuntin(side) && railIsShaped(opening)) {
        notes.put(
            side, List.of("Scribe its shoulders to the curve of the rails: they are not square."));
      }
    }
    return notes;
  }

  private static boolean railIsShaped(FrameOpening opening) {
    return opening.top().shaped() || opening.bottom().shaped();
  }
}
