package org.bearingline.outline.offset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.topology.PointThinning;

/**
 * Thins the runs of straight lines of a drawn or scanned outline. Dense zigzag below the noise
 * costs time and says nothing; arcs are left as they are.
 */
public final class Thinning {

  private Thinning() {}

  /**
   * A thinned region.
   *
   * @param region the same loops with fewer lines
   * @param largestMove mm by which a point left out lies off the new edge at most
   */
  public record Thinned(Region region, double largestMove) {}

  /** Leaves out points that lie no farther than {@code tolerance} &gt; 0 mm off the new lines. */
  public static Thinned thin(Region region, double tolerance) {
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException("thinning needs a tolerance above 0, got " + tolerance);
    }
    double[] move = new double[1];
    List<Outline> pieces = new ArrayList<>();
    for (Outline piece : region.pieces()) {
      List<Loop> openings = new ArrayList<>();
      for (Loop opening : piece.openings()) {
        openings.add(thin(opening, tolerance, move));
      }
      pieces.add(new Outline(thin(piece.outer(), tolerance, move), openings));
    }
    return new Thinned(new Region(pieces), move[0]);
  }

  /**
   * The noise of a region's lines in mm: the median distance of a corner from the chord of its two
   * neighbours, over corners between lines. A tolerance of about twice this smooths the zigzag
   * away. 0 where no two lines meet.
   */
  public static double noise(Region region) {
    double[] off = new double[region.size()];
    int count = 0;
    for (Loop loop : region.loops()) {
      int n = loop.size();
      for (int i = 0; i < n; i++) {
        if (loop.primitives().get(i) instanceof Line in
            && loop.primitives().get((i + 1) % n) instanceof Line out
            && !in.start().equals(out.end())) {
          off[count++] = new Line(in.start(), out.end()).distanceTo(in.end());
        }
      }
    }
    Arrays.sort(off, 0, count);
    return count == 0 ? 0 : off[count / 2];
  }

  private static Loop thin(Loop loop, double tolerance, double[] move) {
    List<Primitive> all = loop.primitives();
    int n = all.size();
    int seam = 0;
    for (int i = 0; i < n; i++) {
      if (all.get(i) instanceof Arc) {
        seam = i;
        break;
      }
    }
    List<Primitive> out = new ArrayList<>();
    List<Point> run = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Primitive piece = all.get((seam + i) % n);
      if (piece instanceof Arc) {
        flush(run, tolerance, move, out);
        out.add(piece);
      } else {
        if (run.isEmpty()) {
          run.add(piece.start());
        }
        run.add(piece.end());
      }
    }
    flush(run, tolerance, move, out);
    return new Loop(out);
  }

  private static void flush(List<Point> run, double tolerance, double[] move, List<Primitive> out) {
    if (run.isEmpty()) {
      return;
    }
    List<Point> kept;
    if (run.get(0).equals(run.get(run.size() - 1))) {
      // A whole polygon: halved, so that the chord from end to end is none of no length.
      int half = run.size() / 2;
      kept = new ArrayList<>(PointThinning.thin(run.subList(0, half + 1), tolerance));
      List<Point> rest = PointThinning.thin(run.subList(half, run.size()), tolerance);
      kept.addAll(rest.subList(1, rest.size()));
      if (kept.size() < 4) {
        kept = run;
      }
    } else {
      kept = PointThinning.thin(run, tolerance);
    }
    int at = 0;
    for (int i = 0; i + 1 < kept.size(); i++) {
      Line line = new Line(kept.get(i), kept.get(i + 1));
      out.add(line);
      for (at++; at < run.size() && !run.get(at).equals(line.end()); at++) {
        move[0] = Math.max(move[0], line.distanceTo(run.get(at)));
      }
    }
    run.clear();
  }
}
