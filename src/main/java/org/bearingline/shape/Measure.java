package org.bearingline.shape;

import java.util.List;

/**
 * One measure of a shape as its file has it.
 *
 * @param name as used in expressions and in {@code --set}
 * @param kind what it counts
 * @param written the default as written
 * @param writtenFrom the smallest setting as written; empty for a choice
 * @param writtenTo the largest setting as written; empty for a choice
 * @param choices the words to choose from; empty for other kinds
 * @param about one line for a person
 * @param value the default: mm, degrees, a number, or the place of the word among the choices
 * @param from the smallest setting, in the same terms
 * @param to the largest setting, in the same terms
 */
public record Measure(
    String name,
    MeasureKind kind,
    String written,
    String writtenFrom,
    String writtenTo,
    List<String> choices,
    String about,
    double value,
    double from,
    double to) {

  public Measure {
    choices = List.copyOf(choices);
  }
}
