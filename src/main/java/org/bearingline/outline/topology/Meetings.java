package org.bearingline.outline.topology;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Primitive;

/** Finds where edges of different outlines come near each other. */
public final class Meetings {

  private final Pieces pieces = new Pieces(16);
  private final List<Edge> edges = new ArrayList<>();
  private final double distance;

  private Meetings(List<Outline> outlines, double distance) {
    this.distance = distance;
    for (int o = 0; o < outlines.size(); o++) {
      for (Loop loop : outlines.get(o).loops()) {
        for (int i = 0; i < loop.size(); i++) {
          pieces.add(loop.primitives().get(i), 0, 0, o);
          edges.add(new Edge(o, loop, i));
        }
      }
    }
  }

  /**
   * A piece of an outline.
   *
   * @param outline its number
   * @param loop of that outline
   * @param piece its place in the loop
   */
  public record Edge(int outline, Loop loop, int piece) {

    public Primitive primitive() {
      return loop.primitives().get(piece);
    }

    /** The piece before it in the loop. */
    public Primitive before() {
      return loop.primitives().get((piece + loop.size() - 1) % loop.size());
    }

    public Primitive after() {
      return loop.primitives().get((piece + 1) % loop.size());
    }
  }

  /**
   * Two pieces near each other, the one of the outline with the lower number first.
   *
   * @param touch whether they cross or touch, to within rounding
   */
  public record Meeting(Edge one, Edge other, boolean touch) {}

  /**
   * All pieces of different outlines that come as near as {@code distance} mm.
   *
   * @param rounding mm within which two edges touch
   */
  public static List<Meeting> of(List<Outline> outlines, double distance, double rounding) {
    return new Meetings(outlines, distance).found(rounding);
  }

  private List<Meeting> found(double rounding) {
    List<Meeting> found = new ArrayList<>();
    PieceIndex index = new PieceIndex(pieces);
    Crossings wide = new Crossings(pieces, distance);
    Crossings fine = new Crossings(pieces, rounding);
    for (int i = 0; i < pieces.size(); i++) {
      int count = index.queryAround(i, distance);
      int[] hits = index.hits();
      for (int h = 0; h < count; h++) {
        int j = hits[h];
        if (pieces.source[i] < pieces.source[j] && meet(i, j, wide, distance)) {
          found.add(new Meeting(edges.get(i), edges.get(j), meet(i, j, fine, rounding)));
        }
      }
    }
    return found;
  }

  private boolean meet(int i, int j, Crossings crossings, double within) {
    return pieces.distance(j, pieces.x0[i], pieces.y0[i]) <= within
        || pieces.distance(j, pieces.x1[i], pieces.y1[i]) <= within
        || pieces.distance(i, pieces.x0[j], pieces.y0[j]) <= within
        || pieces.distance(i, pieces.x1[j], pieces.y1[j]) <= within
        || crossings.cross(i, j) > 0;
  }
}
