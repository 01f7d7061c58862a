package org.bearingline.outside.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.fit.CubicBezier;
import org.bearingline.outline.fit.Curve;
import org.bearingline.outline.fit.EllipseArc;
import org.bearingline.outside.Affine;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Gives a drawing its size in mm. */
final class Sizing {

  /** Share by which a width and a height may ask for different factors. */
  private static final double AGREE = 0.005;

  /** mm from its origin beyond which nothing is a piece of furniture. */
  private static final double MOST = 1e6;

  /** mm that a drawing may be wide or high, as where it is asked for. */
  private static final double LONGEST = 1e5;

  private Sizing() {}

  static Sketch sized(Sketch sketch, CleaningSettings settings) {
    Bounds box = SketchBounds.of(sketch);
    if (settings.width().isEmpty() && settings.height().isEmpty()) {
      if (!sketch.sized()) {
        throw new Problem(
            Place.file(sketch.file()),
            "does not say how large it is; give --width or --height of the whole drawing");
      }
      requireReach(sketch, box, 1);
      return sketch;
    }
    double factor = factor(sketch, box, settings);
    requireReach(sketch, box, factor);
    return scaled(sketch, factor);
  }

  private static double factor(Sketch sketch, Bounds box, CleaningSettings settings) {
    OptionalDouble byWidth = ratio(settings.width(), box.width(), "--width");
    OptionalDouble byHeight = ratio(settings.height(), box.height(), "--height");
    if (byWidth.isPresent() && byHeight.isPresent()) {
      double wide = byWidth.getAsDouble();
      double high = byHeight.getAsDouble();
      if (Math.abs(wide / high - 1) > AGREE) {
        throw new Problem(
            Place.option("--height"),
            String.format(
                Locale.ROOT,
                "%s would be %.1f mm high at that width; leave width or height out",
                sketch.file(),
                box.height() * wide));
      }
      // Of the longer side, whose figure is the finer share.
      return box.width() >= box.height() ? wide : high;
    }
    return byWidth.isPresent() ? byWidth.getAsDouble() : byHeight.getAsDouble();
  }

  private static OptionalDouble ratio(OptionalDouble asked, double drawn, String option) {
    if (asked.isEmpty()) {
      return asked;
    }
    if (!(drawn > 0)) {
      throw new Problem(
          Place.option(option), "cannot size a drawing that has no extent in that direction");
    }
    return OptionalDouble.of(asked.getAsDouble() / drawn);
  }

  private static void requireReach(Sketch sketch, Bounds box, double factor) {
    double far =
        factor
            * Math.max(
                Math.max(Math.abs(box.minX()), Math.abs(box.maxX())),
                Math.max(Math.abs(box.minY()), Math.abs(box.maxY())));
    if (!(far <= MOST)) {
      throw new Problem(
          Place.file(sketch.file()),
          String.format(
              Locale.ROOT,
              "reaches %.3g mm from its origin, more than a kilometre; check its units",
              far));
    }
    double side = factor * Math.max(box.width(), box.height());
    if (side > LONGEST * (1 + 1e-9)) {
      throw new Problem(
          Place.file(sketch.file()),
          String.format(
              Locale.ROOT,
              "is %.0f m long, more than the 100 m that a part may be; check its units",
              side / 1000));
    }
  }

  private static Sketch scaled(Sketch sketch, double factor) {
    return moved(sketch, Similarity.scaling(factor));
  }

  /** The sketch under a map that keeps shape. */
  static Sketch moved(Sketch sketch, Similarity grow) {
    double factor = grow.factor();
    List<Figure> figures = new ArrayList<>();
    for (Figure figure : sketch.figures()) {
      List<Stroke> strokes = new ArrayList<>();
      for (Stroke stroke : figure.strokes()) {
        strokes.add(
            new Stroke(
                stroke.pieces().stream().map(p -> scaled(p, grow)).toList(), stroke.closed()));
      }
      figures.add(new Figure(strokes, figure.rule(), figure.filled(), figure.source()));
    }
    OptionalDouble noise =
        sketch.noise().isPresent()
            ? OptionalDouble.of(sketch.noise().getAsDouble() * factor)
            : sketch.noise();
    return new Sketch(
        sketch.file(),
        figures,
        true,
        noise,
        sketch.ignored(),
        sketch.toFile().map(toFile -> toFile.of(affine(grow.inverse()))));
  }

  private static Affine affine(Similarity map) {
    Point to = map.apply(Point.ORIGIN);
    Point x = map.apply(new Point(1, 0)).minus(to);
    Point y = map.apply(new Point(0, 1)).minus(to);
    return new Affine(x.x(), x.y(), y.x(), y.y(), to.x(), to.y());
  }

  private static StrokePiece scaled(StrokePiece piece, Similarity grow) {
    if (piece instanceof StrokePiece.Plain plain) {
      return new StrokePiece.Plain(plain.primitive().transformed(grow));
    }
    if (piece instanceof StrokePiece.Chords chords) {
      return new StrokePiece.Chords(chords.points().stream().map(grow::apply).toList());
    }
    return new StrokePiece.Free(scaled(((StrokePiece.Free) piece).curve(), grow));
  }

  // Cubics and ellipses stay what they are, so that an arc that was meant is still seen in them.
  private static Curve scaled(Curve curve, Similarity grow) {
    if (curve instanceof CubicBezier b) {
      return new CubicBezier(
          grow.apply(b.start()),
          grow.apply(b.first()),
          grow.apply(b.second()),
          grow.apply(b.end()));
    }
    if (curve instanceof EllipseArc e && grow.b() == 0 && !grow.mirrored()) {
      return new EllipseArc(
          grow.apply(e.center()),
          e.semiAxis() * grow.factor(),
          e.otherSemiAxis() * grow.factor(),
          e.rotation(),
          e.from(),
          e.sweep());
    }
    return new MovedCurve(curve, grow);
  }
}
