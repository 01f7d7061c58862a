package org.bearingline.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;

/**
 * The words at the foot of a page, and how much room they need. The room is reckoned from the
 * number of letters alone, generously, so that planning needs no font.
 *
 * @param title of the drawing
 * @param legend the titles of the layers that hold something to see
 * @param sentences each begins a new line
 */
public record FootText(String title, List<String> legend, List<String> sentences) {

  /** Size of the letters, mm of the em. */
  public static final double SIZE = 2.5;

  /** Distance of lines, mm. */
  public static final double LINE = 3.2;

  /** Height of the title's line, mm. */
  public static final double TITLE_LINE = 4.8;

  /** Room of a line sample in the legend, mm. */
  public static final double SAMPLE = 14;

  /** Least width of a column of the legend, mm. */
  private static final double LEGEND_COLUMN = 48;

  /** Mean width of a letter as a share of the em; running text of the shipped font has 0.51. */
  private static final double LETTER = 0.53;

  public FootText {
    legend = List.copyOf(legend);
    sentences = List.copyOf(sentences);
  }

  /** What a page of {@code drawing} says; {@code joined} when there are neighbours to join. */
  static FootText of(
      Drawing drawing, PrintCorrection correction, List<String> notes, boolean joined) {
    List<String> sentences = new ArrayList<>();
    workLine(drawing).ifPresent(sentences::add);
    sentences.add(
        "Before cutting, lay a rule on bars X and Y: they must measure exactly 100 mm and 4 in."
            + " If not, print at 100 % without fitting to the page, or give what they measure"
            + " in mm as --printed X,Y.");
    if (joined) {
      sentences.add(
          "Join from the lower left page: trim at the cut line, lay on the neighbour's grey flap"
              + " until the half marks close, tape.");
    }
    if (!correction.isNone()) {
      sentences.add(
          "Corrected for a printer that makes "
              + number(correction.x())
              + " mm (X) and "
              + number(correction.y())
              + " mm (Y) of 100 mm: print with the same paper and settings.");
    }
    sentences.addAll(notes);
    sentences.add(
        "Mind eyes, ears, dust, bit speed, feed direction and small pieces; the tool's manual and"
            + " local rules come first.");
    List<String> legend = shown(drawing).map(Layer::title).toList();
    return new FootText(drawing.title(), legend, sentences);
  }

  /** The layers whose lines need a word; those that lead from words to their place do not. */
  public static Stream<Layer> shown(Drawing drawing) {
    return drawing.layers().stream()
        .filter(layer -> layer.name() != LayerName.LABELS)
        .filter(DrawnLines::holdsLines);
  }

  private static Optional<String> workLine(Drawing drawing) {
    return shown(drawing)
        .filter(layer -> layer.role() == Role.CUT)
        .map(Layer::title)
        .reduce((a, b) -> a + "; " + b)
        .map(
            titles ->
                "Work to the fine unbroken black line ("
                    + titles
                    + "). The waste lies on its side that is marked ×.");
  }

  private static String number(double mm) {
    String text = String.format(Locale.ROOT, "%.2f", mm);
    return text.replaceAll("\\.?0+$", "");
  }

  /** How many columns the legend has in a text {@code width} mm wide. */
  public int legendColumns(double width) {
    return Math.max(1, Math.min(legend.size(), (int) (width / LEGEND_COLUMN)));
  }

  /** How many lines the legend has in a text {@code width} mm wide. */
  public int legendLines(double width) {
    int columns = legendColumns(width);
    return (legend.size() + columns - 1) / columns;
  }

  /** How many lines are kept for a sentence in a text {@code width} mm wide. */
  public static int lines(String sentence, double width) {
    int room = Math.max(8, (int) (width / (LETTER * SIZE)));
    int lines = 1;
    int used = 0;
    for (String word : sentence.split(" ")) {
      if (used > 0 && used + 1 + word.length() > room) {
        lines++;
        used = word.length();
      } else {
        used += (used > 0 ? 1 : 0) + word.length();
      }
    }
    return lines;
  }

  /** Height in mm of all words in a text {@code width} mm wide. */
  public double height(double width) {
    int lines = legendLines(width);
    for (String sentence : sentences) {
      lines += lines(sentence, width);
    }
    return TITLE_LINE + lines * LINE;
  }
}
