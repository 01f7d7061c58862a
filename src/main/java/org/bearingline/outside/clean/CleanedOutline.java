package org.bearingline.outside.clean;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.Sketch;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * A cleaned drawing.
 *
 * @param drawn the sketch in mm, as sized, before cleaning
 * @param outlines clean lines and arcs, nested, from the largest area down, those of one area from
 *     left to right; to be used only where the report has no fault
 * @param open clean stretches that close to no loop
 * @param report what was done and what is wrong
 */
public record CleanedOutline(
    Sketch drawn, List<Outline> outlines, List<Path> open, CleaningReport report) {

  public CleanedOutline {
    Objects.requireNonNull(drawn);
    outlines = List.copyOf(outlines);
    open = List.copyOf(open);
    Objects.requireNonNull(report);
  }

  /** The same moved by a map that keeps size, for a drawing that was so moved before. */
  CleanedOutline moved(Similarity map, Sketch original) {
    return new CleanedOutline(
        original,
        LargestFirst.of(outlines.stream().map(outline -> outline.transformed(map)).toList()),
        open.stream().map(path -> path.transformed(map)).toList(),
        report.moved(map));
  }

  /** This, where it has no fault; else a Problem whose sentence names the first with its place. */
  public CleanedOutline sound() {
    List<Fault> faults = report.faults();
    if (faults.isEmpty()) {
      return this;
    }
    Fault first = faults.get(0);
    if (canUnite()) {
      first = faults.stream().filter(fault -> fault.kind() == Fault.Kind.MEETING).findFirst().get();
    }
    String more = faults.size() == 1 ? "" : " (and %d more)".formatted(faults.size() - 1);
    throw new Problem(
        Place.file(drawn.file()),
        first.sentence(drawn)
            + more
            + "; "
            + Waver.among(report.notes()).orElse(first.kind().mending()));
  }

  /** Whether nothing is wrong but that there are several outlines, none in the other's wood. */
  public boolean isSeveral() {
    return report.faults().isEmpty() && outlines.size() > 1;
  }

  /**
   * Whether nothing is wrong but that outlines lie over each other, filled shapes among them: these
   * may be united, and a line without a fill may then lie inside them.
   */
  public boolean canUnite() {
    List<Fault.Kind> kinds = report.faults().stream().map(Fault::kind).distinct().toList();
    return kinds.contains(Fault.Kind.MEETING)
        && Set.of(Fault.Kind.MEETING, Fault.Kind.LINES_MEETING).containsAll(kinds);
  }
}
