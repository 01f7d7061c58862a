package org.bearingline.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.shape.Measure;
import org.bearingline.shape.MeasureKind;

/**
 * One measure of a shape, for a form.
 *
 * @param name as in a job file
 * @param kind length, angle, number, count or choice
 * @param about one line for a person
 * @param written as the maker or the shape file wrote it
 * @param value mm, degrees, a number, or the word of a choice
 * @param inch the value in inches, or as it is where it is no length
 * @param mm the value in millimetres likewise
 * @param from the smallest setting; null for a choice
 * @param to the largest setting; null for a choice
 * @param choices the words to choose from; empty for other kinds
 * @param set whether the maker set it
 */
public record MeasureView(
    String name,
    String kind,
    String about,
    String written,
    Object value,
    String inch,
    String mm,
    Limit from,
    Limit to,
    List<String> choices,
    boolean set) {

  /** A value with its two spellings. */
  public record Limit(double value, String inch, String mm) {}

  /** A measure at its default. */
  static MeasureView of(Measure measure) {
    return of(measure, measure.written(), measure.value(), false);
  }

  /**
   * A measure as it stands.
   *
   * @param value in mm, degrees or as a number; of no meaning for a choice
   */
  static MeasureView of(Measure measure, String written, double value, boolean set) {
    boolean choice = measure.kind() == MeasureKind.CHOICE;
    Limit now = limit(measure, value);
    return new MeasureView(
        measure.name(),
        measure.kind().name().toLowerCase(Locale.ROOT),
        measure.about(),
        written,
        choice ? written : (Object) value,
        choice ? written : now.inch(),
        choice ? written : now.mm(),
        choice ? null : limit(measure, measure.from()),
        choice ? null : limit(measure, measure.to()),
        measure.choices(),
        set);
  }

  private static Limit limit(Measure measure, double value) {
    return switch (measure.kind()) {
      case LENGTH ->
          new Limit(value, Length.print(value, Units.INCH), Length.print(value, Units.MM));
      case ANGLE -> new Limit(value, plain(value) + "°", plain(value) + "°");
      default -> new Limit(value, plain(value), plain(value));
    };
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
