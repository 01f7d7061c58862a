package org.bearingline.outline.topology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;

/**
 * Which loop lies in which. Loops must not cross; whether they do is told by {@link OutlineCheck}.
 */
public final class Nesting {

  /** Where on a piece to look; of two circles that touch only one point lies on both. */
  private static final double[] SHARES = {0.5, 0.25, 0};

  private final List<Loop> loops;
  private final int[] parent;
  private final int[] depth;

  private Nesting(List<Loop> loops) {
    this.loops = loops;
    int n = loops.size();
    parent = new int[n];
    depth = new int[n];
    Arrays.fill(parent, -1);
    if (n > 1) {
      nest();
    }
  }

  /** Nests loose loops, whichever way they run. */
  public static Nesting of(List<Loop> loops) {
    return new Nesting(List.copyOf(loops));
  }

  /** The pieces that loose loops bound by the even-odd rule: outer, opening, island, and so on. */
  public static Region region(List<Loop> loops) {
    return of(loops).region();
  }

  private void nest() {
    int n = loops.size();
    Bounds[] boxes = new Bounds[n];
    double[] areas = new double[n];
    for (int i = 0; i < n; i++) {
      boxes[i] = loops.get(i).bounds();
      areas[i] = Math.abs(loops.get(i).signedArea());
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (i != j
            && areas[j] >= areas[i]
            && (areas[j] > areas[i] || j < i)
            && boxes[j].intersects(boxes[i])
            && holds(loops.get(j), boxes[j], loops.get(i))) {
          depth[i]++;
          if (parent[i] < 0 || areas[j] < areas[parent[i]]) {
            parent[i] = j;
          }
        }
      }
    }
  }

  // Asks a point of the inner loop that is not on the outer one, where the two may touch.
  private static boolean holds(Loop outer, Bounds box, Loop inner) {
    double clear = 1e-7 * Math.max(box.width(), box.height());
    Point best = null;
    double far = -1;
    for (double share : SHARES) {
      for (Primitive piece : inner.primitives()) {
        Point p = piece.pointAt(share);
        double d = outer.distanceTo(p);
        if (d > far) {
          far = d;
          best = p;
        }
        if (far > clear) {
          return box.contains(best) && outer.contains(best);
        }
      }
    }
    return box.contains(best) && outer.contains(best);
  }

  /** In how many others loop {@code i} lies: even for an outer loop, odd for an opening. */
  public int depth(int i) {
    return depth[i];
  }

  /** The smallest loop that holds loop {@code i}, −1 for one in the open. */
  public int parent(int i) {
    return parent[i];
  }

  /** One outline for each loop of even depth, with the loops right inside it as openings. */
  public Region region() {
    List<Outline> pieces = new ArrayList<>();
    for (int i = 0; i < loops.size(); i++) {
      if (depth[i] % 2 != 0) {
        continue;
      }
      List<Loop> openings = new ArrayList<>();
      for (int j = 0; j < loops.size(); j++) {
        if (parent[j] == i) {
          openings.add(loops.get(j));
        }
      }
      pieces.add(new Outline(loops.get(i), openings));
    }
    return new Region(pieces);
  }
}
