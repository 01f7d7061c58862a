package org.bearingline.job;

import java.util.List;
import org.bearingline.export.pdf.Card;

/**
 * A few sentences under a heading, and a table where there is one.
 *
 * @param title heading
 * @param lines sentences
 * @param rows the table's rows, its head first; empty without a table
 */
public record WordsView(String title, List<String> lines, List<List<String>> rows) {

  static WordsView of(Card.Section section) {
    return new WordsView(section.heading(), section.lines(), section.rows());
  }
}
