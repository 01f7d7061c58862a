package org.bearingline.export.pdf;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.Paper;

/**
 * What the card for the shop wall says.
 *
 * @param title the part
 * @param subtitle its measures, bit and follower in a few words
 * @param picture drawn to fit, with its dimensions and labels
 * @param across a section as wide as the page between picture and columns, such as a table of many
 *     columns; may be empty
 * @param sections in reading order, in two columns
 * @param cautions sentences, set apart
 * @param others further pictures, each under its own words, on the page after the first
 * @param paper the paper the sheets are printed on; the card takes Letter or A4 after it
 */
public record Card(
    String title,
    String subtitle,
    Drawing picture,
    Optional<Section> across,
    List<Section> sections,
    List<String> cautions,
    List<Picture> others,
    Paper paper) {

  /**
   * A further picture.
   *
   * @param heading what it shows
   */
  public record Picture(String heading, Drawing drawing) {}

  public Card {
    Objects.requireNonNull(across);
    others = List.copyOf(others);
    sections = List.copyOf(sections);
    cautions = List.copyOf(cautions);
  }

  /** A card with one picture. */
  public Card(
      String title,
      String subtitle,
      Drawing picture,
      Optional<Section> across,
      List<Section> sections,
      List<String> cautions,
      Paper paper) {
    this(title, subtitle, picture, across, sections, cautions, List.of(), paper);
  }

  /** A card with one picture and no section as wide as the page. */
  public Card(
      String title,
      String subtitle,
      Drawing picture,
      List<Section> sections,
      List<String> cautions,
      Paper paper) {
    this(title, subtitle, picture, Optional.empty(), sections, cautions, List.of(), paper);
  }

  /**
   * A heading with what stands under it.
   *
   * @param heading a few words
   * @param lines paragraphs, each wrapped as needed
   * @param rows a table under the paragraphs; the first row heads the columns; may be empty
   */
  public record Section(String heading, List<String> lines, List<List<String>> rows) {

    public Section {
      lines = List.copyOf(lines);
      rows = rows.stream().map(List::copyOf).toList();
    }

    public static Section of(String heading, List<String> lines) {
      return new Section(heading, lines, List.of());
    }

    public static Section table(String heading, List<List<String>> rows) {
      return new Section(heading, List.of(), rows);
    }
  }
}
