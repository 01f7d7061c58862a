package org.bearingline.export.pdf;

import java.util.List;
import java.util.Objects;
import org.bearingline.drawing.sheet.Margins;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.drawing.sheet.PrintCorrection;

/**
 * A page of four corner marks.
 *
 * @param paper what it is printed on
 * @param printed what the printer makes of 100 mm
 * @param across mm from cross to cross across the paper
 * @param along mm from cross to cross along the paper
 * @param side mm of a mark
 * @param marks from the upper left one as a clock's hand goes
 * @param title what the page is
 * @param words paragraphs for the maker
 */
public record MarksPage(
    Paper paper,
    PrintCorrection printed,
    double across,
    double along,
    double side,
    List<Mark> marks,
    String title,
    List<String> words) {

  /** Height of the band of words at the foot, mm. */
  public static final double WORDS = 38;

  /**
   * One mark.
   *
   * @param letter its name
   * @param cells row by row from the top, true where black
   */
  public record Mark(String letter, List<List<Boolean>> cells) {
    public Mark {
      cells = cells.stream().map(List::copyOf).toList();
    }
  }

  public MarksPage {
    Objects.requireNonNull(paper);
    Objects.requireNonNull(printed);
    marks = List.copyOf(marks);
    words = List.copyOf(words);
    if (marks.size() != 4) {
      throw new IllegalArgumentException("a page has four marks");
    }
  }

  /** Room for marks across the paper, mm, within what a printer prints. */
  public static double roomAcross(Paper paper, PrintCorrection printed) {
    return paper.width() * Math.min(1, printed.x() / 100) - 2 * Margins.usual().side();
  }

  /** Room for marks along the paper, mm, above the words; without end on a roll. */
  public static double roomAlong(Paper paper, PrintCorrection printed) {
    if (paper.isRoll()) {
      return Double.POSITIVE_INFINITY;
    }
    Margins margins = Margins.usual();
    return paper.height().getAsDouble() * Math.min(1, printed.y() / 100)
        - margins.side()
        - margins.foot()
        - WORDS;
  }
}
