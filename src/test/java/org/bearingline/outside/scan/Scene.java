package org.bearingline.outside.scan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.zip.CRC32;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/**
 * A scene that is photographed by a script apart from the program: templates drawn by librsvg and
 * pages drawn by poppler, in mm, y upwards.
 */
final class Scene {

  private final Path folder;
  private final List<String> layers = new ArrayList<>();
  private final List<String> wishes = new ArrayList<>();

  Scene(Path folder, double ground) {
    this.folder = folder;
    wish("ground", ground);
  }

  Scene wish(String name, double value) {
    wishes.add("\"%s\": %s".formatted(name, value));
    return this;
  }

  /** Lays a template with its origin at a place, turned about it. */
  Scene template(Outline outline, double wood, double x, double y, double turn, double dpi) {
    Bounds box = wholeInches(outline.bounds().grown(2));
    String text = svg(outline, box);
    Path png = drawn("template", text.getBytes(StandardCharsets.UTF_8), dpi, ".png");
    if (!Files.exists(png)) {
      Path svg = Path.of(png + ".svg");
      write(svg, text);
      ExternalProgram.named("rsvg-convert")
          .run("-d", dpi, "-p", dpi, "-b", "white", "-o", png, svg);
    }
    double c = Math.cos(Math.toRadians(turn));
    double s = Math.sin(Math.toRadians(turn));
    layers.add(
        layer(
            png,
            dpi / 25.4,
            x + c * box.minX() - s * box.minY(),
            y + s * box.minX() + c * box.minY(),
            turn,
            ", \"wood\": " + wood));
    return this;
  }

  /** Lays a page of a PDF with its lower left corner at a place, turned about it. */
  Scene page(byte[] pdf, double x, double y, double turn, double dpi) {
    layers.add(layer(raster(pdf, dpi), dpi / 25.4, x, y, turn, ""));
    return this;
  }

  /**
   * Cuts a part out of a page and lays that.
   *
   * @param part mm from the page's lower left corner
   * @param high mm of the page
   */
  Scene card(byte[] pdf, double dpi, Bounds part, double high, double x, double y, double turn) {
    double dots = dpi / 25.4;
    long left = Math.round(part.minX() * dots);
    long low = Math.round((high - part.minY()) * dots);
    String cut =
        ", \"part\": [%d, %d, %d, %d]"
            .formatted(
                left, Math.round((high - part.maxY()) * dots), Math.round(part.maxX() * dots), low);
    // Cut between dots, so not quite where it was asked for.
    Similarity turned = Similarity.rotation(turn, Point.ORIGIN);
    Point corner =
        turned.apply(new Point(left / dots - part.minX(), high - low / dots - part.minY()));
    layers.add(layer(raster(pdf, dpi), dots, x + corner.x(), y + corner.y(), turn, cut));
    return this;
  }

  private Path raster(byte[] pdf, double dpi) {
    Path pgm = drawn("page", pdf, dpi, ".pgm");
    if (!Files.exists(pgm)) {
      Path file = Path.of(pgm + ".pdf");
      try {
        Files.write(file, pdf);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      String root = pgm.toString().replaceAll("\\.pgm$", "");
      ExternalProgram.named("pdftoppm").run("-gray", "-r", dpi, "-singlefile", file, root);
    }
    return pgm;
  }

  /** Where the raster of a content lies: scenes of one folder draw the same thing once. */
  private Path drawn(String kind, byte[] content, double dpi, String end) {
    CRC32 sum = new CRC32();
    sum.update(content);
    return folder.resolve("%s-%08x-%.0f%s".formatted(kind, sum.getValue(), dpi, end));
  }

  /** Whole inches have whole dots, so that the raster's lower left corner is where it should be. */
  private static Bounds wholeInches(Bounds box) {
    return new Bounds(
        box.minX(),
        box.minY(),
        box.minX() + 25.4 * Math.ceil(box.width() / 25.4),
        box.minY() + 25.4 * Math.ceil(box.height() / 25.4));
  }

  private static String layer(
      Path file, double dots, double x, double y, double turn, String more) {
    return "{\"file\": \"%s\", \"dots\": %s, \"at\": [%s, %s], \"turn\": %s%s}"
        .formatted(file, dots, x, y, turn, more);
  }

  /**
   * Takes the picture.
   *
   * @param back nine numbers: from straight pixels to mm
   */
  byte[] photograph(String name, int width, int height, double... back) {
    Path script = folder.resolve("photograph.py");
    Path scene = folder.resolve(name + ".json");
    Path out = folder.resolve(name);
    try {
      Files.copy(
          Scene.class.getResourceAsStream("photograph.py"),
          script,
          java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      write(
          scene,
          "{\"size\": [%d, %d], \"out\": \"%s\", \"back\": [%s], \"layers\": [%s], %s}"
              .formatted(
                  width,
                  height,
                  out,
                  DoubleStream.of(back).mapToObj(Double::toString).collect(Collectors.joining(",")),
                  String.join(",", layers),
                  String.join(",", wishes)));
      ExternalProgram.pythonWith("numpy", "PIL").run(script, scene);
      return Files.readAllBytes(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A flatbed scan at a dpi of the area from (0, 0). */
  byte[] flatbed(String name, double dpi, double widthMm, double heightMm) {
    double pixel = 25.4 / dpi;
    int width = (int) Math.round(widthMm / pixel);
    int height = (int) Math.round(heightMm / pixel);
    wish("dpi", dpi);
    return photograph(
        name, width, height, pixel, 0, pixel / 2, 0, -pixel, (height - 0.5) * pixel, 0, 0, 1);
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String svg(Outline outline, Bounds box) {
    StringBuilder path = new StringBuilder();
    outline.loops().forEach(loop -> path(loop, box, path));
    return """
        <svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="0 0 %s %s">
        <path fill="black" fill-rule="evenodd" d="%s"/></svg>
        """
        .formatted(box.width(), box.height(), box.width(), box.height(), path);
  }

  private static void path(Loop loop, Bounds box, StringBuilder path) {
    for (Primitive piece : loop.primitives()) {
      if (piece == loop.primitives().get(0)) {
        path.append('M').append(place(piece.start().x(), piece.start().y(), box));
      }
      if (piece instanceof Arc arc) {
        // Halves: a full circle has no direction between its ends.
        for (double share : new double[] {0.5, 1}) {
          path.append(
              String.format(
                  Locale.ROOT,
                  "A%.6f %.6f 0 0 %d %s",
                  arc.radius(),
                  arc.radius(),
                  arc.sweep() > 0 ? 0 : 1,
                  place(arc.pointAt(share).x(), arc.pointAt(share).y(), box)));
        }
      } else {
        path.append('L').append(place(piece.end().x(), piece.end().y(), box));
      }
    }
    path.append('Z');
  }

  private static String place(double x, double y, Bounds box) {
    return String.format(Locale.ROOT, "%.6f %.6f ", x - box.minX(), box.maxY() - y);
  }
}
