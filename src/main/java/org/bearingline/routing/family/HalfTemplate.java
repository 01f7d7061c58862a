package org.bearingline.routing.family;

import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.routing.RoutingResult;

/**
 * One half of a symmetric part's template and a little past the centre line; turned over on the
 * centre line it makes the other half.
 *
 * @param part its name
 * @param plate the half plate, in the part's coordinates
 * @param axisFrom one point of the centre line
 * @param axisTo another
 * @param pastCentre mm it goes on past the centre line
 * @param deviation mm by which the part's two halves differ at most
 * @param registration lines to draw on it
 * @param sentences for the maker
 */
public record HalfTemplate(
    String part,
    Outline plate,
    Point axisFrom,
    Point axisTo,
    double pastCentre,
    double deviation,
    List<Registration> registration,
    List<String> sentences) {

  public HalfTemplate {
    registration = List.copyOf(registration);
    sentences = List.copyOf(sentences);
  }

  /**
   * The half template of a part's outer edge.
   *
   * @throws org.bearingline.problem.Problem where the part's outer edge is not routed or has no
   *     centre line
   */
  public static HalfTemplate of(RoutingResult result, Units units) {
    return new HalfBuilder(result, units).build();
  }
}
