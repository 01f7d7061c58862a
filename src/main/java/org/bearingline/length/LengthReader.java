package org.bearingline.length;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads one length; each refusal is a sentence that names the text and shows a good form. */
final class LengthReader {

  /** No sensible length is longer than this; longer texts are cut in the refusal. */
  private static final int LONGEST_TEXT = 40;

  private static final String GOOD_FORM =
      "write a number with its unit, such as 3/4in, 1-1/2in, 0.75in or 19mm";

  // A whole number and a fraction, a fraction, or a decimal; %1$s tells two numbers apart.
  private static final String NUMBER =
      "(?:(?:(?<whole%1$s>\\d+)(?: ?- ?| ))?(?<over%1$s>\\d+) ?/ ?(?<under%1$s>\\d+)"
          + "|(?<decimal%1$s>\\d+\\.?\\d*|\\.\\d+))";

  private static final Pattern SINGLE =
      Pattern.compile(
          NUMBER.formatted("1") + " ?(?<unit>mm|cm|m|inches|inch|in|\"|feet|foot|ft|')?");

  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          NUMBER.formatted("1")
              + " ?(?:feet|foot|ft|') ?-? ?"
              + NUMBER.formatted("2")
              + " ?(?:inches|inch|in|\")?");

  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("\\d+,\\d+ ?(?:mm|cm|m|inches|inch|in|\")?");

  private final String text;
  private final LengthForm form;

  LengthReader(String text, LengthForm form) {
    this.text = text;
    this.form = form;
  }

  double read() {
    String plain = text.length() > LONGEST_TEXT ? "" : LengthSpelling.plain(text);
    if (text.isBlank()) {
      throw refusal("a length is missing; " + GOOD_FORM);
    }
    // The printer's own mark for a rounded length may be pasted back.
    String unmarked = plain.startsWith("\u2248") ? plain.substring(1).strip() : plain;
    boolean negative = unmarked.startsWith("-");
    boolean hasSign = negative || unmarked.startsWith("+");
    String body = hasSign ? unmarked.substring(1).strip() : unmarked;
    BigDecimal mm = magnitude(body);
    if (hasSign && !form.signed() && mm.signum() != 0) {
      throw refusal(quoted() + " has a sign; write this length as a plain " + body);
    }
    if (mm.compareTo(BigDecimal.valueOf(Length.LARGEST)) > 0) {
      throw refusal(quoted() + " is longer than 100 m, the most that is read; write less");
    }
    double magnitude = mm.doubleValue();
    return negative && magnitude != 0 ? -magnitude : magnitude;
  }

  private BigDecimal magnitude(String body) {
    Matcher feet = FEET_AND_INCHES.matcher(body);
    if (feet.matches()) {
      return number(feet, "1", LengthUnit.FOOT).add(number(feet, "2", LengthUnit.INCH));
    }
    Matcher single = SINGLE.matcher(body);
    if (!single.matches()) {
      Matcher comma = DECIMAL_COMMA.matcher(body);
      if (comma.matches()) {
        throw refusal(quoted() + " has a comma; write the point, as in " + body.replace(',', '.'));
      }
      throw refusal(quoted() + " is not a length; " + GOOD_FORM);
    }
    Optional<LengthUnit> unit =
        Optional.ofNullable(single.group("unit"))
            .map(LengthUnit::spelt)
            .or(() -> form.bare().map(LengthUnit::of));
    BigDecimal mm = number(single, "1", unit.orElse(LengthUnit.MILLIMETRE));
    // Nothing is nothing in any unit.
    if (unit.isEmpty() && mm.signum() != 0) {
      throw refusal(quoted() + " has no unit; write " + body + "in or " + body + "mm");
    }
    return mm;
  }

  // Fractions stay whole numbers until the one division at the end.
  private BigDecimal number(Matcher m, String which, LengthUnit unit) {
    String decimal = m.group("decimal" + which);
    if (decimal != null) {
      return new BigDecimal(decimal).multiply(unit.millimetres());
    }
    BigDecimal under = new BigDecimal(m.group("under" + which));
    if (under.signum() == 0) {
      throw refusal(quoted() + " divides by zero; write a fraction such as 1/2in");
    }
    String whole = m.group("whole" + which);
    BigDecimal over = new BigDecimal(m.group("over" + which));
    if (whole != null) {
      over = over.add(new BigDecimal(whole).multiply(under));
    }
    return over.multiply(unit.millimetres()).divide(under, MathContext.DECIMAL128);
  }

  private String quoted() {
    String shown = text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) + "…" : text;
    return "“" + shown.strip() + "”";
  }

  private static Problem refusal(String sentence) {
    return new Problem(Place.nowhere(), sentence);
  }
}
