package org.bearingline.outside.scan;

import java.util.List;
import org.bearingline.facts.FactTable;

/**
 * Four marks that belong together. Each set has codes of its own, so that a picture of a whole
 * sheet tells which distances were printed on it. Lengths are those of the table in whole dots of a
 * printer of 600 dpi, within 0.022 mm of it.
 *
 * @param number 0 or more; the set has the codes 4 × number to 4 × number + 3
 * @param across mm from A to B and from D to C, cross to cross
 * @param along mm from A to D and from B to C
 * @param side mm of a mark's black square
 */
public record MarkSet(int number, double across, double along, double side) {

  private static final int MARKS = 4;

  /** mm between a printer's dots. */
  private static final double DOT = 25.4 / 600;

  /** White that must stay round a mark, as a share of its side. */
  private static final double QUIET = 1 / 7.0;

  /** Every set, smallest first. */
  public static List<MarkSet> all() {
    return FactTable.read(MarkSet.class, "marks.tsv").rows().stream()
        .map(
            row ->
                new MarkSet(
                    (int) row.number("set"),
                    dots(row.number("across")),
                    dots(row.number("along")),
                    dots(row.number("side"))))
        .toList();
  }

  private static double dots(double mm) {
    return DOT * Math.rint(mm / DOT);
  }

  /** mm across and along that the marks take with the white round them. */
  public double widthOnPaper() {
    return across + side * (1 + 2 * QUIET);
  }

  /** mm along the paper, see {@link #widthOnPaper()}. */
  public double heightOnPaper() {
    return along + side * (1 + 2 * QUIET);
  }

  /** The code of one mark. */
  int code(MarkLetter letter) {
    return MARKS * number + letter.ordinal();
  }

  /** The cells of a mark; row by row from the top, true where black. */
  public List<List<Boolean>> cells(MarkLetter letter) {
    return MarkCode.cells(code(letter));
  }

  static int setOf(long code) {
    return (int) (code / MARKS);
  }

  static MarkLetter letterOf(long code) {
    return MarkLetter.values()[(int) (code % MARKS)];
  }
}
