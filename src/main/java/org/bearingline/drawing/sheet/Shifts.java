package org.bearingline.drawing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Where a row of overlapping cells may begin along one axis. First come the shifts that a person
 * would try: the drawing in the middle of the pages it needs, at their start, at their end. Then
 * those that set a cell's edge to an end of some line, where the count of pages can change, and a
 * fine even series for what happens at the cells' corners.
 *
 * @param spans ends of the lines along the axis, mm
 * @param cell what a cell shows for sure, mm
 * @param step distance of cells, mm
 */
record Shifts(List<Span> spans, double cell, double step) {

  /** The stretch of one line along the axis. */
  record Span(double from, double to) {}

  private double low() {
    return spans.stream().mapToDouble(Span::from).min().orElseThrow();
  }

  private double high() {
    return spans.stream().mapToDouble(Span::to).max().orElseThrow();
  }

  /** How many cells a line that runs from end to end of the drawing needs. */
  private int dense() {
    double beyond = high() - low() - cell;
    return beyond <= 0 ? 1 : 1 + (int) Math.ceil((beyond - 1e-9) / step);
  }

  /** The fewest cells of this width, wherever they stand, that hold all spans: none can do less. */
  int fewest() {
    List<Span> sorted =
        spans.stream()
            .sorted(Comparator.comparingDouble(Span::from).thenComparingDouble(Span::to))
            .toList();
    int cells = 0;
    double covered = Double.NEGATIVE_INFINITY;
    for (Span span : sorted) {
      if (span.to <= covered + 1e-6) {
        continue;
      }
      double start = Math.max(span.from, covered);
      int more = Math.max(1, (int) Math.ceil((span.to - start - 1e-6) / cell));
      cells += more;
      covered = start + more * cell;
    }
    return cells;
  }

  /** Starts of a cell, at most {@code limit}, the likeliest first. */
  List<Double> starts(int limit) {
    double slack = (dense() - 1) * step + cell - (high() - low());
    Set<Double> starts = new LinkedHashSet<>();
    double middle = low() - slack / 2;
    starts.add(middle);
    starts.add(low());
    starts.add(low() - slack);
    List<Double> ends = new ArrayList<>();
    for (Span span : spans) {
      ends.add(span.from);
      ends.add(span.to - cell);
    }
    int stride = Math.max(1, 2 * ends.size() / Math.max(1, limit));
    for (int i = 0; i < ends.size(); i += stride) {
      starts.add(reduced(ends.get(i)));
    }
    int even = Math.max(1, limit - starts.size());
    for (int i = 1; i < even; i++) {
      starts.add(reduced(middle + step * i / even));
    }
    return starts.stream().limit(Math.max(3, limit)).toList();
  }

  /** The same grid, begun in the cell that holds the drawing's low end. */
  private double reduced(double start) {
    double into = (low() - start) % step;
    return low() - (into < 0 ? into + step : into);
  }
}
