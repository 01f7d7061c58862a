package org.bearingline.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.drawing.Item.Text.Anchor;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;

/**
 * Where the parts of a dimension stand, in the way of ISO 129-1 (from memory): thin lines, slender
 * heads, figures above the line, to be read from below or from the right. Where heads or figures do
 * not fit between the extension lines, the heads point inwards from outside and the figures stand
 * beside.
 *
 * @param extensions from the measured points to just past the dimension line; none for a radius
 * @param line the dimension line or a radius's pointer; empty where both points are one
 * @param heads tips and directions of the arrow heads
 * @param words anchor of the figures, half way up the capitals
 * @param degrees turn of the figures, in (-90, 90]
 * @param anchor which point along the figures stands at {@code words}
 */
public record DimensionLayout(
    List<Line> extensions,
    Optional<Line> line,
    List<Head> heads,
    Point words,
    double degrees,
    Anchor anchor) {

  /** Length of an arrow head as a share of the lettering's height. */
  public static final double HEAD = 0.7;

  /** From the dimension line up to the middle of the figures, in heights of the lettering. */
  private static final double LIFT = 0.75;

  /** Free space before figures that stand beside, in heights of the lettering. */
  private static final double SPACE = 0.3;

  /**
   * An arrow head.
   *
   * @param tip where it points
   * @param direction unit vector
   */
  public record Head(Point tip, Point direction) {}

  public DimensionLayout {
    extensions = List.copyOf(extensions);
    heads = List.copyOf(heads);
  }

  /**
   * Lays a dimension out.
   *
   * @param dimension what is measured
   * @param width mm of its figures
   * @param height of its lettering in mm, more than 0
   */
  public static DimensionLayout of(Item.Dimension dimension, double width, double height) {
    if (dimension.from().equals(dimension.to())) {
      return new DimensionLayout(
          List.of(), Optional.empty(), List.of(), dimension.to(), 0, Anchor.MIDDLE);
    }
    return dimension.isRadius() ? radius(dimension, height) : distance(dimension, width, height);
  }

  private static DimensionLayout radius(Item.Dimension dimension, double height) {
    Point direction = dimension.to().minus(dimension.from()).unit();
    boolean rightward = direction.x() > 0;
    double space = rightward ? -SPACE * height : SPACE * height;
    return new DimensionLayout(
        List.of(),
        Optional.of(new Line(dimension.from(), dimension.to())),
        List.of(new Head(dimension.to(), direction)),
        dimension.from().plus(new Point(space, 0)),
        0,
        rightward ? Anchor.END : Anchor.START);
  }

  private static DimensionLayout distance(Item.Dimension dimension, double width, double height) {
    Point along = dimension.to().minus(dimension.from()).unit();
    Point shift = along.left().times(dimension.offset());
    Point a = dimension.from().plus(shift);
    Point b = dimension.to().plus(shift);
    double head = HEAD * height;
    double span = a.distanceTo(b);
    boolean headsInside = span >= 3 * head;
    double spare = headsInside ? 0 : 2 * head;
    boolean wordsInside = span >= width + (headsInside ? 2.6 * head : 0.4 * height);
    double degrees = readable(along.degrees());
    Point reading = Point.polar(1, degrees);
    // The ends of the line, first and last in reading direction.
    boolean forward = reading.dot(along) > 0;
    Point first = (forward ? a : b).minus(reading.times(spare));
    Point last = (forward ? b : a).plus(reading.times(spare));
    Point up = reading.left().times(LIFT * height);
    Point middle = a.towards(b, 0.5).plus(up);
    Point beside = last.plus(reading.times(SPACE * height)).plus(up);
    Point end = wordsInside ? last : last.plus(reading.times(width + 2 * SPACE * height));
    return new DimensionLayout(
        extensions(dimension, a, b, height),
        Optional.of(new Line(first, end)),
        List.of(
            new Head(a, headsInside ? along.times(-1) : along),
            new Head(b, headsInside ? along : along.times(-1))),
        wordsInside ? middle : beside,
        degrees,
        wordsInside ? Anchor.MIDDLE : Anchor.START);
  }

  private static List<Line> extensions(Item.Dimension dimension, Point a, Point b, double height) {
    List<Line> lines = new ArrayList<>();
    double distance = Math.abs(dimension.offset());
    if (distance > 0) {
      Point out = a.minus(dimension.from()).times(1 / distance);
      Point near = out.times(Math.min(height * 0.3, distance / 2));
      Point far = out.times(height * 0.4);
      lines.add(new Line(dimension.from().plus(near), a.plus(far)));
      lines.add(new Line(dimension.to().plus(near), b.plus(far)));
    }
    return lines;
  }

  /** The turn at which words along that direction are read from below or from the right. */
  private static double readable(double degrees) {
    // A direction that is upright but for rounding is read from the right.
    if (degrees > 90 + 1e-9) {
      return degrees - 180;
    }
    return degrees <= -90 + 1e-9 ? degrees + 180 : degrees;
  }
}
