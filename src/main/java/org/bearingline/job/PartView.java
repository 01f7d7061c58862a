package org.bearingline.job;

import java.util.List;
import org.bearingline.export.svg.ScreenDrawing;

/**
 * One part with one of its templates, as a page shows it. Lengths are mm where a name does not say
 * otherwise; coordinates are those of {@link ScreenDrawing}.
 *
 * @param part its name
 * @param title of the drawing
 * @param about one line on its shape
 * @param quantity how many
 * @param shape name of its shape
 * @param view what must be shown
 * @param outline the finished part's size
 * @param grain degrees of the fibres, counter-clockwise from x; null for a sheet
 * @param measures what can be set, as it stands
 * @param tool what works it
 * @param plates every template of the part
 * @param layers the drawing
 * @param leftovers what stays out of reach
 * @param overcuts what is lost
 * @param words what the card says
 * @param cautions what to mind, the weightiest first
 * @param largest a sentence on the largest bit that leaves nothing
 * @param proof how true the template is; null where nothing is routed
 * @param warnings what was left aside to draw it
 */
public record PartView(
    String part,
    String title,
    String about,
    int quantity,
    String shape,
    ScreenDrawing.Box view,
    Size outline,
    Double grain,
    List<MeasureView> measures,
    ToolView tool,
    List<PlateView> plates,
    List<LayerView> layers,
    List<LeftoverView> leftovers,
    List<OvercutView> overcuts,
    List<WordsView> words,
    List<String> cautions,
    String largest,
    String proof,
    List<String> warnings) {

  /** A box with its size in words. */
  public record Size(double x, double y, double width, double height, String words) {}

  /**
   * What works the part.
   *
   * @param words in a few words
   * @param bit cutting diameter
   * @param bitWords the same in the job's units
   * @param follower bearing or collar
   * @param followerDiameter outside
   * @param chosen whether the program chose the bit
   */
  public record ToolView(
      String words,
      double bit,
      String bitWords,
      String follower,
      double followerDiameter,
      boolean chosen) {}

  /** A template of the part by its number. */
  public record PlateView(int number, String title) {}

  /** A layer with what it says. */
  public record LayerView(
      String id,
      String title,
      String role,
      List<String> words,
      List<ScreenDrawing.ScreenFigure> figures) {}

  /**
   * A place the bit does not reach.
   *
   * @param number as on the drawing
   * @param d its shape as path data
   * @param kind corner or neck
   * @param edge name of the edge
   * @param depth in words
   * @param insideRadius in words
   * @param words where and how large
   * @param advice what to do about it
   */
  public record LeftoverView(
      int number,
      double x,
      double y,
      String d,
      String kind,
      String edge,
      String depth,
      double depthMm,
      double areaMm2,
      String insideRadius,
      String words,
      String advice) {}

  /** A place where wood of the part is lost. */
  public record OvercutView(
      double x, double y, String d, String edge, double depthMm, double areaMm2, String words) {}
}
