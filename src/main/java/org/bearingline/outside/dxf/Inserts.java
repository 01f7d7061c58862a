package org.bearingline.outside.dxf;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outside.Affine;
import org.bearingline.problem.Problem;

/** Where the copies of a block come to lie. */
final class Inserts {

  /** Most copies of one array. */
  private static final int MOST = 100_000;

  private Inserts() {}

  /**
   * The map of each copy from the block's coordinates: the block's {@code base} goes to the place
   * of the insert, scaled and then turned; the rows and columns of an array are turned and not
   * scaled.
   */
  static List<Affine> places(DxfEntity insert, Point base) {
    int columns = count(insert, 70);
    int rows = count(insert, 71);
    if ((long) columns * rows > MOST) {
      throw new Problem(
          insert.place(), "the array has more than 100,000 copies; take a part of it");
    }
    Affine turned =
        Affine.translation(insert.number(10), insert.number(20))
            .of(Affine.rotation(insert.number(50, 0)));
    Affine scaled =
        Affine.scaling(insert.number(41, 1), insert.number(42, 1))
            .of(Affine.translation(-base.x(), -base.y()));
    List<Affine> places = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        Affine step = Affine.translation(column * insert.number(44, 0), row * insert.number(45, 0));
        places.add(turned.of(step).of(scaled));
      }
    }
    return places;
  }

  private static int count(DxfEntity insert, int code) {
    double count = insert.number(code, 1);
    if (count > MOST) {
      throw new Problem(
          insert.place(), "the array has more than 100,000 copies; take a part of it");
    }
    return Math.max(1, (int) count);
  }
}
