package org.bearingline.outside.scan;

import java.util.List;
import org.bearingline.outline.Point;
import org.ddogleg.optimization.functions.FunctionNtoM;

/**
 * What a picture of four marks should look like: a plane seen through a lens that bends lines. The
 * unknowns, in this order: eight of the plane's view (a homography whose last number is 1), one of
 * the lens (Brown's first radial term), and for loose marks one turn each, two sides of the printed
 * squares and five coordinates of their centres; A lies at the origin and B on the x axis. Lengths
 * are in units of {@link #unit} mm and places of the picture in {@link #half} pixels from its
 * middle, so that all unknowns are near 1.
 */
final class MarkModel implements FunctionNtoM {

  static final int VIEW = 8;
  private static final int LENS = 8;
  private static final int TURNS = 9;
  private static final int SIDES = 13;
  private static final int CENTRES = 15;
  private static final int LOOSE = 20;
  private static final int WHOLE = 9;

  /** How well a corner is placed in the picture, pixels; from pictures of known marks. */
  private static final double CORNER_ERROR = 0.03;

  /** How well a corner is printed, mm: a quarter of a dot at 600 dpi. */
  private static final double PRINT_ERROR = 0.01;

  /**
   * How well a maker reads a rule between two crosses, mm: half of the division of a rule in half
   * millimetres or 1/64 in, common practice.
   */
  private static final double RULE_ERROR = 0.25;

  /** The lens of a telephone or a camera bends less than this, in its own units. */
  private static final double USUAL_LENS = 0.2;

  private final List<SeenMark> marks;
  private final MarkSet set;
  private final List<MarksApart.Distance> distances;
  private final Point middle;
  private final double half;
  private final double unit;

  /**
   * @param marks A, B, C, D
   * @param distances measured between loose marks; empty for a whole sheet
   * @param middle of the picture, pixels
   * @param half the picture's diagonal, pixels
   * @param unit mm
   */
  MarkModel(
      List<SeenMark> marks,
      MarkSet set,
      List<MarksApart.Distance> distances,
      Point middle,
      double half,
      double unit) {
    this.marks = marks;
    this.set = set;
    this.distances = distances;
    this.middle = middle;
    this.half = half;
    this.unit = unit;
  }

  /** The same with other distances measured. */
  MarkModel with(List<MarksApart.Distance> others) {
    return new MarkModel(marks, set, others, middle, half, unit);
  }

  boolean isLoose() {
    return !distances.isEmpty();
  }

  double half() {
    return half;
  }

  double unit() {
    return unit;
  }

  Point middle() {
    return middle;
  }

  /** First guess: the marks lie in a rectangle and the lens is straight. */
  double[] start(double across, double along, double[] view, List<Double> turns) {
    double[] start = new double[getNumOfInputsN()];
    System.arraycopy(view, 0, start, 0, VIEW);
    if (isLoose()) {
      for (int i = 0; i < 4; i++) {
        start[TURNS + i] = turns.get(i);
      }
      start[SIDES] = set.side() / unit;
      start[SIDES + 1] = set.side() / unit;
      start[CENTRES] = across / unit;
      start[CENTRES + 1] = across / unit;
      start[CENTRES + 2] = -along / unit;
      start[CENTRES + 4] = -along / unit;
    }
    return start;
  }

  @Override
  public int getNumOfInputsN() {
    return isLoose() ? LOOSE : WHOLE;
  }

  @Override
  public int getNumOfOutputsM() {
    return 32 + 1 + distances.size();
  }

  @Override
  public void process(double[] unknowns, double[] misses) {
    int at = 0;
    for (int i = 0; i < 4; i++) {
      double perMm = marks.get(i).side() / set.side();
      double error = Math.hypot(CORNER_ERROR, PRINT_ERROR * perMm);
      for (int corner = 0; corner < 4; corner++) {
        Point seen = marks.get(i).corners().get(corner);
        Point meant = pixels(unknowns, corner(unknowns, i, corner));
        misses[at++] = (meant.x() - seen.x()) / error;
        misses[at++] = (meant.y() - seen.y()) / error;
      }
    }
    misses[at++] = unknowns[LENS] / USUAL_LENS;
    for (MarksApart.Distance distance : distances) {
      misses[at++] = distanceMiss(unknowns, distance) / RULE_ERROR;
    }
  }

  /** What the solution says less what was measured, mm. */
  double distanceMiss(double[] unknowns, MarksApart.Distance distance) {
    Point from = centre(unknowns, distance.from().ordinal());
    Point to = centre(unknowns, distance.to().ordinal());
    return from.distanceTo(to) * unit - distance.mm();
  }

  /** Pixels by which a corner is seen beside where the solution puts it. */
  double cornerMiss(double[] unknowns, int mark, int corner) {
    return pixels(unknowns, corner(unknowns, mark, corner))
        .distanceTo(marks.get(mark).corners().get(corner));
  }

  /** The centre of a mark in units. */
  Point centre(double[] unknowns, int mark) {
    if (!isLoose()) {
      double x = mark == 1 || mark == 2 ? set.across() : 0;
      double y = mark >= 2 ? -set.along() : 0;
      return new Point(x / unit, y / unit);
    }
    return switch (mark) {
      case 0 -> Point.ORIGIN;
      case 1 -> new Point(unknowns[CENTRES], 0);
      case 2 -> new Point(unknowns[CENTRES + 1], unknowns[CENTRES + 2]);
      default -> new Point(unknowns[CENTRES + 3], unknowns[CENTRES + 4]);
    };
  }

  private Point corner(double[] unknowns, int mark, int corner) {
    double width = isLoose() ? unknowns[SIDES] : set.side() / unit;
    double height = isLoose() ? unknowns[SIDES + 1] : set.side() / unit;
    double turn = isLoose() ? unknowns[TURNS + mark] : 0;
    double x = corner == 0 || corner == 3 ? -width / 2 : width / 2;
    double y = corner <= 1 ? height / 2 : -height / 2;
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    return centre(unknowns, mark).plus(new Point(c * x - s * y, s * x + c * y));
  }

  private Point pixels(double[] unknowns, Point at) {
    double w = unknowns[6] * at.x() + unknowns[7] * at.y() + 1;
    double x = (unknowns[0] * at.x() + unknowns[1] * at.y() + unknowns[2]) / w;
    double y = (unknowns[3] * at.x() + unknowns[4] * at.y() + unknowns[5]) / w;
    double bent = half * (1 + unknowns[LENS] * (x * x + y * y));
    if (!Double.isFinite(x * bent) || !Double.isFinite(y * bent)) {
      return new Point(1e9, 1e9);
    }
    return new Point(middle.x() + x * bent, middle.y() + y * bent);
  }

  /** Width of a loose mark's square as the solution has it, mm. */
  double width(double[] unknowns) {
    return unknowns[SIDES] * unit;
  }

  /** Height of a loose mark's square as the solution has it, mm. */
  double height(double[] unknowns) {
    return unknowns[SIDES + 1] * unit;
  }

  double lens(double[] unknowns) {
    return unknowns[LENS];
  }
}
