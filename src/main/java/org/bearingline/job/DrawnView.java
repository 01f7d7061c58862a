package org.bearingline.job;

import java.util.List;
import org.bearingline.export.svg.ScreenDrawing;
import org.bearingline.outside.DrawnLayer;

/**
 * The drawing of a part as a page shows it beside or instead of the part: the line as it was drawn,
 * what became of it, and the places to look at. Coordinates are those of {@link ScreenDrawing}; of
 * a sound drawing they are the part's own, so that it lies on the part.
 *
 * @param sound whether a part can be made of it
 * @param view the box round all that is drawn
 * @param drawn the line as drawn, path data
 * @param clean the clean line, path data; empty where none was made
 * @param places faults first, in the order of the report
 * @param more how many faults or outlines have no place here because they would cover the drawing
 * @param words what was done, one sentence each
 * @param layers those with lines on them
 * @param unites whether its only faults are that filled shapes lie over each other, which the field
 *     {@code unite} mends
 * @param units what one unit of the drawing may be, where its file does not say; else empty
 */
public record DrawnView(
    boolean sound,
    ScreenDrawing.Box view,
    String drawn,
    String clean,
    List<PlaceView> places,
    int more,
    List<String> words,
    List<DrawnLayer> layers,
    boolean unites,
    List<UnitView> units) {

  /**
   * A place to look at.
   *
   * @param number from 1
   * @param kind {@code fault}, {@code outline} (one of several, none of which is chosen), {@code
   *     gap} (closed) or {@code move} (where the clean line lies furthest off)
   * @param words what is there
   * @param reach mm across that are worth a look through a glass
   */
  public record PlaceView(
      int number, String kind, double x, double y, String words, double reach) {}

  /**
   * A unit that the drawing may have been drawn in.
   *
   * @param write as the field {@code drawn-in} takes it
   * @param words how large the whole would be then
   */
  public record UnitView(String write, String words) {}
}
