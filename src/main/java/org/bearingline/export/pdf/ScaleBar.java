package org.bearingline.export.pdf;

import org.bearingline.export.Ink;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Point;

/**
 * A bar to lay a rule on: 100 mm on one side, 4 inches on the other, both from the same end.
 *
 * @param name X across the paper, Y along it
 * @param zero where both measures begin, mm of the page
 * @param upright whether it runs up the page, else to the right
 */
record ScaleBar(String name, Point zero, boolean upright) {

  static final double MILLIMETRES = 100;
  static final double INCHES = 4 * 25.4;

  private static final Ink BLACK = new Ink(0, 0, 0);
  private static final double WIDTH = 0.18;
  private static final double TICK = 1.5;
  private static final double LONG_TICK = 2.6;
  private static final double SIZE = 2.5;

  /** Height of capitals as a share of the em. */
  private static final double CAPITALS = Typeface.REGULAR.capHeight(1);

  void draw(Canvas canvas) {
    canvas.pen(BLACK, WIDTH);
    canvas.brush(BLACK);
    canvas.rule(point(0, 0), point(INCHES, 0));
    for (int cm = 0; cm <= 10; cm++) {
      canvas.rule(point(10.0 * cm, 0), point(10.0 * cm, cm % 5 == 0 ? LONG_TICK : TICK));
    }
    for (int inch = 0; inch <= 4; inch++) {
      canvas.rule(point(25.4 * inch, 0), point(25.4 * inch, inch % 4 == 0 ? -LONG_TICK : -TICK));
    }
    double turn = upright ? 90 : 0;
    double low = SIZE * CAPITALS / 2;
    // Names stand just inside the last ticks, where no tick can be mistaken for another.
    canvas.text(Typeface.REGULAR, SIZE, point(98.8, 1.8), turn, 1, 1, "100 mm");
    canvas.text(Typeface.REGULAR, SIZE, point(100.4, -1.0 - 2 * low), turn, 1, 1, "4 in");
    canvas.text(Typeface.SEMIBOLD, 4, point(-1.5, -4 * CAPITALS / 2), turn, 1, 1, name);
  }

  /** The point {@code along} mm on the bar and {@code aside} mm to its left. */
  private Point point(double along, double aside) {
    return upright ? zero.plus(new Point(-aside, along)) : zero.plus(new Point(along, aside));
  }
}
