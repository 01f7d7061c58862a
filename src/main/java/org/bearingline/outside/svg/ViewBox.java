package org.bearingline.outside.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.batik.parser.DefaultNumberListHandler;
import org.apache.batik.parser.DefaultPreserveAspectRatioHandler;
import org.apache.batik.parser.NumberListParser;
import org.apache.batik.parser.PreserveAspectRatioParser;
import org.bearingline.outside.Affine;
import org.bearingline.outside.DrawingLimits;

/**
 * The attribute {@code viewBox}: which box of the inside fills the viewport.
 *
 * @param x of its near edge
 * @param y of its near edge
 * @param width 0 or more
 * @param height 0 or more
 */
record ViewBox(double x, double y, double width, double height) {

  /** Farther than this no box stretches what is in it, nor shrinks it. */
  private static final double MOST_STRETCH = 1e9;

  /** The box of an element; empty where it gives none, or one less than nothing wide or high. */
  static Optional<ViewBox> of(SvgElement element) {
    Optional<String> text = element.attribute("viewBox").filter(said -> !said.isEmpty());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    List<Double> numbers = new ArrayList<>();
    NumberListParser parser = new NumberListParser();
    parser.setNumberListHandler(
        new DefaultNumberListHandler() {
          @Override
          public void numberValue(float value) {
            if (numbers.size() < 5) {
              numbers.add((double) value);
            }
          }
        });
    Parsing.run(parser, element, "viewBox", text.get());
    if (numbers.size() != 4) {
      throw element.problem("a viewBox has four numbers, as in viewBox=\"0 0 600 200\"");
    }
    if (numbers.stream().anyMatch(number -> Math.abs(number) > DrawingLimits.FARTHEST)) {
      throw element.problem("this viewBox reaches too far out to be a part; correct it");
    }
    ViewBox box = new ViewBox(numbers.get(0), numbers.get(1), numbers.get(2), numbers.get(3));
    return box.width >= 0 && box.height >= 0 ? Optional.of(box) : Optional.empty();
  }

  /** Whether nothing of the inside is shown (SVG 1.1, section 7.7). */
  boolean isEmpty() {
    return width == 0 || height == 0;
  }

  /**
   * The map from this box, which is not empty, into a viewport at the origin, by {@code
   * preserveAspectRatio}.
   */
  Affine into(double viewWidth, double viewHeight, SvgElement element) {
    Fit fit = new Fit();
    Optional<String> text =
        element.attribute("preserveAspectRatio").filter(said -> !said.isEmpty());
    if (text.isPresent()) {
      PreserveAspectRatioParser parser = new PreserveAspectRatioParser();
      parser.setPreserveAspectRatioHandler(fit);
      Parsing.run(parser, element, "preserveAspectRatio", text.get());
    }
    double sx = viewWidth / width;
    double sy = viewHeight / height;
    if (!fit.isNone) {
      sx = fit.slices ? Math.max(sx, sy) : Math.min(sx, sy);
      sy = sx;
    }
    if (!(Math.max(sx, sy) <= MOST_STRETCH && Math.min(sx, sy) >= 1 / MOST_STRETCH)) {
      throw element.problem(
          "the viewBox of this "
              + element.name()
              + " does not go with its width and height; correct one of them");
    }
    double dx = fit.alongX * (viewWidth - width * sx) - x * sx;
    double dy = fit.alongY * (viewHeight - height * sy) - y * sy;
    return new Affine(sx, 0, 0, sy, dx, dy);
  }

  /** SVG 1.1, section 7.8. */
  private static final class Fit extends DefaultPreserveAspectRatioHandler {
    private boolean isNone;
    private boolean slices;
    private double alongX = 0.5;
    private double alongY = 0.5;

    private void align(double x, double y) {
      alongX = x;
      alongY = y;
    }

    @Override
    public void none() {
      isNone = true;
    }

    @Override
    public void slice() {
      slices = true;
    }

    @Override
    public void xMinYMin() {
      align(0, 0);
    }

    @Override
    public void xMidYMin() {
      align(0.5, 0);
    }

    @Override
    public void xMaxYMin() {
      align(1, 0);
    }

    @Override
    public void xMinYMid() {
      align(0, 0.5);
    }

    @Override
    public void xMidYMid() {
      align(0.5, 0.5);
    }

    @Override
    public void xMaxYMid() {
      align(1, 0.5);
    }

    @Override
    public void xMinYMax() {
      align(0, 1);
    }

    @Override
    public void xMidYMax() {
      align(0.5, 1);
    }

    @Override
    public void xMaxYMax() {
      align(1, 1);
    }
  }
}
