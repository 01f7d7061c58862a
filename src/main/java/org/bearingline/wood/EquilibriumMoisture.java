package org.bearingline.wood;

import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The moisture content that wood settles to in air of temperature T and relative humidity h (as a
 * decimal), Wood Handbook FPL-GTR-282 (2021), chapter 4, equation (4-5):
 *
 * <pre>
 * M = 1800/W [ K h / (1 − K h) + (K₁ K h + 2 K₁ K₂ K² h²) / (1 + K₁ K h + K₁ K₂ K² h²) ]
 * </pre>
 *
 * where W, K, K₁ and K₂ are quadratics in T with one set of coefficients for each scale.
 */
final class EquilibriumMoisture {

  /** The handbook's table 4-2 runs from 30 to 270 °F and from 5 to 95 % relative humidity. */
  private static final double COLDEST_F = 30;

  private static final double HOTTEST_F = 270;
  private static final double DRIEST = 5;
  private static final double DAMPEST = 95;

  /** Room for a limit that was converted from the other scale, in degrees. */
  private static final double ROUNDING = 0.05;

  private EquilibriumMoisture() {}

  /** Percent, of the dry wood's weight. */
  static double percent(Temperature temperature, double humidity) {
    check(temperature, humidity);
    Quadratics q = Quadratics.of(temperature.scale());
    double t = temperature.degrees();
    double kh = q.k.at(t) * humidity / 100;
    double first = q.k1.at(t) * kh;
    double second = first * q.k2.at(t) * kh;
    return 1800 / q.w.at(t) * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
  }

  private static void check(Temperature temperature, double humidity) {
    boolean celsius = temperature.scale() == Temperature.Scale.CELSIUS;
    double coldest = celsius ? (COLDEST_F - 32) / 1.8 : COLDEST_F;
    double hottest = celsius ? (HOTTEST_F - 32) / 1.8 : HOTTEST_F;
    double t = temperature.degrees();
    if (t < coldest - ROUNDING || t > hottest + ROUNDING) {
      String sign = " " + temperature.scale().sign();
      throw new Problem(
          Place.field("temperature"),
          "the moisture of wood is known from "
              + Moisture.plain(coldest)
              + " to "
              + Moisture.plain(hottest)
              + sign
              + ", not at "
              + Moisture.plain(t)
              + sign);
    }
    if (!(humidity >= DRIEST && humidity <= DAMPEST)) {
      throw new Problem(
          Place.field("humidity"),
          "a relative humidity from 5 to 95 % is wanted, not " + Moisture.plain(humidity) + " %");
    }
  }

  /** a + b T + c T². */
  private record Quadratic(double a, double b, double c) {
    double at(double t) {
      return a + t * (b + t * c);
    }
  }

  private record Quadratics(Quadratic w, Quadratic k, Quadratic k1, Quadratic k2) {

    private static final Quadratics CELSIUS =
        new Quadratics(
            new Quadratic(349, 1.29, 0.0135),
            new Quadratic(0.805, 0.000736, -0.00000273),
            new Quadratic(6.27, -0.00938, -0.000303),
            new Quadratic(1.91, 0.0407, -0.000293));

    private static final Quadratics FAHRENHEIT =
        new Quadratics(
            new Quadratic(330, 0.452, 0.00415),
            new Quadratic(0.791, 0.000463, -0.000000844),
            new Quadratic(6.34, 0.000775, -0.0000935),
            new Quadratic(1.09, 0.0284, -0.0000904));

    static Quadratics of(Temperature.Scale scale) {
      return switch (scale) {
        case CELSIUS -> CELSIUS;
        case FAHRENHEIT -> FAHRENHEIT;
      };
    }
  }
}
