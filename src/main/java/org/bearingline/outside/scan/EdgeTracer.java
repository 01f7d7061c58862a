package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Walks along the cracks between pixels of the template and others, the template on the left. Each
 * crack gives a point: where, between the centres of its two pixels, the template covers half.
 * Pixels that meet at a corner only do not hang together.
 */
final class EdgeTracer {

  /** Points of all edges: a metre of outline at 1200 dpi has 100,000; beyond this it is no edge. */
  private static final int MOST_POINTS = 6_000_000;

  /** Walking directions, the next one a turn to the left: east, north, west, south. */
  private static final int[] DX = {1, 0, -1, 0};

  private static final int[] DY = {0, -1, 0, 1};
  private static final int SOUTH = 3;

  private final String file;
  private final Silhouette silhouette;
  private final BitSet walked = new BitSet();
  private final List<TracedLoop> loops = new ArrayList<>();
  private double[] xs = new double[1024];
  private double[] ys = new double[1024];
  private int count;
  private int kept;
  private int specks;

  private EdgeTracer(String file, Silhouette silhouette) {
    this.file = file;
    this.silhouette = silhouette;
  }

  /**
   * @param loops whose area is at least that of a speck, in the order met from the top
   * @param specks how many were smaller
   */
  record Traced(List<TracedLoop> loops, int specks) {}

  static Traced trace(String file, Silhouette silhouette, double speckPixels) {
    EdgeTracer tracer = new EdgeTracer(file, silhouette);
    tracer.trace(speckPixels);
    return new Traced(tracer.loops, tracer.specks);
  }

  private void trace(double speckPixels) {
    int width = silhouette.width();
    for (int y = 0; y < silhouette.height(); y++) {
      boolean left = false;
      for (int x = 0; x < width; x++) {
        boolean here = silhouette.isTemplate(x, y);
        // An edge has a crack on the west of a pixel somewhere; walking it goes south.
        if (here && !left && !walked.get(y * width + x)) {
          TracedLoop loop = walk(x, y);
          if (Math.abs(loop.area()) >= speckPixels) {
            kept += loop.size();
            loops.add(loop);
          } else if (!(loop.atRim() || loop.atMark())) {
            specks++;
          }
        }
        left = here;
      }
    }
  }

  private TracedLoop walk(int startX, int startY) {
    int x = startX;
    int y = startY;
    int way = SOUTH;
    boolean atRim = false;
    boolean atMark = false;
    count = 0;
    do {
      int right = (way + 3) % 4;
      int ox = x + DX[right];
      int oy = y + DY[right];
      byte other = silhouette.kind(ox, oy);
      atRim |= other == Silhouette.BEYOND;
      atMark |= other == Silhouette.MARK;
      if (right == 2) {
        walked.set(y * silhouette.width() + x);
      }
      add(x, y, ox, oy, other);
      int ax = x + DX[way];
      int ay = y + DY[way];
      int bx = ox + DX[way];
      int by = oy + DY[way];
      if (!silhouette.isTemplate(ax, ay)) {
        way = (way + 1) % 4;
      } else if (!silhouette.isTemplate(bx, by)) {
        x = ax;
        y = ay;
      } else {
        x = bx;
        y = by;
        way = right;
      }
    } while (x != startX || y != startY || way != SOUTH);
    return new TracedLoop(Arrays.copyOf(xs, count), Arrays.copyOf(ys, count), atRim, atMark);
  }

  private void add(int x, int y, int ox, int oy, byte other) {
    if (kept + count >= MOST_POINTS) {
      throw new Problem(
          Place.file(file),
          "the picture is all edges, so no template can be told from the ground; lay the template"
              + " on a plain ground of another lightness");
    }
    double share = 0.5;
    if (other == 0) {
      double inside = silhouette.excess(x, y);
      double outside = silhouette.excess(ox, oy);
      share = inside > outside ? Math.max(0, Math.min(1, inside / (inside - outside))) : 0.5;
    }
    if (count == xs.length) {
      xs = Arrays.copyOf(xs, 2 * count);
      ys = Arrays.copyOf(ys, 2 * count);
    }
    xs[count] = x + share * (ox - x);
    ys[count] = y + share * (oy - y);
    count++;
  }
}
