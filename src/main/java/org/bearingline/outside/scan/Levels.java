package org.bearingline.outside.scan;

/**
 * The light of ground and template all over a picture, as if each went on beneath the other; the
 * edge between them is where the light is half way.
 */
final class Levels {

  /** Blocks over which the light of one kind is evened out: wood has grain, paper has creases. */
  private static final int REACH = 4;

  private final Blocks blocks;
  private final double[] ground;
  private final double[] template;
  private final boolean lighter;
  private final Lighting lighting;
  private final boolean groundIsSecond;

  private Levels(
      Blocks blocks,
      Lighting lighting,
      boolean groundIsSecond,
      double[] ground,
      double[] template,
      boolean lighter) {
    this.blocks = blocks;
    this.lighting = lighting;
    this.groundIsSecond = groundIsSecond;
    this.ground = ground;
    this.template = template;
    this.lighter = lighter;
  }

  static Levels of(Blocks blocks, Lighting lighting) {
    return of(blocks, lighting, groundIsSecond(blocks, lighting));
  }

  /** With that taken for the ground which does not lie along the rim. */
  static Levels exchanged(Blocks blocks, Lighting lighting) {
    return of(blocks, lighting, !groundIsSecond(blocks, lighting));
  }

  private static Levels of(Blocks blocks, Lighting lighting, boolean groundIsSecond) {
    double[] ground = kind(blocks, lighting, groundIsSecond);
    double[] template = kind(blocks, lighting, !groundIsSecond);
    boolean lighter = lighting.expected(0, !groundIsSecond) > lighting.expected(0, groundIsSecond);
    return new Levels(blocks, lighting, groundIsSecond, ground, template, lighter);
  }

  /** The ground is what lies along the rim of what is looked at. */
  private static boolean groundIsSecond(Blocks blocks, Lighting lighting) {
    int second = 0;
    int rim = 0;
    for (int i = 0; i < blocks.count(); i++) {
      if (blocks.seen()[i] && blocks.isRim(i % blocks.columns(), i / blocks.columns(), 2)) {
        rim++;
        second += lighting.isSecond(i) ? 1 : 0;
      }
    }
    return 2 * second > rim;
  }

  /** Light of one kind in every block: the lamp's, corrected by what is seen of the kind nearby. */
  private static double[] kind(Blocks blocks, Lighting lighting, boolean second) {
    int columns = blocks.columns();
    double[] off = new double[blocks.count()];
    double[] weight = new double[blocks.count()];
    for (int i = 0; i < off.length; i++) {
      if (isPure(blocks, lighting, second, i % columns, i / columns)) {
        off[i] = Math.log(blocks.light()[i]) - lighting.expected(i, second);
        weight[i] = 1;
      }
    }
    for (int round = 0; round < 3; round++) {
      off = evened(off, columns, blocks.rows());
      weight = evened(weight, columns, blocks.rows());
    }
    double[] light = new double[off.length];
    for (int i = 0; i < light.length; i++) {
      light[i] = Math.exp(lighting.expected(i, second) + off[i] / (weight[i] + 0.02));
    }
    return light;
  }

  private static boolean isPure(
      Blocks blocks, Lighting lighting, boolean second, int column, int row) {
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        int at = (row + dy) * blocks.columns() + column + dx;
        if (!blocks.isSeen(column + dx, row + dy) || lighting.isSecond(at) != second) {
          return false;
        }
      }
    }
    return true;
  }

  /** Running mean over a square of blocks; three of them are nearly a bell. */
  private static double[] evened(double[] values, int columns, int rows) {
    double[] along = new double[values.length];
    for (int y = 0; y < rows; y++) {
      mean(values, along, y * columns, 1, columns);
    }
    double[] both = new double[values.length];
    for (int x = 0; x < columns; x++) {
      mean(along, both, x, columns, rows);
    }
    return both;
  }

  private static void mean(double[] from, double[] into, int start, int step, int count) {
    double sum = 0;
    for (int i = -REACH; i < count; i++) {
      if (i + REACH < count) {
        sum += from[start + (i + REACH) * step];
      }
      if (i - REACH - 1 >= 0) {
        sum -= from[start + (i - REACH - 1) * step];
      }
      if (i >= 0) {
        into[start + i * step] = sum / (2 * REACH + 1);
      }
    }
  }

  boolean templateIsLighter() {
    return lighter;
  }

  /** Light of the bare ground at a place in pixels. */
  double ground(double x, double y) {
    return between(ground, x, y);
  }

  /** Light of the template's face at a place in pixels. */
  double template(double x, double y) {
    return between(template, x, y);
  }

  /** Light that the lamp gives the ground at a place, whatever may lie there. */
  double lampOnGround(double x, double y) {
    return Math.exp(lighting.expected(block(x, y), groundIsSecond));
  }

  /** Light that the lamp gives the template at a place, whatever may lie there. */
  double lampOnTemplate(double x, double y) {
    return Math.exp(lighting.expected(block(x, y), !groundIsSecond));
  }

  private int block(double x, double y) {
    int column = Math.max(0, Math.min(blocks.columns() - 1, (int) (x / blocks.size())));
    int row = Math.max(0, Math.min(blocks.rows() - 1, (int) (y / blocks.size())));
    return row * blocks.columns() + column;
  }

  /** Light half way from ground to template. */
  double half(double x, double y) {
    return (ground(x, y) + template(x, y)) / 2;
  }

  /** Light half way for a whole row: down between two rows of blocks first, then along. */
  void halfRow(int y, float[] into) {
    double row = Math.max(0, Math.min(blocks.rows() - 1, (y + 0.5) / blocks.size() - 0.5));
    int y0 = Math.min(blocks.rows() - 2, (int) row);
    double[] middle = new double[blocks.columns()];
    for (int x = 0; x < middle.length; x++) {
      int at = y0 * blocks.columns() + x;
      int below = at + blocks.columns();
      double upper = (ground[at] + template[at]) / 2;
      double lower = (ground[below] + template[below]) / 2;
      middle[x] = upper + (lower - upper) * (row - y0);
    }
    for (int x = 0; x < into.length; x++) {
      double column = Math.max(0, Math.min(middle.length - 1, (x + 0.5) / blocks.size() - 0.5));
      int x0 = Math.min(middle.length - 2, (int) column);
      into[x] = (float) (middle[x0] + (middle[x0 + 1] - middle[x0]) * (column - x0));
    }
  }

  private double between(double[] values, double x, double y) {
    double column = (x + 0.5) / blocks.size() - 0.5;
    double row = (y + 0.5) / blocks.size() - 0.5;
    int x0 = Math.max(0, Math.min(blocks.columns() - 2, (int) column));
    int y0 = Math.max(0, Math.min(blocks.rows() - 2, (int) row));
    double fx = Math.max(0, Math.min(1, column - x0));
    double fy = Math.max(0, Math.min(1, row - y0));
    int at = y0 * blocks.columns() + x0;
    double upper = values[at] * (1 - fx) + values[at + 1] * fx;
    double lower =
        values[at + blocks.columns()] * (1 - fx) + values[at + blocks.columns() + 1] * fx;
    return upper * (1 - fy) + lower * fy;
  }
}
