package org.bearingline.wood;

/**
 * A temperature with its scale, so that one scale's figures never meet the other's formula.
 *
 * @param degrees on the scale
 * @param scale Celsius or Fahrenheit
 */
public record Temperature(double degrees, Scale scale) {

  /** The two scales that equation (4-5) has coefficients for. */
  public enum Scale {
    CELSIUS("°C"),
    FAHRENHEIT("°F");

    private final String sign;

    Scale(String sign) {
      this.sign = sign;
    }

    public String sign() {
      return sign;
    }
  }

  public Temperature {
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException("a temperature is a number, got " + degrees);
    }
  }

  public static Temperature celsius(double degrees) {
    return new Temperature(degrees, Scale.CELSIUS);
  }

  public static Temperature fahrenheit(double degrees) {
    return new Temperature(degrees, Scale.FAHRENHEIT);
  }
}
