package org.bearingline.drawing.labels;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.DimensionLayout;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Item.Text.Anchor;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/** The boxes that words take up: one where they stand square to the paper, else a row of them. */
final class WordBoxes {

  /** From half way up the capitals to the top and bottom of the letters, in ems. */
  static final double HALF = 0.55;

  private final double least;

  /** With boxes of at least {@code least} mm in a slanting row. */
  WordBoxes(double least) {
    this.least = least;
  }

  /** The box of upright words with the given middle. */
  static Bounds upright(Point middle, double width, double height) {
    return new Bounds(
        middle.x() - width / 2,
        middle.y() - HALF * height,
        middle.x() + width / 2,
        middle.y() + HALF * height);
  }

  List<Bounds> of(Item.Text text, double width) {
    return of(text.at(), text.degrees(), text.anchor(), width, text.height());
  }

  List<Bounds> of(DimensionLayout layout, double width, double height) {
    return of(layout.words(), layout.degrees(), layout.anchor(), width, height);
  }

  private List<Bounds> of(Point at, double degrees, Anchor anchor, double width, double height) {
    double back =
        switch (anchor) {
          case START -> 0;
          case MIDDLE -> width / 2;
          case END -> width;
        };
    Point left = at.minus(Point.polar(back, degrees));
    Point along = Point.polar(width, degrees);
    Point up = Point.polar(HALF * height, degrees + 90);
    boolean square = degrees % 90 == 0;
    int count = square ? 1 : (int) Math.ceil(width / Math.max(least, HALF * height));
    List<Bounds> boxes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point from = left.plus(along.times((double) i / count));
      Point to = left.plus(along.times((i + 1.0) / count));
      boxes.add(
          Bounds.of(from.minus(up), to.minus(up)).union(Bounds.of(from.plus(up), to.plus(up))));
    }
    return boxes;
  }
}
