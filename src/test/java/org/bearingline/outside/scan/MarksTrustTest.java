package org.bearingline.outside.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.bearingline.outline.Point;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is said of loose marks against what happens: marks are seen by a pinhole camera with the
 * errors of print and detection, distances read with those of a rule, many times over.
 */
class MarksTrustTest {

  private static final int DRAWS = 150;
  private static final MarkSet SET = MarkSet.all().get(1);
  private static final Camera CAMERA =
      new Camera(4000, 2300, 5200, 0, 0, 740, 4, -3, 1).lookingAt(246, 60);
  private static final double[] BACK = CAMERA.back();
  private static final Point[] CENTRES = {
    new Point(12, 172), new Point(487, 178), new Point(481, -55), new Point(4, -61)
  };
  private static final double[] TURNS = {2, -5, 93, 3};
  private static final int[][] PAIRS = {{0, 1}, {1, 2}, {0, 2}, {2, 3}, {3, 0}, {1, 3}};
  private static final GreyImage EMPTY =
      new GreyImage(CAMERA.width(), CAMERA.height(), new byte[CAMERA.width() * CAMERA.height()]);

  private static Point seen(Point onTable) {
    DMatrixRMaj view = new DMatrixRMaj(3, 3);
    CommonOps_DDRM.invert(new DMatrixRMaj(3, 3, true, BACK), view);
    double[] v = view.data;
    double w = v[6] * onTable.x() + v[7] * onTable.y() + v[8];
    return new Point(
        (v[0] * onTable.x() + v[1] * onTable.y() + v[2]) / w,
        (v[3] * onTable.x() + v[4] * onTable.y() + v[5]) / w);
  }

  /** Corners are misplaced by 0.03 pixels in the picture and by 0.01 mm on the paper. */
  private static List<SeenMark> marks(Random random) {
    List<SeenMark> marks = new ArrayList<>();
    double half = SET.side() / 2;
    double[][] corners = {{-half, half}, {half, half}, {half, -half}, {-half, -half}};
    for (int i = 0; i < 4; i++) {
      double c = Math.cos(Math.toRadians(TURNS[i]));
      double s = Math.sin(Math.toRadians(TURNS[i]));
      List<Point> places = new ArrayList<>();
      for (double[] corner : corners) {
        Point at = new Point(c * corner[0] - s * corner[1], s * corner[0] + c * corner[1]);
        Point printed = CENTRES[i].plus(at).plus(error(random, 0.01));
        places.add(seen(printed).plus(error(random, 0.03)));
      }
      marks.add(new SeenMark(SET.number(), MarkLetter.values()[i], places));
    }
    return marks;
  }

  private static Point error(Random random, double deviation) {
    return new Point(random.nextGaussian() * deviation, random.nextGaussian() * deviation);
  }

  private static MarksFit.Found found(Random random, int measured) {
    List<MarksApart.Distance> distances = new ArrayList<>();
    for (int i = 0; i < measured; i++) {
      int from = PAIRS[i][0];
      int to = PAIRS[i][1];
      double read = CENTRES[from].distanceTo(CENTRES[to]) + 0.25 * random.nextGaussian();
      distances.add(
          new MarksApart.Distance(MarkLetter.values()[from], MarkLetter.values()[to], read));
    }
    return new MarksFit("drawn", marks(random), SET, Optional.of(new MarksApart(distances)))
        .fit(EMPTY, Optional.empty());
  }

  /** A template of 400 by 120 mm between the marks. */
  private static List<Point> rectangle() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      points.add(new Point(45 + 40 * i, 0));
    }
    for (int i = 0; i < 10; i++) {
      points.add(new Point(445 - 40 * i, 120));
    }
    return points;
  }

  private static TracedLoop loop(List<Point> onTable) {
    List<Point> seen = onTable.stream().map(MarksTrustTest::seen).toList();
    return new TracedLoop(
        seen.stream().mapToDouble(Point::x).toArray(),
        seen.stream().mapToDouble(Point::y).toArray(),
        false,
        false);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 6})
  void whatIsSaidIsWhatHappens(int measured) {
    Random random = new Random(measured);
    List<Point> truth = rectangle();
    TracedLoop loop = loop(truth);
    double[] squares = new double[truth.size()];
    double said = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      MarksFit.Found found = found(random, measured);
      said += found.trust().orElseThrow().of(loop).error() / DRAWS;
      List<Point> placed = new ArrayList<>();
      for (int i = 0; i < truth.size(); i++) {
        placed.add(found.mapping().toMm(loop.xs()[i], loop.ys()[i]));
      }
      double[] off = offAfterMoving(placed, truth);
      for (int i = 0; i < off.length; i++) {
        squares[i] += off[i] * off[i] / DRAWS;
      }
    }
    double happened = 0;
    for (double square : squares) {
      happened = Math.max(happened, Math.sqrt(square));
    }
    assertEquals(1, said / happened, 0.25, "said " + said + ", happened " + happened);
  }

  /** Distances of one set of points from another after the best motion (Kabsch, in a plane). */
  private static double[] offAfterMoving(List<Point> points, List<Point> onto) {
    Point from = points.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / points.size());
    Point to = onto.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / onto.size());
    double sine = 0;
    double cosine = 0;
    for (int i = 0; i < points.size(); i++) {
      sine += points.get(i).minus(from).cross(onto.get(i).minus(to));
      cosine += points.get(i).minus(from).dot(onto.get(i).minus(to));
    }
    double norm = Math.hypot(sine, cosine);
    double[] off = new double[points.size()];
    for (int i = 0; i < off.length; i++) {
      Point p = points.get(i).minus(from);
      Point turned =
          new Point((cosine * p.x() - sine * p.y()) / norm, (sine * p.x() + cosine * p.y()) / norm);
      off[i] = turned.distanceTo(onto.get(i).minus(to));
    }
    return off;
  }

  @Test
  void moreDistancesAreAskedForAndHelp() {
    MarksTrust.Hope two = found(new Random(7), 2).trust().orElseThrow().of(loop(rectangle()));
    assertTrue(!two.next().isEmpty(), two::toString);
    assertTrue(two.then() < 0.8 * two.error(), two::toString);
    MarksTrust.Hope six = found(new Random(7), 6).trust().orElseThrow().of(loop(rectangle()));
    assertEquals(List.of(), six.next());
    assertTrue(six.error() < two.error(), () -> six + " after " + two);
  }
}
