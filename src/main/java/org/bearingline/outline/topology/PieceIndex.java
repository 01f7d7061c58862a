package org.bearingline.outline.topology;

import java.util.Arrays;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.ItemVisitor;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Finds the pieces whose bounds meet a box: by looking at each while there are few, by a packed
 * Hilbert tree when there are many. Not safe for use by several threads.
 */
public final class PieceIndex {

  /** Below this many pieces building a tree costs more than it saves. */
  private static final int FEW = 96;

  private final int size;
  private final double[] boxes;
  private final HPRtree tree;
  private final Collector collector;

  public PieceIndex(Pieces pieces) {
    size = pieces.size();
    boxes = new double[4 * size];
    for (int k = 0; k < size; k++) {
      pieces.box(k, boxes, 4 * k);
    }
    collector = new Collector();
    tree = size > FEW ? planted() : null;
  }

  private HPRtree planted() {
    HPRtree grown = new HPRtree();
    for (int k = 0; k < size; k++) {
      int b = 4 * k;
      grown.insert(new Envelope(boxes[b], boxes[b + 2], boxes[b + 1], boxes[b + 3]), k);
    }
    grown.build();
    return grown;
  }

  /**
   * Looks up the pieces whose bounds meet the box; they stand in {@link #hits()} until the next
   * query, in no promised order.
   *
   * @return how many there are
   */
  public int query(double minX, double minY, double maxX, double maxY) {
    collector.count = 0;
    if (tree != null) {
      tree.query(new Envelope(minX, maxX, minY, maxY), collector);
      return collector.count;
    }
    for (int k = 0, b = 0; k < size; k++, b += 4) {
      if (boxes[b] <= maxX
          && boxes[b + 2] >= minX
          && boxes[b + 1] <= maxY
          && boxes[b + 3] >= minY) {
        collector.add(k);
      }
    }
    return collector.count;
  }

  /** As {@link #query}, with the bounds of piece {@code k} grown by {@code margin} mm. */
  public int queryAround(int k, double margin) {
    int b = 4 * k;
    return query(
        boxes[b] - margin, boxes[b + 1] - margin, boxes[b + 2] + margin, boxes[b + 3] + margin);
  }

  /** As {@link #query}, with the bounds of a piece of another set grown by {@code margin} mm. */
  public int queryAround(Pieces others, int k, double margin) {
    double[] box = new double[4];
    others.box(k, box, 0);
    return query(box[0] - margin, box[1] - margin, box[2] + margin, box[3] + margin);
  }

  public int[] hits() {
    return collector.found;
  }

  /** Bounds of all pieces as min x, min y, max x, max y; inverted where there is none. */
  public double[] bounds() {
    double[] all = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (int b = 0; b < boxes.length; b += 4) {
      all[0] = Math.min(all[0], boxes[b]);
      all[1] = Math.min(all[1], boxes[b + 1]);
      all[2] = Math.max(all[2], boxes[b + 2]);
      all[3] = Math.max(all[3], boxes[b + 3]);
    }
    return all;
  }

  private static final class Collector implements ItemVisitor {

    private int[] found = new int[32];
    private int count;

    private void add(int k) {
      if (count == found.length) {
        found = Arrays.copyOf(found, count * 2);
      }
      found[count++] = k;
    }

    @Override
    public void visitItem(Object item) {
      add((Integer) item);
    }
  }
}
