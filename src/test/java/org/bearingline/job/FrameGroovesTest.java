package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.routing.Panel;
import org.bearingline.routing.operation.EdgeGroove;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The grooves of a whole frame against a simulation of its own: the cutter is set down wherever its
 * bearing touches the frame's edge, and what of the panel lies in a member's wood must lie under
 * the cutter. The frame's edge is written here as a formula, not taken from the parts.
 */
class FrameGroovesTest {

  /** Width and height between the members, rise of each arch and the flat beside it, mm. */
  private static final double WIDE = 383;

  private static final double HIGH = 611;
  private static final double RISE = 37;
  private static final double FLAT = 29;
  private static final double TENON = 31;

  /** Radii of the slot cutter and its bearing, mm: 11 deep. */
  private static final double CUTTER = 25;

  private static final double BEARING = 14;
  private static final double DEPTH = CUTTER - BEARING;

  /** Widths of the rails where they meet the stiles, mm. */
  private static final double TOP_RAIL = 93;

  private static final double BOTTOM_RAIL = 107;

  private static final double STEP = 0.25;

  private static final String JOB =
      """
      job: test
      units: mm
      stock: {thickness: 21, species: white oak}
      parts:
        - name: top-rail
          shape: arched-door-rail
          measures: {opening: 383, width: 93, rise: 37, flat: 29, tenon: 31}
        - name: bottom-rail
          shape: arched-door-rail
          measures: {opening: 383, width: 107, rise: 37, flat: 29, tenon: 31}
        - name: stile
          shape: straight-rail
          quantity: 2
          measures: {opening: 811, width: 64, tenon: 0}
      panels:
        - name: panel
          top-rail: top-rail
          bottom-rail: bottom-rail
          stiles: stile
          opening: {width: 383, height: 611}
          groove: {bit: 50, bearing: 28, width: 6.35}
          thickness: 6
          %s
      """;

  @TempDir Path folder;

