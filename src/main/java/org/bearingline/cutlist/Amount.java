package org.bearingline.cutlist;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What blanks come to together.
 *
 * @param pieces how many
 * @param area mm²
 * @param volume mm³; empty where a thickness is not known
 * @param soldVolume mm³ with stock thinner than an inch counted as an inch thick, as hardwood is
 *     sold; empty where a thickness is not known
 */
public record Amount(int pieces, double area, OptionalDouble volume, OptionalDouble soldVolume) {

  private static final double INCH = 25.4;

  /** A board foot is 144 cubic inches: a foot square, an inch thick (lumber trade). */
  private static final double BOARD_FOOT = 144 * INCH * INCH * INCH;

  private static final double SQUARE_FOOT = 144 * INCH * INCH;

  static Amount of(List<Blank> blanks) {
    int pieces = 0;
    double area = 0;
    double volume = 0;
    double sold = 0;
    boolean known = true;
    for (Blank blank : blanks) {
      double all = blank.area() * blank.quantity();
      pieces += blank.quantity();
      area += all;
      known &= blank.thickness().isPresent();
      double thick = blank.thickness().orElse(0);
      volume += all * thick;
      sold += all * Math.max(INCH, thick);
    }
    return new Amount(
        pieces,
        area,
        known ? OptionalDouble.of(volume) : OptionalDouble.empty(),
        known ? OptionalDouble.of(sold) : OptionalDouble.empty());
  }

  public double squareFeet() {
    return area / SQUARE_FOOT;
  }

  public double squareMetres() {
    return area / 1e6;
  }

  /** Board feet of the blanks as they are. */
  public OptionalDouble boardFeet() {
    return over(volume, BOARD_FOOT);
  }

  /** Board feet as sold: thinner than an inch counts as an inch. */
  public OptionalDouble boardFeetSold() {
    return over(soldVolume, BOARD_FOOT);
  }

  public OptionalDouble cubicMetres() {
    return over(volume, 1e9);
  }

  private static OptionalDouble over(OptionalDouble mm3, double unit) {
    return mm3.isPresent() ? OptionalDouble.of(mm3.getAsDouble() / unit) : OptionalDouble.empty();
  }
}
