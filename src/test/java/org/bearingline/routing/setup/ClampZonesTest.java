package org.bearingline.routing.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.junit.jupiter.api.Test;

/**
 * Clamp zones against a base that is moved along the paths in small steps over a grid of points.
 */
class ClampZonesTest {

  private static final ClampSettings SMALL = new ClampSettings(90, 5, 24);

  /** mm between points of the grid. */
  private static final double STEP = 2;

  /** mm between places of the base. */
  private static final double BASES = 1.5;

  private static Outline board(double width, double height) {
    return Outline.of(Loop.rectangle(new Bounds(0, 0, width, height)));
  }

  @Test
  void aStraightRunLeavesTheRestOfTheBoard() {
    // Path along the lower edge 10 below it: base 45 + 5 of room reach 40 up the board.
    Path path = Path.of(new Line(new Point(-100, -10), new Point(500, -10)));
    ClampZones zones = ClampZones.of(board(400, 200), List.of(path), SMALL, Units.MM);
    assertEquals(1, zones.zones().size());
    Bounds box = zones.zones().get(0).outline().bounds();
    assertEquals(40, box.minY(), 1e-6);
    assertEquals(200, box.maxY(), 1e-6);
    // The foot is round, so it leaves out the corners: 4 corners of radius 12.
    assertEquals(400 * 160 - (4 - Math.PI) * 12 * 12, zones.zones().get(0).outline().area(), 1e-3);
    assertTrue(zones.zones().get(0).reachesEdge());
    assertTrue(zones.sentences().get(0).startsWith("Clamps may stand in zone 1"));
  }

  @Test
  void routedAllRoundOnlyTapeHoldsInTheMiddle() {
    Loop round = Loop.rectangle(new Bounds(-6, -6, 406, 306));
    ClampZones zones = ClampZones.of(board(400, 300), List.of(Path.of(round)), SMALL, Units.MM);
    assertEquals(1, zones.zones().size());
    assertTrue(!zones.zones().get(0).reachesEdge());
    assertEquals(312 - 100, zones.zones().get(0).outline().bounds().height(), 1e-6);
    assertTrue(zones.sentences().get(0).contains("double-sided tape"));
  }

  @Test
  void aSmallPlateHasNoZone() {
    Loop round = Loop.rectangle(new Bounds(-6, -6, 106, 86));
    ClampZones zones = ClampZones.of(board(100, 80), List.of(Path.of(round)), SMALL, Units.INCH);
    assertTrue(zones.zones().isEmpty());
    assertTrue(zones.sentences().get(0).contains("Nowhere"));
  }

  @Test
  void anArcSweepsWhatTheDiscOnItCovers() {
    // A wide arc, one as tight as the base and one far tighter, each with its straight.
    for (double radius : new double[] {150, 50, 12}) {
      Arc arc = Arc.around(new Point(120, 60), radius, -20, 205);
      Line on = new Line(arc.end(), arc.end().plus(arc.tangentAt(1).times(60)));
      compare(board(420, 320), List.of(Path.of(arc, on)), SMALL);
    }
  }

  @Test
  void severalRunsAgreeWithTheGrid() {
    Path opening = Path.of(Loop.of(Arc.circle(new Point(330, 120), 30).reversed()));
    Path rail =
        Path.of(
            new Line(new Point(-40, -8), new Point(90, -8)),
            new Arc(new Point(90, 32), 40, new Point(90, -8), new Point(130, 32), 90),
            new Line(new Point(130, 32), new Point(130, 60)));
    compare(board(480, 260), List.of(opening, rail), SMALL);
  }

  /** A foot may stand at c where c is a foot's radius inside the board and clear of all bases. */
  private static void compare(Outline board, List<Path> paths, ClampSettings settings) {
    ClampZones zones = ClampZones.of(board, paths, settings, Units.MM);
    Bounds box = board.bounds();
    double foot = settings.pad() / 2;
    double step = STEP;
    int wide = (int) (box.width() / step);
    int high = (int) (box.height() / step);
    double[][] room = new double[wide + 1][high + 1];
    for (int i = 0; i <= wide; i++) {
      for (int j = 0; j <= high; j++) {
        Point c = new Point(box.minX() + i * step, box.minY() + j * step);
        double clear = clearOf(paths, c) - settings.baseDiameter() / 2 - settings.clearance();
        room[i][j] = board.contains(c) ? Math.min(clear, board.distanceTo(c)) - foot : -1;
      }
    }
    int inside = 0;
    for (int i = 0; i <= wide; i += 4) {
      for (int j = 0; j <= high; j += 4) {
        Point p = new Point(box.minX() + i * step + 0.3, box.minY() + j * step + 0.2);
        boolean zoned = zones.zones().stream().anyMatch(zone -> zone.outline().contains(p));
        if (isCovered(room, i, j, foot - 1, 0.2)) {
          assertTrue(zoned, "a foot may stand over " + p);
          inside++;
        } else if (!isCovered(room, i, j, foot + 2.5, -2)) {
          assertTrue(!zoned, "no foot may stand over " + p);
        }
      }
    }
    assertTrue(inside > 50, "the case says something");
  }

  private static boolean isCovered(double[][] room, int i, int j, double reach, double atLeast) {
    int r = (int) Math.ceil(reach / STEP);
    for (int a = Math.max(0, i - r); a <= Math.min(room.length - 1, i + r); a++) {
      for (int b = Math.max(0, j - r); b <= Math.min(room[0].length - 1, j + r); b++) {
        if (room[a][b] >= atLeast && STEP * Math.hypot(a - i, b - j) <= reach) {
          return true;
        }
      }
    }
    return false;
  }

  /** The base stands at points a little apart. */
  private static double clearOf(List<Path> paths, Point c) {
    double least = Double.POSITIVE_INFINITY;
    for (Path path : paths) {
      for (Primitive piece : path.primitives()) {
        int count = (int) Math.ceil(piece.length() / BASES);
        for (int k = 0; k <= count; k++) {
          least = Math.min(least, piece.pointAt((double) k / count).distanceTo(c));
        }
      }
    }
    return least;
  }
}
