package org.bearingline.routing.family;

import java.util.List;
import org.bearingline.outline.Outline;

/**
 * One curve, such as a lift, that stands in parts of different courses: a short template with this
 * curve alone makes it in all of them, one setting for each place.
 *
 * @param host the part whose template the short one is cut from
 * @param uses every place where the curve stands, in the job's order
 * @param plate the short template, in the host's coordinates
 * @param registration the lines at which the curve begins and ends, and the stops
 * @param tolerance mm within which curves count as the same
 * @param sentences for the maker
 */
public record SharedCurve(
    String host,
    List<Use> uses,
    Outline plate,
    List<Registration> registration,
    double tolerance,
    List<String> sentences) {

  public SharedCurve {
    uses = List.copyOf(uses);
    registration = List.copyOf(registration);
    sentences = List.copyOf(sentences);
  }

  /**
   * One place of the curve.
   *
   * @param part its name
   * @param setting how the part lies on the short template there
   * @param fromEnd mm from the left end of the part, as it lies, to where the curve begins
   * @param fromBack mm from the back of the part to where the curve begins
   */
  public record Use(String part, Setting setting, double fromEnd, double fromBack) {}
}
