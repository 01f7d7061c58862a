package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** Area between a saw line and the routed edge it runs beside, in mm². */
final class Waste {

  private Waste() {}

  static double between(Path line, RoutedEdge edge) {
    if (line.isClosed()) {
      return new Loop(line.primitives()).signedArea() - edge.contour().loop().signedArea();
    }
    List<Primitive> beside = nearestRun(line, edge.run());
    // Round the strip: along the line, across to the edge's end, back along the edge, and across.
    Point about = line.start();
    double doubled = 0;
    for (Primitive piece : line.primitives()) {
      doubled += piece.doubledSweptArea(about);
    }
    for (Primitive piece : beside) {
      doubled -= piece.doubledSweptArea(about);
    }
    Point first = beside.get(0).start().minus(about);
    Point last = beside.get(beside.size() - 1).end().minus(about);
    doubled += line.end().minus(about).cross(last) + first.cross(line.start().minus(about));
    return doubled / 2;
  }

  /** The routed stretch whose ends come nearest to the line's. */
  private static List<Primitive> nearestRun(Path line, ExtendedEdge edge) {
    List<Primitive> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (List<Primitive> run : runs(edge)) {
      double apart =
          run.get(0).start().distanceTo(line.start())
              + run.get(run.size() - 1).end().distanceTo(line.end());
      if (apart < least) {
        least = apart;
        best = run;
      }
    }
    return best;
  }

  private static List<List<Primitive>> runs(ExtendedEdge edge) {
    List<List<Primitive>> runs = new ArrayList<>();
    int n = edge.loop().size();
    List<Primitive> run = new ArrayList<>();
    int first = 0;
    while (first < n && edge.stretches().get(first) == Stretch.ROUTED) {
      first++;
    }
    for (int i = 1; i <= n; i++) {
      int here = (first + i) % n;
      if (edge.stretches().get(here) == Stretch.ROUTED) {
        run.add(edge.loop().primitives().get(here));
      } else if (!run.isEmpty()) {
        runs.add(run);
        run = new ArrayList<>();
      }
    }
    return runs;
  }
}
