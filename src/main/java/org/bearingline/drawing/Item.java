package org.bearingline.drawing;

import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/** One thing on a layer, full size in millimetres. */
public sealed interface Item {

  /** A box that holds the item's geometry; text counts with its anchor only. */
  Bounds bounds();

  /** A line along a path. */
  record Stroke(Path path) implements Item {
    @Override
    public Bounds bounds() {
      return path.bounds();
    }
  }

  /** A filled area, such as a leftover. */
  record Fill(Outline outline) implements Item {
    @Override
    public Bounds bounds() {
      return outline.bounds();
    }
  }

  /** A hole to drill, drawn as a circle with a cross at its centre. */
  record Drill(Point at, double diameter) implements Item {
    @Override
    public Bounds bounds() {
      return Bounds.of(at).grown(diameter / 2);
    }
  }

  /**
   * An arrow along a path, its head at the path's end.
   *
   * @param path where it runs
   * @param head length of the head in mm
   */
  record Arrow(Path path, double head) implements Item {
    @Override
    public Bounds bounds() {
      return path.bounds().grown(head / 2);
    }
  }

  /**
   * Words on the drawing.
   *
   * @param at the anchor
   * @param text one line
   * @param height size of the font, its em, in mm; capitals are about 0.7 of it
   * @param degrees counter-clockwise turn of the base line
   * @param anchor which point of the line of text stands on {@code at}
   */
  record Text(Point at, String text, double height, double degrees, Anchor anchor) implements Item {

    public Text {
      if (!(height > 0)) {
        throw new IllegalArgumentException("lettering has a positive height, got " + height);
      }
    }

    /** Horizontal place of the anchor; capitals are centred on it vertically. */
    public enum Anchor {
      START,
      MIDDLE,
      END
    }

    @Override
    public Bounds bounds() {
      return Bounds.of(at);
    }
  }

  /**
   * A measured distance or radius; the words are made in {@code export} in the reader's units. A
   * radius, known by a prefix that starts with "R", is drawn as a pointer from its figures, which
   * stand at {@code from}, to the arc at {@code to}.
   *
   * @param from first measured point
   * @param to second measured point
   * @param offset signed distance in mm of the dimension line from the points, to the left of
   *     from→to
   * @param prefix set before the number, such as "R "; may be empty
   * @param value mm; given apart because a radius is not the distance of the two points drawn
   */
  record Dimension(Point from, Point to, double offset, String prefix, double value)
      implements Item {

    /** Whether this is a radius rather than a distance. */
    public boolean isRadius() {
      return prefix.startsWith("R");
    }

    @Override
    public Bounds bounds() {
      Bounds box = Bounds.of(from, to);
      if (from.equals(to)) {
        return box;
      }
      Point shift = to.minus(from).unit().left().times(offset);
      return box.union(Bounds.of(from.plus(shift), to.plus(shift)));
    }
  }
}
