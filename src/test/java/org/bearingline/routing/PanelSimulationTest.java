package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.part.Part;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Panels in frames made of dots: each rail and stile is grooved by the router on the grid, the
 * panel's dots are swollen or shrunk about the middle, and how far they sit in the wood and stay
 * off the floors is counted there. Nothing of the panel's own arithmetic is used.
 */
class PanelSimulationTest {

  private static final double PITCH = 0.25;

  /** Each of two edges may lie up to a dot off, mm. */
  private static final double SLACK = 2.1 * PITCH;

  private static final double TENON = 1.25 * Frames.INCH;
  private static final double WIDE = 7 * Frames.INCH;
  private static final double HIGH = 5 * Frames.INCH;

  private static Part rail(String rise, String flat) {
    return Frames.shape(
        "arched-door-rail", "opening", "7in", "rise", rise, "flat", flat, "width", "6in");
  }

  @TestFactory
  Stream<DynamicTest> panelsSitAsTold() {
    Optional<Part> low = Optional.of(rail("1in", "1/2in"));
    Optional<Part> round = Optional.of(rail("3in", "1/2in"));
    Optional<Part> none = Optional.empty();
    PanelSettings oak = Frames.solid("white oak", 10, 4, 18);
    PanelSettings beech = Frames.solid("american beech", 9, 6, 16);
    return Stream.of(
        test("round top, beech", round, none, beech),
        test("arched both ends", low, round, oak),
        test("round bottom", none, round, oak),
        test("arched top, level fibres", low, none, oak.withFibres(Fibres.LEVEL)),
        test("round top, plywood", round, none, Frames.plywood()));
  }

  private static DynamicTest test(
      String name, Optional<Part> top, Optional<Part> bottom, PanelSettings settings) {
    return DynamicTest.dynamicTest(name, () -> check(top, bottom, settings));
  }

  private static void check(Optional<Part> top, Optional<Part> bottom, PanelSettings settings) {
    Panel panel = Panel.fit("panel", FrameOpening.of(WIDE, HIGH, top, bottom, Units.MM), settings);
    BitmapRouter grid = new BitmapRouter(new Bounds(-45, -110, WIDE + 45, HIGH + 110), PITCH);
    Map<BoardSide, boolean[]> wood = new EnumMap<>(BoardSide.class);
    wood.put(BoardSide.LEFT, grid.dotsWhere(p -> p.x() < 0));
    wood.put(BoardSide.RIGHT, grid.dotsWhere(p -> p.x() > WIDE));
    wood.put(BoardSide.TOP, grid.dotsWhere(p -> isRail(top, new Point(p.x(), p.y() - HIGH))));
    wood.put(
        BoardSide.BOTTOM, grid.dotsWhere(p -> isRail(bottom, new Point(WIDE - p.x(), -p.y()))));
    Map<BoardSide, boolean[]> floors = new EnumMap<>(BoardSide.class);
    Map<BoardSide, double[]> depths = new EnumMap<>(BoardSide.class);
    wood.forEach(
        (side, member) -> {
          floors.put(
              side,
              grid.left(member, Frames.SLOT.bearing().radius(), Frames.SLOT.cutter().radius()));
          depths.put(side, grid.distances(BitmapRouter.not(member)));
        });
    for (State state : State.values()) {
      boolean[] moved = moved(grid, panel, state.change(panel));
      double[] off = grid.distances(moved);
      for (PanelSeat seat : panel.seats()) {
        PanelSeat.Fit told = state.fit(seat);
        String words = state + " " + seat;
        assertEquals(told.gap(), least(off, floors.get(seat.side())), SLACK, words);
        // Wood beside the opening that the panel does not reach lies deeper than the seat.
        boolean[] bare = bare(grid, seat.side(), wood.get(seat.side()), moved);
        assertEquals(told.seat(), least(depths.get(seat.side()), bare), SLACK, words);
      }
    }
  }

  private enum State {
    DRIEST,
    ASSEMBLED,
    DAMPEST;

    double change(Panel panel) {
      return switch (this) {
        case DRIEST -> -panel.movement().shrink();
        case ASSEMBLED -> 0;
        case DAMPEST -> panel.movement().growth();
      };
    }

    PanelSeat.Fit fit(PanelSeat seat) {
      return switch (this) {
        case DRIEST -> seat.driest();
        case ASSEMBLED -> seat.assembled();
        case DAMPEST -> seat.dampest();
      };
    }
  }

  private static double least(double[] distances, boolean[] where) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < distances.length; i++) {
      if (where[i]) {
        least = Math.min(least, distances[i]);
      }
    }
    return least;
  }

  private static boolean[] bare(
      BitmapRouter grid, BoardSide side, boolean[] wood, boolean[] panel) {
    boolean[] bare = new boolean[wood.length];
    for (int i = 0; i < wood.length; i++) {
      bare[i] = wood[i] && !panel[i] && isBeside(side, grid.at(i));
    }
    return bare;
  }

  /** A rail standing on the level y = 0 with its shoulders at x = 0 and WIDE. */
  private static boolean isRail(Optional<Part> rail, Point p) {
    if (rail.isEmpty() || p.x() < -TENON || p.x() > WIDE + TENON) {
      return p.y() > 0;
    }
    Outline drawn = rail.get().outline();
    return p.y() > drawn.bounds().maxY() - 1 || drawn.contains(new Point(p.x() + TENON, p.y()));
  }

  private static boolean[] moved(BitmapRouter grid, Panel panel, double change) {
    boolean upright = panel.settings().fibres() == Fibres.UPRIGHT;
    double x = upright ? 1 + change : 1;
    double y = upright ? 1 : 1 + change;
    return grid.dotsWhere(
        p ->
            panel
                .outline()
                .contains(
                    new Point(
                        WIDE / 2 + (p.x() - WIDE / 2) / x, HIGH / 2 + (p.y() - HIGH / 2) / y)));
  }

  private static boolean isBeside(BoardSide side, Point p) {
    return side == BoardSide.LEFT || side == BoardSide.RIGHT
        ? p.y() > 0 && p.y() < HIGH
        : p.x() > 0 && p.x() < WIDE;
  }
}
