package org.bearingline.outside.svg;

import java.util.Locale;
import java.util.Optional;
import org.apache.batik.parser.DefaultLengthHandler;
import org.apache.batik.parser.LengthParser;
import org.apache.batik.parser.ParseException;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.outside.Quoted;

/**
 * A length of SVG as written.
 *
 * @param value the number
 * @param unit of it
 */
record SvgLength(double value, Unit unit) {

  /** px of an inch, by CSS. */
  static final double PX_PER_INCH = 96;

  /** The units of SVG 1.1, section 4.2, with their px by CSS. */
  enum Unit {
    NONE(1),
    PX(1),
    PERCENT(Double.NaN),
    EM(Double.NaN),
    EX(Double.NaN),
    IN(PX_PER_INCH),
    CM(PX_PER_INCH / 2.54),
    MM(PX_PER_INCH / 25.4),
    PT(PX_PER_INCH / 72),
    PC(PX_PER_INCH / 6);

    private final double px;

    Unit(double px) {
      this.px = px;
    }

    /** Whether it measures on paper: a drawing so sized is meant at that size. */
    boolean isReal() {
      return this == IN || this == CM || this == MM || this == PT || this == PC;
    }
  }

  /** What a percentage is of: the width, the height or the diagonal of the viewport. */
  enum Of {
    WIDTH,
    HEIGHT,
    BOTH
  }

  /** The length, or nothing where the text is none. */
  static Optional<SvgLength> find(String text) {
    Handler handler = new Handler();
    LengthParser parser = new LengthParser();
    parser.setLengthHandler(handler);
    try {
      // Units may be written in any letters.
      parser.parse(text.toLowerCase(Locale.ROOT));
    } catch (ParseException noLength) {
      return Optional.empty();
    }
    return Optional.of(new SvgLength(handler.value, handler.unit));
  }

  /** The attribute in user units, or nothing where it is not given or {@code auto}. */
  static Optional<Double> read(SvgElement element, String attribute, Of of, Viewport viewport) {
    Optional<String> text = element.attribute(attribute).filter(said -> !said.equals("auto"));
    if (text.isEmpty()) {
      return Optional.empty();
    }
    SvgLength length =
        find(text.get())
            .orElseThrow(
                () ->
                    element.problem(
                        "“"
                            + Quoted.of(text.get())
                            + "” is no length for "
                            + attribute
                            + "; write a number, or a number with mm, cm, in or px"));
    return Optional.of(length.userUnits(element, attribute, of, viewport));
  }

  /** The same with 0 where nothing is given. */
  static double readOr0(SvgElement element, String attribute, Of of, Viewport viewport) {
    return read(element, attribute, of, viewport).orElse(0.0);
  }

  /** Refuses a number that no drawing reaches. */
  void requireNear(SvgElement element, String attribute) {
    if (!(Math.abs(value) <= DrawingLimits.FARTHEST)) {
      throw element.problem(
          attribute
              + " of this "
              + element.name()
              + " reaches too far out to be a part; correct it");
    }
  }

  private double userUnits(SvgElement element, String attribute, Of of, Viewport viewport) {
    requireNear(element, attribute);
    double units =
        switch (unit) {
          case PERCENT -> value / 100 * viewport.whole(of);
          case EM, EX -> Double.NaN;
          default -> value * unit.px;
        };
    if (!Double.isFinite(units)) {
      throw element.problem(
          attribute
              + " is measured by something unknown here, such as the size of text or of the"
              + " window; write it with mm, cm, in or px");
    }
    return units;
  }

  /** In px; not a number for a percentage and for measures of text. */
  double px() {
    return value * unit.px;
  }

  private static final class Handler extends DefaultLengthHandler {
    private double value;
    private Unit unit = Unit.NONE;

    @Override
    public void lengthValue(float given) {
      value = given;
    }

    @Override
    public void em() {
      unit = Unit.EM;
    }

    @Override
    public void ex() {
      unit = Unit.EX;
    }

    @Override
    public void in() {
      unit = Unit.IN;
    }

    @Override
    public void cm() {
      unit = Unit.CM;
    }

    @Override
    public void mm() {
      unit = Unit.MM;
    }

    @Override
    public void pc() {
      unit = Unit.PC;
    }

    @Override
    public void pt() {
      unit = Unit.PT;
    }

    @Override
    public void px() {
      unit = Unit.PX;
    }

    @Override
    public void percentage() {
      unit = Unit.PERCENT;
    }
  }
}
