package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/** Nests clean chains and sums up what was done. */
final class Result {

  private final List<Outline> outlines;
  private int lines;
  private int arcs;
  private int circles;
  private double largestMove;
  private Point largestMoveAt = Point.ORIGIN;
  private int doubledPoints;
  private int joints;
  private double largestJoint;

  private Result(List<Outline> outlines) {
    this.outlines = outlines;
  }

  static CleanedOutline of(
      Sketch sized,
      Chaining.Chained chained,
      List<CleanChain> chains,
      double tolerance,
      OptionalDouble symmetryMove,
      Optional<UnitedChains> united) {
    List<DrawnLoop> loops = new ArrayList<>();
    List<Path> open = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    united.ifPresent(one -> faults.addAll(one.faults()));
    for (CleanChain clean : chains) {
      Chain chain = clean.chain();
      if (clean.isLoop(tolerance)) {
        loops.add(DrawnLoop.of(clean, sized.figures()));
      } else if (!clean.pieces().isEmpty() && !chain.closed()) {
        open.add(new Path(clean.pieces()));
        Point start = clean.pieces().get(0).start();
        Point end = clean.pieces().get(clean.pieces().size() - 1).end();
        faults.add(new Fault(Fault.Kind.OPEN_END, start, chain.source()));
        faults.add(new Fault(Fault.Kind.OPEN_END, end, chain.source()));
      }
    }
    FigureNesting.Nested nested = FigureNesting.of(loops, sized.figures(), tolerance);
    faults.addAll(nested.faults());
    if (loops.isEmpty() && open.isEmpty()) {
      Chain first = chained.chains().get(0);
      faults.add(new Fault(Fault.Kind.NO_OUTLINE, first.pieces().get(0).start(), first.source()));
    }
    Result sum = new Result(nested.outlines());
    sum.count();
    chains.forEach(sum::measure);
    List<String> notes = new ArrayList<>(chained.notes());
    bulge(chains, tolerance).ifPresent(notes::add);
    notes.addAll(nested.notes());
    united.ifPresent(one -> notes.addAll(one.notes()));
    int doubledLoops = nested.doubledLoops() + united.map(UnitedChains::doubledLoops).orElse(0);
    return new CleanedOutline(
        sized,
        nested.outlines(),
        open,
        new CleaningReport(
            tolerance,
            sum.largestMove,
            sum.largestMoveAt,
            drawnPieces(sized),
            sum.lines + sum.arcs + sum.circles,
            chained.gaps(),
            sum.doubledPoints,
            chained.doubledStrokes() + doubledLoops,
            sum.lines,
            sum.arcs,
            sum.circles,
            sum.joints,
            sum.largestJoint,
            symmetryMove,
            united.map(UnitedChains::shapes),
            faults,
            notes));
  }

  // A curve lies further from the chords that stand for it than the tolerance tells.
  private static Optional<String> bulge(List<CleanChain> chains, double tolerance) {
    List<CleanChain> bent =
        chains.stream()
            .filter(chain -> chain.move().largest() > tolerance)
            .filter(chain -> chain.move().largest() <= tolerance + BentChords.rise(chain.course()))
            .toList();
    if (bent.isEmpty()) {
      return Optional.empty();
    }
    double most = bent.stream().mapToDouble(chain -> chain.move().largest()).max().orElseThrow();
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%s cut into chords; the clean line keeps to their corners and bulges out between them"
                + " by up to %.3f mm, as the curve did",
            bent.size() == 1
                ? "a curve of " + bent.get(0).chain().source() + " was"
                : bent.size() + " lines hold curves that were",
            Math.ceil(1000 * most) / 1000));
  }

  private static int drawnPieces(Sketch sketch) {
    int sum = 0;
    for (Figure figure : sketch.figures()) {
      for (Stroke stroke : figure.strokes()) {
        for (StrokePiece piece : stroke.pieces()) {
          sum += piece instanceof StrokePiece.Chords chords ? chords.points().size() - 1 : 1;
        }
      }
    }
    return sum;
  }

  private void count() {
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
  }

  private void measure(CleanChain clean) {
    doubledPoints += clean.doubledPoints();
    joints += clean.jointsMadeTangent();
    largestJoint = Math.max(largestJoint, clean.largestJointTurn());
    if (clean.move().largest() > largestMove) {
      largestMove = clean.move().largest();
      largestMoveAt = clean.move().at();
    }
  }
}
