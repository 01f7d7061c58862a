package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

  /** mm along the edge: shorter things than a thumb or tape are grain, dirt or a pencil line. */
  private static final double STRANGE = 4;

  /** mm: what sticks to the edge is no broader than this, and than half a speck. */
  private static final double BURR = 1;

  /** Share of the picture that a template has at least, where light and dark are exchanged. */
  private static final double LEAST_WHOLE = 0.02;

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
    Mapping mapping = place.mapping();
    double middlePixel = mapping.pixelAt(image.width() / 2.0, image.height() / 2.0);
    double across = settings.speck() / middlePixel;
    double least = Math.max(9, Math.PI / 4 * across * across);
    Seen seen = seen(image, place.field(), blocks, lighting, least);
    Levels levels = seen.levels();
    List<Burrs.Cut> cut =
        template(seen.pieces(), mapping).stream()
            .map(loop -> Burrs.off(loop, Math.min(across / 2, BURR / middlePixel)))
            .toList();
    List<TracedLoop> loops = cut.stream().map(Burrs.Cut::loop).toList();
    EdgeQuality quality = EdgeQuality.of(image, levels, loops);
    double[] box = loops.get(0).box();
    double pixel = mapping.pixelAt((box[0] + box[2]) / 2, (box[1] + box[3]) / 2);
    double noise = pixel * Math.max(LEAST_NOISE, NOISE_DEVIATIONS * TraceNoise.of(loops));
    words.template(loops.get(0), loops.size() - 1, pixel);
    words.smallHoles(loops.subList(1, loops.size()), pixel);
    words.quality(quality, pixel, noise, settings);
    // Where a dark lid is in the picture, light is not of two kinds alone.
    if (!loops.get(0).atRim() && !seen.exchanged()) {
      Strangers.longest(image, levels, loops.get(0), quality.blur(), STRANGE / pixel)
          .ifPresent(at -> words.stranger(image, at));
    }
    place.trust().ifPresent(trust -> words.hope(trust.of(loops.get(0)), settings));
    return new Scan(
        sketch(
            loops,
            mapping,
            quality,
            noise,
            ignored(seen, cut.stream().mapToInt(Burrs.Cut::count).sum())),
        pixel,
        words.notes(),
        words.warnings());
  }

  /**
   * A way to part ground and template, and what then stands out.
   *
   * @param exchanged whether the ground is not what lies along the rim
   * @param traced every edge
   */
  private record Seen(Levels levels, boolean exchanged, EdgeTracer.Traced traced, Pieces pieces) {}

  private Seen seen(
      GreyImage image, Field field, Blocks blocks, Lighting lighting, double leastPixels) {
    Seen seen = seen(image, field, Levels.of(blocks, lighting), false, leastPixels);
    Optional<TracedLoop> outside = seen.pieces().outside();
    if (outside.isEmpty() || !outside.get().reachesCorner(image)) {
      return seen;
    }
    // The ground is taken to lie along the rim; a scanner's dark lid along two sides belies that.
    Seen other = seen(image, field, Levels.exchanged(blocks, lighting), true, leastPixels);
    Optional<TracedLoop> whole =
        other.pieces().outside().filter(p -> !p.atRim() && !p.reachesCorner(image));
    if (whole.isEmpty() || whole.get().area() < LEAST_WHOLE * image.width() * image.height()) {
      return seen;
    }
    words.lid();
    return other;
  }

  private Seen seen(
      GreyImage image, Field field, Levels levels, boolean exchanged, double leastPixels) {
    EdgeTracer.Traced traced =
        EdgeTracer.trace(file, Silhouette.of(image, field, levels), leastPixels);
    return new Seen(levels, exchanged, traced, new Pieces(traced.loops()));
  }

  private List<TracedLoop> template(Pieces pieces, Mapping mapping) {
    TracedLoop outside =
        pieces
            .outside()
            .orElseThrow(
                () ->
                    problem(
                        "no template is to be seen; lay it wholly between the corner marks,"
                            + " touching none, on a plain ground of another lightness"));
    Optional<TracedLoop> second = pieces.asLikely(outside);
    if (second.isPresent()) {
      throw problem(
          "two pieces are seen, one "
              + ScanWords.size(outside, mapping)
              + " and one "
              + ScanWords.size(second.get(), mapping)
              + ", and either may be the template; cover or cut away the other");
    }
    pieces.worthTelling(outside).ifPresent(other -> words.leftOut(other, mapping));
    return pieces.template(outside);
  }

  private static List<String> ignored(Seen seen, int burrs) {
    List<String> ignored = new ArrayList<>();
    if (seen.traced().specks() > 0) {
      ignored.add(count(seen.traced().specks(), "speck"));
    }
    if (burrs > 0) {
      ignored.add(count(burrs, "hair, line or crumb", "hairs, lines or crumbs") + " on the edge");
    }
    if (seen.pieces().others() > 0) {
      ignored.add(count(seen.pieces().others(), "other piece") + " beside the template");
    }
    return ignored;
  }

  private static String count(long number, String one) {
    return count(number, one, one + "s");
  }

  private static String count(long number, String one, String more) {
    return number + " " + (number == 1 ? one : more);
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
