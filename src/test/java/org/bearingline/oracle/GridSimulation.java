package org.bearingline.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Region;

/**
 * Dilation and erosion by brute force on a grid of cells, with certainty about what it decides.
 *
 * <p>With h half a cell's diagonal, a set X is held as four sets of cells: centres surely in X
 * ({@code in}), centres surely outside ({@code out}), cells that together come within h of every
 * point of X ({@code cover}) and of every point outside X ({@code outerCover}). From the distance
 * transforms t(in) and t(cover) of these the true distance of a centre from X is known to lie in
 * [t(cover) − h, t(in)], so for Y = X ⊕ D(d):
 *
 * <ul>
 *   <li>t(in) ≤ d: the centre is in Y; t(cover) − h &gt; d: it is out;
 *   <li>a point of Y lies within h of a centre no farther than d + h from X, so t(cover) ≤ d + 2h;
 *   <li>where t(in) ≤ d − h, the whole disc of radius h lies in Y, so no outside point is near.
 * </ul>
 *
 * A centre is left undecided only near the simulated edge: within about 3 h of it for each step.
 */
final class GridSimulation {

  private final double x0;
  private final double y0;
  private final double pitch;
  private final int columns;
  private final int rows;
  private final boolean[] in;
  private final boolean[] out;
  private final boolean[] cover;
  private final boolean[] outerCover;

  private GridSimulation(
      GridSimulation like, boolean[] in, boolean[] out, boolean[] cover, boolean[] outerCover) {
    this(like.x0, like.y0, like.pitch, like.columns, like.rows, in, out, cover, outerCover);
  }

  private GridSimulation(
      double x0,
      double y0,
      double pitch,
      int columns,
      int rows,
      boolean[] in,
      boolean[] out,
      boolean[] cover,
      boolean[] outerCover) {
    this.x0 = x0;
    this.y0 = y0;
    this.pitch = pitch;
    this.columns = columns;
    this.rows = rows;
    this.in = in;
    this.out = out;
    this.cover = cover;
    this.outerCover = outerCover;
  }

  /** The region on a grid of about {@code cells} along its long side, {@code margin} mm beyond. */
  static GridSimulation of(Region region, double margin, int cells) {
    Bounds box = region.bounds().grown(margin);
    double pitch = Math.max(box.width(), box.height()) / cells;
    int columns = (int) Math.ceil(box.width() / pitch) + 4;
    int rows = (int) Math.ceil(box.height() / pitch) + 4;
    double x0 = box.minX() - 1.6180339 * pitch;
    double y0 = box.minY() - 1.4142136 * pitch;
    Edges edges = Edges.of(region);
    double h = pitch * Math.sqrt(0.5);
    int n = columns * rows;
    boolean[] in = new boolean[n];
    boolean[] out = new boolean[n];
    boolean[] cover = new boolean[n];
    boolean[] outerCover = new boolean[n];
    for (int i = 0; i < n; i++) {
      double x = x0 + (i % columns) * pitch;
      double y = y0 + (i / columns) * pitch;
      in[i] = edges.contains(x, y);
      out[i] = !in[i];
      boolean near = edges.distance(x, y) <= h;
      cover[i] = in[i] || near;
      outerCover[i] = out[i] || near;
    }
    return new GridSimulation(x0, y0, pitch, columns, rows, in, out, cover, outerCover);
  }

  private double half() {
    return pitch * Math.sqrt(0.5);
  }

  private double[] distances(boolean[] marked) {
    double[] squared = DistanceTransform.squared(marked, columns, rows);
    for (int i = 0; i < squared.length; i++) {
      squared[i] = Math.sqrt(squared[i]) * pitch;
    }
    return squared;
  }

  GridSimulation dilate(double d) {
    double[] least = distances(cover);
    double[] most = distances(in);
    double h = half();
    int n = in.length;
    boolean[] nowIn = new boolean[n];
    boolean[] nowOut = new boolean[n];
    boolean[] nowCover = new boolean[n];
    boolean[] nowOuter = new boolean[n];
    for (int i = 0; i < n; i++) {
      nowIn[i] = most[i] <= d;
      nowOut[i] = least[i] - h > d;
      nowCover[i] = least[i] <= d + 2 * h;
      nowOuter[i] = most[i] > d - h;
    }
    return new GridSimulation(this, nowIn, nowOut, nowCover, nowOuter);
  }

  GridSimulation complement() {
    return new GridSimulation(this, out, in, outerCover, cover);
  }

  GridSimulation erode(double d) {
    return complement().dilate(d).complement();
  }

  GridSimulation close(double d) {
    return dilate(d).erode(d);
  }

  GridSimulation open(double d) {
    return erode(d).dilate(d);
  }

  /** Share of all cells that are surely in or surely out. */
  double decided() {
    int sum = 0;
    for (int i = 0; i < in.length; i++) {
      sum += in[i] || out[i] ? 1 : 0;
    }
    return (double) sum / in.length;
  }

  /** Every decided cell on whose centre {@code region} disagrees, as sentences; at most ten. */
  List<String> disagreements(Region region) {
    Edges edges = Edges.of(region);
    List<String> found = new ArrayList<>();
    for (int i = 0; i < in.length && found.size() < 10; i++) {
      if (!in[i] && !out[i]) {
        continue;
      }
      double x = x0 + (i % columns) * pitch;
      double y = y0 + (i / columns) * pitch;
      int winding = edges.winding(x, y);
      if (winding != (in[i] ? 1 : 0)) {
        found.add(
            String.format(
                Locale.ROOT,
                "(%.4f, %.4f) must be %s, winding is %d, %.6f mm from the edge",
                x,
                y,
                in[i] ? "in" : "out",
                winding,
                edges.distance(x, y)));
      }
    }
    return found;
  }
}
