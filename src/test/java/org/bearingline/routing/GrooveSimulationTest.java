package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Part;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Grooves against the router on a grid of dots: the bearing goes wherever it finds no dot of the
 * part nearer than its radius, and the cutter takes what is nearer to that than its own. A stopped
 * groove is cut from the centres beside the stretch between the stops only.
 */
class GrooveSimulationTest {

  private static final double PITCH = 0.2;

  /** A strip of dots along an edge that the grid cannot decide, in dots. */
  private static final double UNDECIDED = 1.5;

  private static SlotCutter tool(double cutter, double bearing) {
    return new SlotCutter(new Cutter(cutter), new Follower.Bearing(bearing), 5);
  }

  /** An outside edge with hollows tighter than any bearing used here. */
  private static Part scalloped() {
    return Walk.from(-90, -70, 0)
        .ahead(60)
        .arc(14, -70)
        .arc(9, 130)
        .arc(20, -60)
        .ahead(70)
        .turn(70)
        .ahead(60)
        .turn(50)
        .arc(40, 60)
        .arc(11, -85)
        .ahead(20)
        .turn(95)
        .to(-95, 75)
        .part("scalloped");
  }

  @TestFactory
  Stream<DynamicTest> throughGrooves() {
    return Stream.of(tool(34, 22), tool(30, 12), tool(47.625, 28.575))
        .flatMap(
            tool ->
                Stream.of(
                    test("scalloped", tool, () -> allRound(scalloped(), tool)),
                    test("opening", tool, () -> opening(14, tool)),
                    test("tight opening", tool, () -> opening(4, tool)),
                    test("lift rail", tool, () -> alongRail(Parts.liftRail(30), tool, -1, -1))));
  }

  @TestFactory
  Stream<DynamicTest> stoppedGrooves() {
    return Stream.of(tool(34, 22), tool(47.625, 28.575))
        .flatMap(
            tool ->
                Stream.of(
                    test(
                        "on the straights",
                        tool,
                        () -> alongRail(Parts.liftRail(30), tool, 55, 70)),
                    test(
                        "in the curves", tool, () -> alongRail(Parts.liftRail(30), tool, 118, 150)),
                    test(
                        "out at the end",
                        tool,
                        () -> alongRail(Parts.liftRail(30), tool, 6, 260))));
  }

  private interface Check {
    void run();
  }

  private static DynamicTest test(String name, SlotCutter tool, Check check) {
    return DynamicTest.dynamicTest(
        name + ", " + tool.cutter().diameter() + " on " + tool.bearing().diameter(), check::run);
  }

  private static void allRound(Part part, SlotCutter tool) {
    Groove groove = Groove.along(part, tool, GrooveExtent.through(), Units.MM);
    Outline wood = part.outline();
    double room = tool.cutter().diameter() + 2;
    BitmapRouter grid = new BitmapRouter(wood.bounds().grown(room), PITCH);
    boolean[] left = grid.left(grid.dots(wood), tool.bearing().radius(), tool.cutter().radius());
    compare(grid, left, Outline.of(loop(groove)), wood.length());
    checkDepths(grid, left, groove, List.of(part.contour().loop()));
  }

  private static void opening(double radius, SlotCutter tool) {
    Part part = Parts.boardWith(Parts.roundedRectangle(130, 80, radius));
    Groove groove = Groove.along(part, tool, GrooveExtent.through().alongEdge("opening"), Units.MM);
    Outline wood = part.outline();
    BitmapRouter grid = new BitmapRouter(wood.bounds(), PITCH);
    boolean[] left = grid.left(grid.dots(wood), tool.bearing().radius(), tool.cutter().radius());
    // The bearing also goes where the board ends: only dots round the opening are compared.
    Outline near = Outline.of(Loop.rectangle(new Bounds(-100, -70, 100, 70)));
    boolean[] inside = grid.dots(near);
    boolean[] grooved = grid.dots(Outline.of(loop(groove)));
    boolean[] kept = new boolean[left.length];
    for (int i = 0; i < left.length; i++) {
      kept[i] = inside[i] && !grooved[i];
      left[i] &= inside[i];
    }
    double slack = UNDECIDED * PITCH * groove.runs().get(0).floor().length();
    assertTrue(grid.areaWithout(kept, left, near) < slack);
    assertTrue(grid.areaWithout(left, kept, near) < slack);
    farFrom(grid, kept, left, loop(groove));
    checkDepths(grid, left, groove, List.of(part.cavities().get(0).contour().loop()));
  }

  /** The lower edge of a rail; stops of less than 0 run through. */
  private static void alongRail(Part part, SlotCutter tool, double from, double back) {
    GrooveExtent extent = GrooveExtent.through();
    if (from >= 0) {
      extent = extent.stopped(from, back);
    }
    GrooveRun run = Groove.along(part, tool, extent, Units.MM).runs().get(0);
    Outline wood = part.outline();
    List<Primitive> edge = part.contour().loop().primitives().stream().limit(7).toList();
    double length = edge.stream().mapToDouble(Primitive::length).sum();
    // The grid's wood goes on level past both ends, as the maker feeds the router.
    Bounds box = wood.bounds();
    double past = tool.cutter().diameter();
    BitmapRouter grid =
        new BitmapRouter(
            new Bounds(box.minX() - past, box.minY() - past, box.maxX() + past, box.maxY()), PITCH);
    boolean[] ridden = grid.dots(longer(part, edge, past));
    boolean[] blocked = grid.near(ridden, tool.bearing().radius());
    boolean[] centres = BitmapRouter.not(blocked);
    if (from >= 0) {
      between(grid, centres, edge, from, length - back);
    }
    boolean[] cut = grid.near(centres, tool.cutter().radius());
    boolean[] stock = grid.dots(wood);
    boolean[] left = new boolean[cut.length];
    for (int i = 0; i < cut.length; i++) {
      left[i] = stock[i] && !cut[i];
    }
    List<Primitive> round = new ArrayList<>(run.floor().primitives());
    Point first = round.get(0).start();
    Point last = round.get(round.size() - 1).end();
    closeBehind(round, part, edge, first, last);
    compareIn(grid, left, new Loop(round), wood);
  }

