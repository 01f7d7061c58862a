package org.bearingline.outside.scan;

import boofcv.alg.geo.h.HomographyDirectLinearTransform;
import boofcv.struct.geo.AssociatedPair;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.ddogleg.optimization.FactoryOptimization;
import org.ddogleg.optimization.UnconstrainedLeastSquares;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/** Finds the view of the marks' plane that explains where the sixteen corners are seen. */
final class MarksFit {

  private static final int ROUNDS = 200;

  /** mm by which whole-sheet marks may miss before the sheet is not whole, or not flat. */
  private static final double NOT_WHOLE = 1.0;

  private final String file;
  private final List<SeenMark> marks;
  private final MarkSet set;
  private final Optional<MarksApart> apart;

  /**
   * @param mapping from the picture to the plane
   * @param cornerMiss mm by which the worst corner misses
   * @param distanceMiss mm by which the worst measured distance misses; 0 for a whole sheet
   * @param bend mm by which the lens bends lines where the marks are, at most
   * @param trust how true it is; empty for a whole sheet
   */
  record Found(
      MarksMapping mapping,
      double cornerMiss,
      double distanceMiss,
      double bend,
      Optional<MarksTrust> trust) {}

  /**
   * @param marks A, B, C, D of one set
   */
  MarksFit(String file, List<SeenMark> marks, MarkSet set, Optional<MarksApart> apart) {
    this.file = file;
    this.marks = marks;
    this.set = set;
    this.apart = apart;
  }

  Found fit(GreyImage image, Optional<RaisedFace> raised) {
    List<MarksApart.Distance> distances = apart.map(MarksApart::distances).orElse(List.of());
    double across = guess(MarkLetter.A, MarkLetter.B, MarkLetter.D, MarkLetter.C, set.across());
    double along = guess(MarkLetter.B, MarkLetter.C, MarkLetter.A, MarkLetter.D, set.along());
    MarkModel model =
        new MarkModel(
            marks,
            set,
            distances,
            new Point((image.width() - 1) / 2.0, (image.height() - 1) / 2.0),
            Math.hypot(image.width(), image.height()) / 2,
            Math.max(across, along));
    double[] solved = solve(model, start(model, across, along));
    return found(model, solved, raised);
  }

  /** A side of the marks' rectangle, mm: as measured, else as the marks' own size tells. */
  private double guess(MarkLetter a, MarkLetter b, MarkLetter c, MarkLetter d, double printed) {
    if (apart.isEmpty()) {
      return printed;
    }
    for (MarksApart.Distance distance : apart.get().distances()) {
      if (isBetween(distance, a, b) || isBetween(distance, c, d)) {
        return distance.mm();
      }
    }
    SeenMark one = marks.get(a.ordinal());
    SeenMark other = marks.get(b.ordinal());
    double pixels = one.centre().distanceTo(other.centre());
    return pixels / ((one.side() + other.side()) / 2) * set.side();
  }

  private static boolean isBetween(MarksApart.Distance distance, MarkLetter a, MarkLetter b) {
    return distance.from() == a && distance.to() == b || distance.from() == b && distance.to() == a;
  }

  private double[] start(MarkModel model, double across, double along) {
    double u = model.unit();
    List<Point> places =
        List.of(
            Point.ORIGIN,
            new Point(across / u, 0),
            new Point(across / u, -along / u),
            new Point(0, -along / u));
    List<AssociatedPair> pairs = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Point seen = marks.get(i).centre().minus(model.middle()).times(1 / model.half());
      pairs.add(new AssociatedPair(places.get(i).x(), places.get(i).y(), seen.x(), seen.y()));
    }
    DMatrixRMaj view = new DMatrixRMaj(3, 3);
    if (!new HomographyDirectLinearTransform(true).process(pairs, view) || view.data[8] == 0) {
      throw notSeen();
    }
    CommonOps_DDRM.scale(1 / view.data[8], view);
    MarksMapping rough = mapping(model, view.data, 0, Optional.empty());
    List<Double> turns = new ArrayList<>();
    for (SeenMark mark : marks) {
      Point left = mark.corners().get(0);
      Point right = mark.corners().get(1);
      Point side = rough.toMm(right.x(), right.y()).minus(rough.toMm(left.x(), left.y()));
      turns.add(Math.atan2(side.y(), side.x()));
    }
    return model.start(across, along, view.data, turns);
  }

  private double[] solve(MarkModel model, double[] start) {
    UnconstrainedLeastSquares<DMatrixRMaj> search =
        FactoryOptimization.levenbergMarquardt(null, false);
    search.setFunction(model, null);
    search.initialize(start, 1e-14, 1e-14);
    for (int round = 0; round < ROUNDS && !search.iterate(); round++) {
      // Each call is a round.
    }
    return search.getParameters();
  }

  private Found found(MarkModel model, double[] solved, Optional<RaisedFace> raised) {
    MarksMapping mapping = mapping(model, solved, raised);
    double corner = 0;
    double bend = 0;
    for (int i = 0; i < 4; i++) {
      Point at = marks.get(i).centre();
      double pixel = mapping.pixelAt(at.x(), at.y());
      bend = Math.max(bend, pixel * mapping.bend(at.x(), at.y()));
      for (int k = 0; k < 4; k++) {
        corner = Math.max(corner, pixel * model.cornerMiss(solved, i, k));
      }
    }
    double distance =
        apart.map(MarksApart::distances).orElse(List.of()).stream()
            .mapToDouble(d -> Math.abs(model.distanceMiss(solved, d)))
            .max()
            .orElse(0);
    if (!model.isLoose() && corner > NOT_WHOLE) {
      throw new Problem(
          Place.file(file),
          String.format(
              Locale.ROOT,
              "the corner marks do not lie as on a whole sheet, by %.1f mm; if they were cut apart,"
                  + " measure them and give --marks-apart, else lay the sheet flat",
              corner));
    }
    if (model.isLoose()) {
      DistanceJudge.judge(
          set, model.width(solved), model.height(solved), Math.max(corner, distance));
    }
    Optional<MarksTrust> trust =
        apart.map(
            measured ->
                new MarksTrust(
                    model,
                    solved,
                    unknowns -> mapping(model, unknowns, raised),
                    measured.distances()));
    return new Found(mapping, corner, distance, bend, trust);
  }

  private MarksMapping mapping(MarkModel model, double[] unknowns, Optional<RaisedFace> raised) {
    double[] view = new double[9];
    System.arraycopy(unknowns, 0, view, 0, MarkModel.VIEW);
    view[8] = 1;
    return mapping(model, view, model.lens(unknowns), raised);
  }

  private MarksMapping mapping(
      MarkModel model, double[] units, double lens, Optional<RaisedFace> raised) {
    double u = model.unit();
    double[] view = {
      units[0] / u,
      units[1] / u,
      units[2],
      units[3] / u,
      units[4] / u,
      units[5],
      units[6] / u,
      units[7] / u,
      units[8]
    };
    DMatrixRMaj back = new DMatrixRMaj(3, 3);
    if (!CommonOps_DDRM.invert(new DMatrixRMaj(3, 3, true, view), back)) {
      throw notSeen();
    }
    Point under = raised.map(face -> CameraPlace.under(view, face.camera())).orElse(Point.ORIGIN);
    double shrink = raised.map(face -> 1 - face.above() / face.camera()).orElse(1.0);
    return new MarksMapping(model.middle(), model.half(), back.data.clone(), lens, under, shrink);
  }

  private Problem notSeen() {
    return new Problem(
        Place.file(file),
        "the four corner marks lie on one line in the picture; take it from above");
  }
}
