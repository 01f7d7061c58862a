package org.bearingline.outside.unite;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.topology.Meetings;

/**
 * Which shapes belong together: those of one level that cross, touch, or lie against each other.
 */
final class Relations {

  /** Share of the size within which two edges touch. */
  private static final double TOUCH = 1e-10;

  private final List<Outline> shapes;
  private final Bounds[] boxes;
  private final int[] group;
  private int[] level;
  private final Map<Integer, List<Loop>> bridges = new HashMap<>();

  private Relations(List<Outline> shapes) {
    this.shapes = shapes;
    boxes = shapes.stream().map(Outline::bounds).toArray(Bounds[]::new);
    group = new int[shapes.size()];
    Arrays.setAll(group, i -> i);
    level = new int[shapes.size()];
  }

  /** Two shapes whose edges come near each other. */
  private record Pair(int a, int b) {}

  static Relations of(List<Outline> shapes, double near) {
    Relations work = new Relations(shapes);
    if (shapes.size() > 1) {
      work.relate(near);
    }
    return work;
  }

  /** The number of the first shape that {@code i} belongs together with. */
  int groupOf(int i) {
    int root = i;
    while (group[root] != root) {
      root = group[root];
    }
    return root;
  }

  /** How deep shape {@code i} lies in others: 0 in the open, 1 for an opening, and so on. */
  int level(int i) {
    return level[i];
  }

  /** What fills the gaps between the shapes of a group. */
  List<Loop> bridgesOf(int i) {
    return bridges.getOrDefault(groupOf(i), List.of());
  }

  private void relate(double near) {
    Bounds all = Arrays.stream(boxes).reduce(Bounds::union).orElseThrow();
    double rounding = TOUCH * Math.max(all.width(), all.height());
    Map<Pair, List<Meetings.Meeting>> pairs = new HashMap<>();
    List<Pair> order = new ArrayList<>();
    for (Meetings.Meeting meeting : Meetings.of(shapes, near, rounding)) {
      Pair pair = new Pair(meeting.one().outline(), meeting.other().outline());
      pairs
          .computeIfAbsent(
              pair,
              p -> {
                order.add(p);
                return new ArrayList<>();
              })
          .add(meeting);
    }
    order.sort(Comparator.comparingInt(Pair::a).thenComparingInt(Pair::b));
    level = levels(pairs);
    Map<Pair, List<Loop>> filled = new HashMap<>();
    for (Pair pair : order) {
      if (level[pair.a()] != level[pair.b()]) {
        continue;
      }
      List<Meetings.Meeting> met = pairs.get(pair);
      List<Loop> gaps = new ArrayList<>();
      met.forEach(one -> gaps.addAll(Bridge.between(one.one(), one.other(), near)));
      boolean touch = met.stream().anyMatch(Meetings.Meeting::touch);
      if (touch || !gaps.isEmpty() || isIn(pair.a(), pair.b()) || isIn(pair.b(), pair.a())) {
        join(pair);
        filled.put(pair, gaps);
      }
    }
    for (int a = 0; a < shapes.size(); a++) {
      for (int b = a + 1; b < shapes.size(); b++) {
        Pair pair = new Pair(a, b);
        if (level[a] == level[b] && !pairs.containsKey(pair) && overlap(a, b)) {
          join(pair);
        }
      }
    }
    for (Pair pair : order) {
      if (filled.containsKey(pair)) {
        bridges.computeIfAbsent(groupOf(pair.a()), g -> new ArrayList<>()).addAll(filled.get(pair));
      }
    }
  }

  private void join(Pair pair) {
    int a = groupOf(pair.a());
    int b = groupOf(pair.b());
    group[Math.max(a, b)] = Math.min(a, b);
  }

  // How deep each lies in others whose edges it comes nowhere near.
  private int[] levels(Map<Pair, ?> near) {
    int n = shapes.size();
    Integer[] order = new Integer[n];
    Arrays.setAll(order, i -> i);
    double[] area = shapes.stream().mapToDouble(shape -> shape.outer().signedArea()).toArray();
    Arrays.sort(order, Comparator.comparingDouble(i -> -area[i]));
    int[] deep = new int[n];
    for (int k = 0; k < n; k++) {
      int inner = order[k];
      for (int j = 0; j < k; j++) {
        int outer = order[j];
        Pair pair = new Pair(Math.min(inner, outer), Math.max(inner, outer));
        if (!near.containsKey(pair) && isIn(inner, outer)) {
          deep[inner] = Math.max(deep[inner], deep[outer] + 1);
        }
      }
    }
    return deep;
  }

  // Asked of shapes whose edges do not cross: one point of each loop tells of all.
  private boolean isIn(int inner, int outer) {
    return reaches(shapes.get(inner).outer(), outer) && !fillsOpening(inner, outer);
  }

  // Whether the shapes have wood in common and none lies in the other, though no edges cross: one
  // covers an opening of the other.
  private boolean overlap(int a, int b) {
    return boxes[a].intersects(boxes[b])
        && (fillsOpening(a, b) && anyReaches(a, b) || fillsOpening(b, a) && anyReaches(b, a));
  }

  private boolean anyReaches(int a, int b) {
    return shapes.get(a).loops().stream().anyMatch(loop -> reaches(loop, b));
  }

  private boolean fillsOpening(int by, int of) {
    return shapes.get(of).openings().stream().anyMatch(opening -> reaches(opening, by));
  }

  private boolean reaches(Loop loop, int shape) {
    Point p = loop.primitives().get(0).middle();
    return boxes[shape].contains(p) && shapes.get(shape).contains(p);
  }
}
