package org.bearingline.cutlist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.length.Units;

/** What blanks come to, in words. */
final class AmountWords {

  private AmountWords() {}

  static List<String> sentences(Amount parts, Amount templates, Units units) {
    List<String> sentences = new ArrayList<>();
    if (parts.pieces() > 0) {
      sentences.add("Blanks of the parts: " + wood(parts, units) + ", before any waste.");
    }
    if (templates.pieces() > 0) {
      sentences.add("Plates of the templates: " + area(templates, units) + ", before any waste.");
    }
    return sentences;
  }

  private static String wood(Amount amount, Units units) {
    StringBuilder words = new StringBuilder(area(amount, units));
    if (units == Units.INCH) {
      amount.boardFeet().ifPresent(feet -> words.append(format(", %.2f board feet", feet)));
      if (amount.boardFeetSold().isPresent()
          && amount.boardFeetSold().getAsDouble() > amount.boardFeet().getAsDouble()) {
        words.append(
            format(
                " (%.2f as sold, stock under 1 in counting as 1 in)",
                amount.boardFeetSold().getAsDouble()));
      }
    } else {
      amount.cubicMetres().ifPresent(cubic -> words.append(format(", %.4f m³", cubic)));
    }
    return words.toString();
  }

  private static String area(Amount amount, Units units) {
    String pieces = amount.pieces() == 1 ? "1 piece, " : amount.pieces() + " pieces, ";
    return pieces
        + (units == Units.INCH
            ? format("%.2f square feet", amount.squareFeet())
            : format("%.3f m²", amount.squareMetres()));
  }

  private static String format(String form, double value) {
    return String.format(Locale.ROOT, form, value);
  }
}
