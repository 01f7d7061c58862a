package org.bearingline.routing.operation;

import java.util.Objects;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.routing.Template;

/**
 * The edge that an operation shapes or follows.
 *
 * @param of {@link Template#OUTSIDE_EDGE}, a cavity's name, or the operation's own name
 * @param outside whether it is an outer edge, whose wood lies inside it
 * @param contour as designed, wood on the left; a sawn stretch of an opening is its open end
 */
public record Target(String of, boolean outside, Contour contour) {

  public Target {
    Objects.requireNonNull(of);
    contour = outside ? contour.counterClockwise() : contour.clockwise();
  }

  public static Target outside(Contour contour) {
    return new Target(Template.OUTSIDE_EDGE, true, contour);
  }

  public static Target opening(String of, Contour contour) {
    return new Target(of, false, contour);
  }

  Target mirrored(Similarity mirror) {
    return new Target(of, outside, contour.transformed(mirror));
  }
}
