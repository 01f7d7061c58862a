package org.bearingline.drawing.labels;

import java.util.List;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.TextWidth;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Path;

/**
 * Places words and dimensions one after the other, clear of lines, of reserved boxes and of each
 * other. The same calls in the same order give the same places.
 */
public final class LabelPlacer {

  /**
   * @param width how wide words are
   * @param clearance mm kept between words and lines, more than 0
   */
  public LabelPlacer(TextWidth width, double clearance) {
    throw new UnsupportedOperationException();
  }

  /** Keeps later words clear of a line. */
  public LabelPlacer avoid(Path path) {
    throw new UnsupportedOperationException();
  }

  /** Keeps later words out of a box. */
  public LabelPlacer avoid(Bounds box) {
    throw new UnsupportedOperationException();
  }

  /**
   * Places one line of words: on the first preferred spot that is clear, else on the nearest clear
   * spot round the target, with a leader line from the words to the target.
   *
   * @return the text, followed by its leader where it has one
   */
  public List<Item> place(Wish wish) {
    throw new UnsupportedOperationException();
  }

  /**
   * Moves a dimension outward, on its own side, until its line and figures are clear.
   *
   * @param wanted with the least offset that would do; the sign of its offset is kept
   * @param words the longest form in which its figures may be written
   * @param height size of the font of the figures, its em, in mm
   */
  public Item.Dimension place(Item.Dimension wanted, String words, double height) {
    throw new UnsupportedOperationException();
  }
}
