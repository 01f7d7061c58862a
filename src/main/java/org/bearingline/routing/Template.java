package org.bearingline.routing;

import java.util.List;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;

/**
 * T = P ⊖ D(R − r) where R ≥ r, T = P ⊕ D(r − R) where R &lt; r: the plate that the follower rides,
 * for a part P, follower radius R and cutter radius r.
 *
 * @param number 1 for the first plate of the part
 * @param title what it is for, such as "template" or "template 2: opening"
 * @param plate the plate with all its openings
 * @param workingEdges the stretches the follower rides, run-out included, plate on the left
 * @param serves names of what it shapes: "outside edge" or a cavity's name
 * @param offset mm from the part's edge to the template's, positive to the waste side: r − R
 * @param notes sentences for the maker
 */
public record Template(
    int number,
    String title,
    Outline plate,
    List<Path> workingEdges,
    List<String> serves,
    double offset,
    List<String> notes) {

  /** The name of the part's outer edge in {@link #serves}. */
  public static final String OUTSIDE_EDGE = "outside edge";

  public Template {
    workingEdges = List.copyOf(workingEdges);
    serves = List.copyOf(serves);
    notes = List.copyOf(notes);
  }
}
