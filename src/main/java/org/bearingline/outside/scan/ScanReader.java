package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bearingline.outline.Point;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Makes a sketch of a photo or a flatbed scan of a template. */
public final class ScanReader {

  /** Points may lie three standard deviations of the trace from the line that was meant. */
  private static final double NOISE_DEVIATIONS = 3;

  /** No trace is steadier than this, pixels. */
  private static final double LEAST_NOISE = 0.05;

  /** Kinds that part by less than this many times their scatter, or by less light, are one. */
  private static final double LEAST_PARTS = 2;

  private static final double LEAST_CONTRAST = 1.05;

  private final String file;
  private final ScanSettings settings;
  private final ScanWords words = new ScanWords();
  private boolean several;

  private ScanReader(String file, ScanSettings settings) {
    this.file = file;
    this.settings = settings;
  }

  /**
   * Traces the template of a picture; fails with a Problem of {@code file}, whatever the bytes.
   *
   * @param file as the user named it
   * @param content a PNG, JPEG or TIFF file
   */
  public static Scan read(String file, byte[] content, ScanSettings settings) {
    return new ScanReader(file, settings).read(content);
  }

  private Scan read(byte[] content) {
    ImageDecoder.Decoded decoded = new ImageDecoder(file).decode(content);
    words.decoded(decoded);
    several = decoded.facts().holdsMore();
    GreyImage image = decoded.grey();
    ScanPlace place = ScanPlace.of(file, decoded, settings, words);
    Blocks blocks = Blocks.of(image, place.field());
    Lighting lighting = Lighting.of(blocks);
    if (lighting.parts() < LEAST_PARTS || lighting.contrast() < LEAST_CONTRAST) {
      throw problem(
          "no template stands out from the ground; lay it on a plain ground of another lightness,"
              + " in even light");
    }
    words.contrast(lighting);
    Levels levels = Levels.of(blocks, lighting);
    Silhouette silhouette = Silhouette.of(image, place.field(), levels);
    Mapping mapping = place.mapping();
    double middlePixel = mapping.pixelAt(image.width() / 2.0, image.height() / 2.0);
    double across = settings.speck() / middlePixel;
    EdgeTracer.Traced traced =
        EdgeTracer.trace(file, silhouette, Math.max(9, Math.PI / 4 * across * across));
    List<TracedLoop> loops = template(traced.loops());
    EdgeQuality quality = EdgeQuality.of(image, levels, loops);
    double[] box = loops.get(0).box();
    double pixel = mapping.pixelAt((box[0] + box[2]) / 2, (box[1] + box[3]) / 2);
    double noise = pixel * Math.max(LEAST_NOISE, NOISE_DEVIATIONS * TraceNoise.of(loops));
    words.template(loops.get(0), loops.size() - 1, pixel);
    words.quality(quality, pixel, noise, settings);
    place.trust().ifPresent(trust -> words.hope(trust.of(loops.get(0)), settings));
    return new Scan(
        sketch(loops, mapping, quality, noise, ignored(traced, loops)),
        pixel,
        words.notes(),
        words.warnings());
  }

  /** The largest piece that lies on no corner mark, then its openings, the largest first. */
  private List<TracedLoop> template(List<TracedLoop> loops) {
    List<TracedLoop> pieces =
        loops.stream()
            .filter(loop -> loop.area() > 0 && !loop.atMark())
            .sorted(Comparator.comparingDouble(TracedLoop::area).reversed())
            .toList();
    if (pieces.isEmpty()) {
      throw problem(
          "no template is to be seen; lay it wholly between the corner marks, touching none, on a"
              + " plain ground of another lightness");
    }
    TracedLoop outside = pieces.get(0);
    List<TracedLoop> template = new ArrayList<>();
    template.add(outside);
    loops.stream()
        .filter(loop -> loop.area() < 0 && outside.surrounds(loop.point(0)))
        .filter(loop -> pieces.stream().skip(1).noneMatch(p -> p.surrounds(loop.point(0))))
        .sorted(Comparator.comparingDouble(TracedLoop::area))
        .forEach(template::add);
    return template;
  }

  private static List<String> ignored(EdgeTracer.Traced traced, List<TracedLoop> template) {
    List<String> ignored = new ArrayList<>();
    if (traced.specks() > 0) {
      ignored.add(count(traced.specks(), "speck"));
    }
    long pieces =
        traced.loops().stream()
            .filter(loop -> loop.area() > 0 && !loop.atMark() && !template.contains(loop))
            .count();
    if (pieces > 0) {
      ignored.add(count(pieces, "smaller piece") + " beside the template");
    }
    return ignored;
  }

  private static String count(long number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }

  private Sketch sketch(
      List<TracedLoop> loops,
      Mapping mapping,
      EdgeQuality quality,
      double noise,
      List<String> ignored) {
    // The silhouette was smoothed by a bell of one pixel on top of the picture's own blur.
    double blur = Math.hypot(1, quality.blur());
    List<Figure> figures = new ArrayList<>();
    for (TracedLoop loop : loops) {
      List<Point> points =
          SharpCorners.restored(loop, blur).stream().map(p -> mapping.toMm(p.x(), p.y())).toList();
      List<Point> closed = new ArrayList<>(points);
      closed.add(points.get(0));
      String source =
          figures.isEmpty() ? "the template's edge" : "opening %d".formatted(figures.size());
      Stroke stroke = new Stroke(List.of(new StrokePiece.Chords(closed)), true);
      figures.add(new Figure(List.of(stroke), FillRule.EVEN_ODD, source));
    }
    return new Sketch(file, figures, true, OptionalDouble.of(noise), ignored);
  }

  private Problem problem(String sentence) {
    String other = several ? "; the file holds several pictures, of which the first was taken" : "";
    return new Problem(Place.file(file), sentence + other);
  }

  /** A number with so many digits after the point, for sentences. */
  static String digits(int after, double number) {
    return String.format(Locale.ROOT, "%." + after + "f", number);
  }
}
