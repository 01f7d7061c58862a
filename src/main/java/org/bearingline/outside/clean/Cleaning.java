package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.fit.CurveFit;
import org.bearingline.outline.topology.Nesting;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/** Cleans a drawing. */
public final class Cleaning {

  private Cleaning() {}

  /**
   * The drawing's outlines as few tangent lines and arcs. Faults stand in the report; a Problem is
   * thrown only where the drawing has no size or the settings contradict it.
   */
  public static CleanedOutline clean(Sketch sketch, CleaningSettings settings) {
    Sketch sized = Sizing.sized(sketch, settings);
    double tolerance = Math.max(settings.tolerance(), sized.noise().orElse(0));
    List<Loop> loops = new ArrayList<>();
    List<Path> open = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    int before = 0;
    for (Figure figure : sized.figures()) {
      for (Stroke stroke : figure.strokes()) {
        List<Primitive> all = new ArrayList<>();
        for (StrokePiece piece : stroke.pieces()) {
          add(piece, tolerance, all);
        }
        before += all.size();
        Point start = all.get(0).start();
        Point end = all.get(all.size() - 1).end();
        double gap = start.distanceTo(end);
        if (gap > 0 && (stroke.closed() || gap <= settings.gap())) {
          all.add(new Line(end, start));
        }
        if (gap == 0 || stroke.closed() || gap <= settings.gap()) {
          loops.add(new Loop(all));
        } else {
          open.add(new Path(all));
          faults.add(new Fault(Fault.Kind.OPEN_END, end, figure.source()));
        }
      }
    }
    List<Outline> outlines = new ArrayList<>(Nesting.region(loops).pieces());
    outlines.sort(Comparator.comparingDouble(Outline::area).reversed());
    int lines = 0;
    int arcs = 0;
    int circles = 0;
    for (Outline outline : outlines) {
      for (Loop loop : outline.loops()) {
        for (Primitive piece : loop.primitives()) {
          if (piece instanceof Arc arc) {
            circles += arc.isFullCircle() ? 1 : 0;
            arcs += arc.isFullCircle() ? 0 : 1;
          } else {
            lines++;
          }
        }
      }
    }
    CleaningReport report =
        new CleaningReport(
            tolerance,
            tolerance,
            Point.ORIGIN,
            before,
            lines + arcs + circles,
            ClosedGaps.NONE,
            0,
            0,
            lines,
            arcs,
            circles,
            0,
            0,
            OptionalDouble.empty(),
            faults,
            List.of());
    return new CleanedOutline(sized, outlines, open, report);
  }

  private static void add(StrokePiece piece, double tolerance, List<Primitive> all) {
    if (piece instanceof StrokePiece.Plain plain) {
      all.add(plain.primitive());
    } else if (piece instanceof StrokePiece.Free free) {
      all.addAll(CurveFit.fit(free.curve(), tolerance).primitives());
    } else if (piece instanceof StrokePiece.Chords chords) {
      for (int i = 0; i + 1 < chords.points().size(); i++) {
        if (!chords.points().get(i).equals(chords.points().get(i + 1))) {
          all.add(new Line(chords.points().get(i), chords.points().get(i + 1)));
        }
      }
    }
  }
}
