package org.bearingline.drawing.sheet;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bearingline.length.Length;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * A size of paper.
 *
 * @param name as the maker writes it, such as {@code A4} or {@code roll:610mm}
 * @param width mm across: the shorter side of a sheet, the width of a roll
 * @param height mm along; empty for a roll, which is cut off as needed
 */
public record Paper(String name, double width, OptionalDouble height) {

  /** Sides within which a paper is believed, in mm; beyond them a unit was mistaken. */
  private static final double SMALLEST = 50;

  private static final double LARGEST = 5080;
  private static final String ROLL = "roll:";

  public Paper {
    if (!(width > 0) || height.isPresent() && !(height.getAsDouble() >= width)) {
      throw new IllegalArgumentException("paper has two sides, the shorter first");
    }
  }

  public boolean isRoll() {
    return height.isEmpty();
  }

  /** The papers that have a name, in the order of their table. */
  public static List<Paper> named() {
    return PaperTable.papers();
  }

  /** The office paper that is usual where this paper is: Letter beside inches, else A4. */
  public Paper office() {
    String office = PaperTable.isInches(this) ? "Letter" : "A4";
    return PaperTable.find(office).orElseThrow();
  }

  /**
   * The paper of that name ({@code A4}, {@code letter}, {@code roll:36in}, {@code 12inx18in});
   * fails with a Problem that tells the nearest name.
   */
  public static Paper parse(String text) {
    String given = text.strip();
    String lower = given.toLowerCase(Locale.ROOT);
    // A roll of any width is written like the named ones, so it is read before the names.
    if (lower.startsWith(ROLL)) {
      return new Paper(given, side(given, given.substring(ROLL.length())), OptionalDouble.empty());
    }
    return PaperTable.find(given).orElseGet(() -> custom(given, lower));
  }

  private static Paper custom(String given, String lower) {
    int times = Math.max(lower.indexOf('x'), lower.indexOf('×'));
    if (times < 0 || lower.isEmpty() || !Character.isDigit(lower.charAt(0))) {
      List<String> names = named().stream().map(Paper::name).toList();
      throw new Problem(
          Place.option("--paper"),
          "no paper is called “"
              + given
              + "”"
              + NearestName.hint(names, given)
              + "; known are "
              + names.stream().collect(Collectors.joining(", "))
              + ", roll:WIDTH and WIDTHxHEIGHT such as 12inx18in");
    }
    double one = side(given, given.substring(0, times));
    double other = side(given, given.substring(times + 1));
    return new Paper(given, Math.min(one, other), OptionalDouble.of(Math.max(one, other)));
  }

  private static double side(String given, String length) {
    double mm;
    try {
      mm = Length.parse(length.strip());
    } catch (Problem unread) {
      throw new Problem(
          Place.option("--paper"), "in “" + given + "”: " + unread.getMessage(), unread);
    }
    if (!(mm >= SMALLEST && mm <= LARGEST)) {
      throw new Problem(
          Place.option("--paper"),
          "a side of “" + given + "” is out of range: paper is 50 mm to 5080 mm wide and high");
    }
    return mm;
  }
}