  private List<PartOrder> orders(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("job.yaml"), text);
    return Source.orders(file.toString(), NOTHING);
  }

  private static final Wishes NOTHING = Wishes.NONE;

  private static PartOrder named(List<PartOrder> orders, String name) {
    return orders.stream().filter(order -> order.name().equals(name)).findFirst().orElseThrow();
  }

  private static EdgeGroove groove(List<PartOrder> orders, String name) {
    return named(orders, name).operations().grooves().get(0);
  }

  /** Height of the arch over its flats, from its chord and rise; 0 on the flats and tenons. */
  private static double arch(double x) {
    double span = WIDE - 2 * FLAT;
    double radius = (span * span / 4 + RISE * RISE) / (2 * RISE);
    double off = Math.abs(x - WIDE / 2);
    return off >= span / 2 ? 0 : Math.sqrt(radius * radius - off * off) - (radius - RISE);
  }

  /** Centres of the cutter along the top rail: above and below mirror each other. */
  private static List<Point> along(double from, double until) {
    List<Point> edge = new ArrayList<>();
    for (double x = from - 2 * CUTTER; x <= until + 2 * CUTTER; x += STEP / 4) {
      edge.add(new Point(x, arch(x)));
    }
    List<Point> centres = new ArrayList<>();
    for (double x = from - CUTTER; x <= until + CUTTER; x += STEP) {
      // The bearing comes up from below until it touches the wood.
      double y = Double.POSITIVE_INFINITY;
      for (Point p : edge) {
        double off = p.x() - x;
        if (Math.abs(off) <= BEARING) {
          y = Math.min(y, p.y() - Math.sqrt(BEARING * BEARING - off * off));
        }
      }
      centres.add(new Point(x, y));
    }
    return centres;
  }

  private static boolean isCut(Point p, List<Point> centres) {
    return centres.stream().anyMatch(c -> c.distanceTo(p) <= CUTTER + 1e-9);
  }

  private static List<Point> upright(double x, double low, double high) {
    List<Point> centres = new ArrayList<>();
    for (double y = low; y < high; y += STEP) {
      centres.add(new Point(x, y));
    }
    centres.add(new Point(x, high));
    return centres;
  }

  private static List<Point> moved(Panel panel, double change) {
    Point across = panel.settings().fibres().across();
    Point middle = new Point(WIDE / 2, HIGH / 2);
    List<Point> points = new ArrayList<>();
    for (Primitive piece : panel.outline().outer().primitives()) {
      for (int i = 0; i < 150; i++) {
        Point p = piece.pointAt(i / 150.0);
        points.add(p.plus(across.times(change * p.minus(middle).dot(across))));
      }
    }
    return points;
  }

  private void simulate(String wood) throws IOException {
    List<PartOrder> orders = orders(JOB.formatted(wood));
    Panel panel = ((PanelDesign) named(orders, "panel").shape()).panel();
    EdgeGroove stile = groove(orders, "stile");
    double low = stile.extent().fromStart().getAsDouble() - BOTTOM_RAIL;
    double high = 811 - stile.extent().fromEnd().getAsDouble() - BOTTOM_RAIL;
    List<Point> left = upright(BEARING, low, high);
    List<Point> right = upright(WIDE - BEARING, low, high);
    List<Point> rail = along(-TENON, WIDE + TENON);
    for (double change : new double[] {-panel.movement().shrink(), 0, panel.movement().growth()}) {
      for (Point p : moved(panel, change)) {
        // The stile's wood stands beside the opening from end to end.
        assertTrue(p.x() >= 0 || isCut(p, left), "left stile at " + p);
        assertTrue(p.x() <= WIDE || isCut(p, right), "right stile at " + p);
        Point onTop = new Point(p.x(), p.y() - HIGH);
        assertTrue(onTop.y() <= arch(p.x()) || isCut(onTop, rail), "top rail at " + p);
        Point onFoot = new Point(p.x(), -p.y());
        assertTrue(onFoot.y() <= arch(p.x()) || isCut(onFoot, rail), "bottom rail at " + p);
      }
    }
    held(panel);
  }

  /** Driest, every point of the panel's edge still lies beyond the frame's edge. */
  private static void held(Panel panel) {
    double least = panel.settings().leastSeat();
    for (Point p : moved(panel, -panel.movement().shrink())) {
      double beside = Math.max(-p.x(), p.x() - WIDE);
      double above = p.y() - HIGH - arch(p.x());
      double below = -p.y() - arch(p.x());
      assertTrue(Math.max(beside, Math.max(above, below)) > least - 1, p.toString());
    }
  }

  @Test
  void plywood() throws IOException {
    simulate("species: plywood");
  }

  @Test
  void solidUpright() throws IOException {
    simulate("sawn: quarter");
  }

  @Test
  void solidWithLevelFibres() throws IOException {
    simulate("{sawn: quarter, fibres: level}".replaceAll("[{}]", "").replace(", ", "\n    "));
  }

  /** Stopped a groove's depth beyond the opening, so that the panel's corner goes in. */
  @Test
  void theStileIsStoppedBeforeItsEnds() throws IOException {
    List<PartOrder> orders = orders(JOB.formatted("species: plywood"));
    EdgeGroove stile = groove(orders, "stile");
    assertEquals(BOTTOM_RAIL - DEPTH, stile.extent().fromStart().getAsDouble(), 1e-6);
    assertEquals(TOP_RAIL - DEPTH, stile.extent().fromEnd().getAsDouble(), 1e-6);
    assertTrue(groove(orders, "top-rail").extent().fromStart().isEmpty());
    // All four from the same face, in the middle of the stock.
    for (String part : new String[] {"stile", "top-rail", "bottom-rail"}) {
      assertEquals((21 - 6.35) / 2, groove(orders, part).fromFace(), 1e-9);
      assertTrue(
          named(orders, part).shape().part().marks().stream()
              .noneMatch(mark -> mark.label().equals("groove")));
    }
    EdgeGroove through =
        groove(orders(JOB.formatted("species: plywood\n    stile-grooves: through")), "stile");
    assertTrue(through.extent().fromStart().isEmpty());
  }

  /** Two panels side by side: the muntin is grooved along both its edges, a rail only once. */
  @Test
  void aMuntinBetweenTwoPanels() throws IOException {
    String job =
        """
        job: test
        units: mm
        stock: {thickness: 20}
        parts:
          - name: rail
            shape: straight-rail
            quantity: 2
            measures: {opening: 450, width: 70, tenon: 30}
          - name: stile
            shape: straight-rail
            quantity: 2
            measures: {opening: 740, width: 60, tenon: 0}
          - name: muntin
            shape: straight-rail
            measures: {opening: 600, width: 50, tenon: 30}
        panels:
          - name: left-panel
            top-rail: rail
            bottom-rail: rail
            left-stile: stile
            right-stile: muntin
            opening: {width: 200, height: 600}
            groove: {bit: 50, bearing: 30, width: 6}
            thickness: 6
            species: plywood
          - name: right-panel
            top-rail: rail
            bottom-rail: rail
            left-stile: muntin
            right-stile: stile
            opening: {width: 200, height: 600}
            groove: {bit: 50, bearing: 30, width: 6}
            thickness: 6
            species: plywood
        """;
    List<PartOrder> orders = orders(job);
    assertEquals(2, named(orders, "muntin").operations().grooves().size());
    assertEquals(1, named(orders, "rail").operations().grooves().size());
    assertEquals(1, named(orders, "stile").operations().grooves().size());
    // One part for both hands: its stops are the left stile's, and its groove 10 mm deep as cut.
    EdgeGroove stile = groove(orders, "stile");
    assertEquals(60, stile.extent().fromStart().getAsDouble(), 1e-6);
    assertEquals(60, stile.extent().fromEnd().getAsDouble(), 1e-6);
    assertEquals(10, named(orders, "stile").shape().lengths().get("groove"), 1e-6);
    List<String> notes = named(orders, "stile").shape().part().notes();
    assertTrue(notes.stream().anyMatch(note -> note.contains("mirror image")), notes.toString());
    for (PartOrder order : orders) {
      if (!(order.shape() instanceof PanelDesign)) {
        WorkedPart.of(order);
      }
    }
  }
}
