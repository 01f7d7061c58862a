package org.bearingline.outside.unite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.bearingline.oracle.JtsReference;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.topology.OutlineCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Unions of random shapes, boxes, discs, rings, slots and triangles that lie over each other any
 * way, from 5 mm to 2 m: their area against JTS's OverlayNG of the same shapes flattened, and
 * places in them against the rule that a place is wood where any shape has wood there, shapes that
 * lie in others taken out.
 */
class UnionAgainstJtsTest {

  private static final double TOLERANCE = 0.02;

  /** Share of the size within which edges lie against each other. */
  private static final double NEAR = 1e-8;

  /** The same where shapes lie on each other but for a slip. */
  private static final double NEAR_BY_SLIP = 1e-5;

  private static final int DRAWINGS = 150;

  private Random random;

  @ParameterizedTest
  @ValueSource(doubles = {5, 60, 400, 2000})
  void areaAndPlacesAgree(double size) {
    random = new Random(20_260_611 + (long) size);
    agree("size " + size, size, () -> shapes(size), false);
  }

  /**
   * Shapes on a grid of tenths, so that edges run on each other, circles run into straights and
   * corners meet, each place off by up to a slip: what nobody can tell from lying on it, and more.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-13, 1e-12, 1e-11, 1e-10, 1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3})
  void shapesThatLieOnEachOtherButForASlipAgree(double slip) {
    random = new Random(20_260_612);
    agree("slip " + slip, 100, () -> onGrid(slip), true);
  }

  private void agree(String name, double size, Supplier<List<Outline>> drawings, boolean mayTouch) {
    int united = 0;
    int places = 0;
    double worst = 0;
    double near = (mayTouch ? NEAR_BY_SLIP : NEAR) * size;
    for (int i = 0; i < DRAWINGS; i++) {
      List<Outline> shapes = drawings.get();
      United result = Uniting.of(shapes, TOLERANCE, near);
      double chord = size * 1e-6;
      List<Geometry> flat = new ArrayList<>();
      JtsReference jts = new JtsReference(chord);
      shapes.forEach(shape -> flat.add(jts.flat(Region.of(shape))));
      for (United.Group group : result.groups()) {
        united += group.members().size() > 1 ? 1 : 0;
        Geometry reference =
            OverlayNGRobust.union(group.members().stream().map(flat::get).toList());
        // A chord leaves its arc by no more than its height, all along it; a circle laid against a
        // straight is off by no more than the tolerance. Gaps and openings as narrow are filled.
        double bound = 1e-9 * size * size;
        for (int member : group.members()) {
          Outline shape = shapes.get(member);
          bound += (chord + result.moved() + near) * shape.length();
        }
        double off = Math.abs(group.region().area() - reference.getArea());
        assertTrue(off <= bound, "drawing " + i + ": area off by " + off + ", bound " + bound);
        worst = Math.max(worst, off / bound);
        for (Outline piece : group.region().pieces()) {
          if (!mayTouch && group.narrow().isEmpty()) {
            assertEquals(List.of(), OutlineCheck.faults(piece), "drawing " + i);
          }
        }
      }
      places += checkPlaces(i, size, near, shapes, flat, result);
    }
    System.out.printf(
        "%s: %d unions, %d places, area off by up to %.2f of the bound%n",
        name, united, places, worst);
    assertTrue(united > DRAWINGS / 2 && places > 100 * DRAWINGS);
  }

  private int checkPlaces(
      int drawing,
      double size,
      double near,
      List<Outline> shapes,
      List<Geometry> flat,
      United result) {
    int[] level = levels(flat, near);
    List<PointOnGeometryLocator> locators = new ArrayList<>();
    flat.forEach(one -> locators.add(new IndexedPointInAreaLocator(one)));
    int deepest = Arrays.stream(level).max().orElseThrow();
    int places = 0;
    for (int k = 0; k < 300; k++) {
      Point p = new Point(size * random.nextDouble(), size * random.nextDouble());
      double clear = size / 400;
      if (shapes.stream().anyMatch(shape -> shape.distanceTo(p) < clear)) {
        continue;
      }
      places++;
      // From the deepest level out: wood without what the level below takes out of it.
      boolean wood = false;
      for (int l = deepest; l >= 0; l--) {
        boolean any = false;
        for (int i = 0; i < shapes.size(); i++) {
          boolean in = locators.get(i).locate(new Coordinate(p.x(), p.y())) == Location.INTERIOR;
          any |= level[i] == l && in;
        }
        wood = any && !wood;
      }
      boolean ours = false;
      for (int l = deepest; l >= 0; l--) {
        boolean any = false;
        for (United.Group group : result.groups()) {
          any |= level[group.members().get(0)] == l && group.region().contains(p);
        }
        ours = any && !ours;
      }
      assertEquals(wood, ours, "drawing " + drawing + " at " + p);
    }
    return places;
  }

  // By JTS: a shape lies in another where it is covered by it, clear of its edge.
  private static int[] levels(List<Geometry> flat, double near) {
    int n = flat.size();
    int[] level = new int[n];
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          boolean in =
              i != j
                  && flat.get(j).covers(flat.get(i))
                  && flat.get(j).getBoundary().distance(flat.get(i)) > near;
          if (in && level[i] <= level[j]) {
            level[i] = level[j] + 1;
            changed = true;
          }
        }
      }
    }
    return level;
  }

  private double place(int tenths, double slip) {
    return 10 * random.nextInt(tenths)
        + (random.nextInt(3) == 0 ? slip * (2 * random.nextDouble() - 1) : 0);
  }

  private List<Outline> onGrid(double slip) {
    List<Outline> shapes = new ArrayList<>();
    int count = 2 + random.nextInt(5);
    double turn = random.nextBoolean() ? 0 : 360 * random.nextDouble();
    for (int i = 0; i < count; i++) {
      double x = place(7, slip);
      double y = place(7, slip);
      double width = 10 + place(4, slip);
      double height = 10 + place(4, slip);
      Outline shape =
          switch (random.nextInt(3)) {
            case 0 ->
                disc(5 * (1 + random.nextInt(5)) + slip * random.nextDouble())
                    .transformed(Similarity.translation(x, y));
            case 1 ->
                slot(width / 2, height / 2)
                    .transformed(Similarity.translation(x + width / 2, y + height / 2));
            default -> Outline.of(Loop.rectangle(new Bounds(x, y, x + width, y + height)));
          };
      shapes.add(shape.transformed(Similarity.rotation(turn, new Point(50, 50))));
    }
    return shapes;
  }

  private List<Outline> shapes(double size) {
    List<Outline> shapes = new ArrayList<>();
    int count = 2 + random.nextInt(7);
    for (int i = 0; i < count; i++) {
      double own = size * (0.08 + 0.3 * random.nextDouble());
      Similarity map =
          Similarity.rotation(
                  random.nextInt(3) == 0 ? 90.0 * random.nextInt(4) : 360 * random.nextDouble(),
                  Point.ORIGIN)
              .then(
                  Similarity.translation(
                      size * (0.2 + 0.6 * random.nextDouble()),
                      size * (0.2 + 0.6 * random.nextDouble())));
      Outline shape =
          switch (random.nextInt(5)) {
            case 0 -> Outline.of(Loop.rectangle(new Bounds(-own / 2, -own / 5, own / 2, own / 5)));
            case 1 -> disc(own / 2);
            case 2 -> Outline.of(disc(own / 2).outer(), disc(own / 3).outer());
            case 3 -> slot(own / 2, own / 6);
            default ->
                Outline.of(
                    Loop.polygon(
                        List.of(
                            new Point(0, 0), new Point(own, own / 9), new Point(own / 3, own))));
          };
      if (random.nextBoolean()) {
        shape = shape.transformed(Similarity.mirror(Point.ORIGIN, new Point(2, 1)));
      }
      shapes.add(shape.transformed(map));
    }
    return shapes;
  }

  private static Outline disc(double radius) {
    return Outline.of(Loop.of(Arc.circle(Point.ORIGIN, radius)));
  }

  private static Outline slot(double half, double radius) {
    Point lowRight = new Point(half, -radius);
    Point highRight = new Point(half, radius);
    Point highLeft = new Point(-half, radius);
    Point lowLeft = new Point(-half, -radius);
    return Outline.of(
        Loop.of(
            new Line(lowLeft, lowRight),
            new Arc(new Point(half, 0), radius, lowRight, highRight, 180),
            new Line(highRight, highLeft),
            new Arc(new Point(-half, 0), radius, highLeft, lowLeft, 180)));
  }
}
