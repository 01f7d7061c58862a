package org.bearingline.outside.clean;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/**
 * What cleaning did; lengths in mm.
 *
 * @param tolerance the one kept to: the asked one, or the sketch's noise
 * @param largestMove largest distance between drawn and clean line, found by dense sampling of both
 * @param largestMoveAt where on the clean line that is
 * @param piecesBefore lines, chords, arcs and curves as drawn
 * @param piecesAfter lines and arcs of the clean outlines
 * @param gaps joined within the chaining distance
 * @param doubledPoints points that fell on the one before, dropped
 * @param doubledStrokes strokes drawn over others, dropped
 * @param lines straight lines of the result
 * @param arcs arcs of the result, whole circles not counted
 * @param circles whole circles of the result
 * @param jointsMadeTangent joints that turned a little and now run on smoothly
 * @param largestJointTurn the largest turn so removed, in degrees
 * @param symmetryMove largest move made for the sake of symmetry; empty where none was asked
 * @param united what became of shapes that lie over each other; empty where they were not to be
 *     united
 * @param faults why the outlines are not to be used; empty for a sound result
 * @param notes what else a maker should know, one sentence each
 */
public record CleaningReport(
    double tolerance,
    double largestMove,
    Point largestMoveAt,
    int piecesBefore,
    int piecesAfter,
    ClosedGaps gaps,
    int doubledPoints,
    int doubledStrokes,
    int lines,
    int arcs,
    int circles,
    int jointsMadeTangent,
    double largestJointTurn,
    OptionalDouble symmetryMove,
    Optional<UnitedShapes> united,
    List<Fault> faults,
    List<String> notes) {

  public CleaningReport {
    Objects.requireNonNull(largestMoveAt);
    Objects.requireNonNull(gaps);
    Objects.requireNonNull(symmetryMove);
    Objects.requireNonNull(united);
    faults = List.copyOf(faults);
    notes = List.copyOf(notes);
  }

  /** The same with its places moved. */
  CleaningReport moved(Similarity map) {
    return new CleaningReport(
        tolerance,
        largestMove,
        map.apply(largestMoveAt),
        piecesBefore,
        piecesAfter,
        new ClosedGaps(
            gaps.count(), gaps.largest(), gaps.places().stream().map(map::apply).toList()),
        doubledPoints,
        doubledStrokes,
        lines,
        arcs,
        circles,
        jointsMadeTangent,
        largestJointTurn,
        symmetryMove,
        united,
        faults.stream()
            .map(fault -> new Fault(fault.kind(), map.apply(fault.at()), fault.source()))
            .toList(),
        notes);
  }
}
