package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bearingline.outline.Point;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * How true a view by loose marks is, found from how well corners are seen and distances read: the
 * covariance of a fit of least squares, carried on to places of the picture (C = (JᵀJ)⁻¹ with J the
 * change of the weighted misses by each unknown, as in textbooks of adjustment).
 */
final class MarksTrust {

  private static final double STEP = 1e-6;

  /** Another distance is worth the way when it takes this share of the error away. */
  private static final double WORTH = 0.15;

  private final MarkModel model;
  private final double[] solved;
  private final Function<double[], Mapping> mapping;
  private final List<MarksApart.Distance> distances;

  /**
   * @param solved the fit's unknowns
   * @param mapping what unknowns make of the picture
   */
  MarksTrust(
      MarkModel model,
      double[] solved,
      Function<double[], Mapping> mapping,
      List<MarksApart.Distance> distances) {
    this.model = model;
    this.solved = solved.clone();
    this.mapping = mapping;
    this.distances = List.copyOf(distances);
  }

  /**
   * What may be hoped for.
   *
   * @param error mm: standard deviation of the worst place, of the template moved and turned at
   *     will
   * @param next the distances that make it truer, in the order in which they do most
   * @param then mm: the error with those
   */
  record Hope(double error, List<String> next, double then) {}

  /** How true an outline is. */
  Hope of(TracedLoop outline) {
    List<Point> places = new ArrayList<>();
    int step = Math.max(1, outline.size() / 40);
    for (int i = 0; i < outline.size(); i += step) {
      places.add(outline.point(i));
    }
    DMatrixRMaj moves = moves(places);
    List<MarksApart.Distance> measured = new ArrayList<>(distances);
    double error = error(moves, measured);
    double least = error;
    List<String> next = new ArrayList<>();
    for (Optional<MarksApart.Distance> best = best(moves, measured);
        best.isPresent();
        best = best(moves, measured)) {
      measured.add(best.get());
      double with = error(moves, measured);
      if (with > least * (1 - WORTH)) {
        break;
      }
      least = with;
      next.add(best.get().from() + "–" + best.get().to());
    }
    return new Hope(error, List.copyOf(next), least);
  }

  private Optional<MarksApart.Distance> best(
      DMatrixRMaj moves, List<MarksApart.Distance> measured) {
    List<MarksApart.Distance> left = new ArrayList<>();
    for (MarkLetter from : MarkLetter.values()) {
      for (MarkLetter to : MarkLetter.values()) {
        boolean known =
            measured.stream()
                .anyMatch(
                    d -> d.from() == from && d.to() == to || d.from() == to && d.to() == from);
        if (from.ordinal() < to.ordinal() && !known) {
          // How long it is does not matter to how much it helps.
          left.add(new MarksApart.Distance(from, to, 100));
        }
      }
    }
    return left.stream()
        .min(
            Comparator.comparingDouble(
                another -> {
                  List<MarksApart.Distance> with = new ArrayList<>(measured);
                  with.add(another);
                  return error(moves, with);
                }));
  }

  /** Standard deviation at the worst place, mm. */
  private double error(DMatrixRMaj moves, List<MarksApart.Distance> measured) {
    MarkModel with = model.with(measured);
    DMatrixRMaj by = change(with.getNumOfOutputsM(), unknowns -> misses(with, unknowns));
    DMatrixRMaj normal = new DMatrixRMaj(solved.length, solved.length);
    CommonOps_DDRM.multTransA(by, by, normal);
    DMatrixRMaj covariance = new DMatrixRMaj(solved.length, solved.length);
    if (!CommonOps_DDRM.invert(normal, covariance)) {
      return Double.POSITIVE_INFINITY;
    }
    DMatrixRMaj half = new DMatrixRMaj(moves.numRows, solved.length);
    CommonOps_DDRM.mult(moves, covariance, half);
    double worst = 0;
    for (int place = 0; place < moves.numRows; place += 2) {
      double variance = 0;
      for (int row = place; row < place + 2; row++) {
        for (int i = 0; i < solved.length; i++) {
          variance += half.get(row, i) * moves.get(row, i);
        }
      }
      worst = Math.max(worst, variance);
    }
    return Math.sqrt(worst);
  }

  private static double[] misses(MarkModel model, double[] unknowns) {
    double[] misses = new double[model.getNumOfOutputsM()];
    model.process(unknowns, misses);
    return misses;
  }

  /** How each unknown moves the places, less what merely moves and turns all of them: mm. */
  private DMatrixRMaj moves(List<Point> places) {
    Mapping now = mapping.apply(solved);
    List<Point> at = places.stream().map(p -> now.toMm(p.x(), p.y())).toList();
    DMatrixRMaj moves =
        change(
            2 * places.size(),
            unknowns -> {
              Mapping changed = mapping.apply(unknowns);
              double[] moved = new double[2 * places.size()];
              for (int i = 0; i < places.size(); i++) {
                Point there = changed.toMm(places.get(i).x(), places.get(i).y());
                moved[2 * i] = there.x();
                moved[2 * i + 1] = there.y();
              }
              return moved;
            });
    Point middle = at.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / at.size());
    double inertia = at.stream().mapToDouble(p -> p.minus(middle).dot(p.minus(middle))).sum();
    for (int unknown = 0; unknown < solved.length; unknown++) {
      Point shift = Point.ORIGIN;
      double turn = 0;
      for (int i = 0; i < at.size(); i++) {
        Point move = new Point(moves.get(2 * i, unknown), moves.get(2 * i + 1, unknown));
        shift = shift.plus(move.times(1.0 / at.size()));
        turn += at.get(i).minus(middle).cross(move) / inertia;
      }
      for (int i = 0; i < at.size(); i++) {
        Point turned = at.get(i).minus(middle).left().times(turn).plus(shift);
        moves.add(2 * i, unknown, -turned.x());
        moves.add(2 * i + 1, unknown, -turned.y());
      }
    }
    return moves;
  }

  private DMatrixRMaj change(int rows, Function<double[], double[]> of) {
    DMatrixRMaj change = new DMatrixRMaj(rows, solved.length);
    for (int unknown = 0; unknown < solved.length; unknown++) {
      double[] more = solved.clone();
      double[] less = solved.clone();
      more[unknown] += STEP;
      less[unknown] -= STEP;
      double[] above = of.apply(more);
      double[] below = of.apply(less);
      for (int row = 0; row < rows; row++) {
        change.set(row, unknown, (above[row] - below[row]) / (2 * STEP));
      }
    }
    return change;
  }
}