  /** From the floor's end along the part's other edges, and the edge left whole, to its start. */
  private static void closeBehind(
      List<Primitive> round, Part part, List<Primitive> edge, Point first, Point last) {
    Walker walker = new Walker(round);
    double end = 0;
    int at = 0;
    double least = Double.POSITIVE_INFINITY;
    List<Primitive> whole = part.contour().loop().primitives();
    for (int i = 0; i < whole.size(); i++) {
      if (whole.get(i).distanceTo(last) < least) {
        least = whole.get(i).distanceTo(last);
        at = i;
        end = whole.get(i).nearestShare(last);
      }
    }
    assertEquals(0, least, 1e-6);
    walker.add(whole.get(at), end, 1);
    int n = whole.size();
    for (int i = 1; i <= n; i++) {
      Primitive piece = whole.get((at + i) % n);
      if (piece.distanceTo(first) < 1e-6) {
        walker.add(piece, 0, piece.nearestShare(first));
        return;
      }
      walker.add(piece, 0, 1);
    }
    throw new AssertionError("the floor starts off the edge");
  }

  private record Walker(List<Primitive> pieces) {
    void add(Primitive piece, double from, double to) {
      if (to - from > 1e-9) {
        Point start = pieces.get(pieces.size() - 1).end();
        Primitive part = piece.part(from, to);
        pieces.add(part.withEnds(start, part.end()));
      }
    }
  }

  private static Outline longer(Part part, List<Primitive> edge, double past) {
    List<Primitive> pieces = new ArrayList<>();
    Bounds box = part.contour().loop().bounds();
    Point start = edge.get(0).start();
    Point end = edge.get(edge.size() - 1).end();
    Point left = new Point(start.x() - 2 * past, start.y());
    Point right = new Point(end.x() + 2 * past, end.y());
    pieces.add(new Line(left, start));
    pieces.addAll(edge);
    pieces.add(new Line(end, right));
    Point highRight = new Point(right.x(), box.maxY() + past);
    Point highLeft = new Point(left.x(), box.maxY() + past);
    pieces.add(new Line(right, highRight));
    pieces.add(new Line(highRight, highLeft));
    pieces.add(new Line(highLeft, left));
    return Outline.of(new Loop(pieces));
  }

  /** Keeps the centres whose nearest place of the edge lies between the stops. */
  private static void between(
      BitmapRouter grid, boolean[] centres, List<Primitive> edge, double from, double until) {
    for (int i = 0; i < centres.length; i++) {
      if (centres[i]) {
        double place = placeOf(edge, grid.at(i));
        centres[i] = place >= from && place <= until;
      }
    }
  }

  private static double placeOf(List<Primitive> edge, Point p) {
    double before = 0;
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (Primitive piece : edge) {
      double share = piece.nearestShare(p);
      double distance = piece.pointAt(share).distanceTo(p);
      if (distance < least) {
        least = distance;
        best = before + share * piece.length();
      }
      before += piece.length();
    }
    return best;
  }

  private static Loop loop(Groove groove) {
    assertEquals(1, groove.runs().size());
    return new Loop(groove.runs().get(0).floor().primitives());
  }

  private static void compare(BitmapRouter grid, boolean[] left, Outline floor, double length) {
    boolean[] told = grid.dots(floor);
    double slack = UNDECIDED * PITCH * length;
    Outline all = Outline.of(Loop.rectangle(floor.bounds().grown(50)));
    assertTrue(grid.areaWithout(told, left, all) < slack);
    assertTrue(grid.areaWithout(left, told, all) < slack);
    farFrom(grid, told, left, floor.outer());
  }

  private static void compareIn(BitmapRouter grid, boolean[] left, Loop floor, Outline wood) {
    boolean[] told = grid.dots(Outline.of(floor));
    farFrom(grid, told, left, floor);
    double area = Math.abs(floor.signedArea());
    assertTrue(area < wood.area());
  }

  /** No dot disagrees farther from the told floor than the grid is coarse. */
  private static void farFrom(BitmapRouter grid, boolean[] told, boolean[] left, Loop floor) {
    int compared = 0;
    for (int i = 0; i < told.length; i++) {
      compared += left[i] ? 1 : 0;
      if (told[i] != left[i]) {
        Point p = grid.at(i);
        double off = floor.distanceTo(p);
        assertTrue(off <= UNDECIDED * PITCH, p + " is " + off + " mm off");
      }
    }
    assertTrue(compared > 1000);
  }

  /** The least depth told is the least distance from the edge to what is left. */
  private static void checkDepths(
      BitmapRouter grid, boolean[] left, Groove groove, List<Loop> edges) {
    double least = Double.POSITIVE_INFINITY;
    double around = groove.depthWanted() + 1;
    for (int i = 0; i < left.length; i++) {
      if (left[i]) {
        double distance = edges.get(0).distanceTo(grid.at(i));
        if (distance < around) {
          least = Math.min(least, distance);
        }
      }
    }
    assertEquals(groove.leastDepth(), least, UNDECIDED * PITCH);
  }
}
