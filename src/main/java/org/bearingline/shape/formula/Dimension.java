package org.bearingline.shape.formula;

/**
 * What a value is: a quantity with an exponent of length and one of angle, a truth, or a word.
 *
 * @param sort which of the three
 * @param length exponent of length: 1 for a length, 2 for an area
 * @param angle exponent of angle
 */
public record Dimension(Sort sort, int length, int angle) {

  /** The three sorts of value. */
  public enum Sort {
    QUANTITY,
    TRUTH,
    WORD
  }

  public static final Dimension NUMBER = quantity(0, 0);
  public static final Dimension LENGTH = quantity(1, 0);
  public static final Dimension AREA = quantity(2, 0);
  public static final Dimension ANGLE = quantity(0, 1);
  public static final Dimension TRUTH = new Dimension(Sort.TRUTH, 0, 0);
  public static final Dimension WORD = new Dimension(Sort.WORD, 0, 0);

  private static Dimension quantity(int length, int angle) {
    return new Dimension(Sort.QUANTITY, length, angle);
  }

  public boolean isQuantity() {
    return sort == Sort.QUANTITY;
  }

  Dimension times(Dimension other) {
    return quantity(length + other.length, angle + other.angle);
  }

  Dimension over(Dimension other) {
    return quantity(length - other.length, angle - other.angle);
  }

  Dimension power(int exponent) {
    return quantity(length * exponent, angle * exponent);
  }

  boolean hasRoot() {
    return length % 2 == 0 && angle % 2 == 0;
  }

  Dimension root() {
    return quantity(length / 2, angle / 2);
  }

  /** In words with an article, for messages. */
  public String words() {
    return switch (sort) {
      case TRUTH -> "a yes-or-no";
      case WORD -> "a word";
      case QUANTITY -> quantityWords();
    };
  }

  private String quantityWords() {
    if (equals(NUMBER)) {
      return "a number";
    }
    if (equals(LENGTH)) {
      return "a length";
    }
    if (equals(AREA)) {
      return "an area";
    }
    if (equals(ANGLE)) {
      return "an angle";
    }
    if (angle == 0) {
      return length == 3 ? "a volume" : "a quantity in mm^" + length;
    }
    return "a quantity in mm^" + length + " deg^" + angle;
  }

  // As a record would compare, written out: the record's own method is built at run time, which a
  // short command would notice.
  @Override
  public boolean equals(Object other) {
    return other instanceof Dimension dimension
        && sort == dimension.sort
        && length == dimension.length
        && angle == dimension.angle;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * sort.ordinal() + length) + angle;
  }
}
