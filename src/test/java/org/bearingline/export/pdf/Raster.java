package org.bearingline.export.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bearingline.external.ExternalProgram;

/** A page as poppler's pdftoppm prints it: grey, at a known count of dots per inch. */
final class Raster {

  private final int dpi;
  private final int width;
  private final int height;
  private final int offset;
  private final byte[] bytes;

  private Raster(int dpi, byte[] bytes) {
    this.dpi = dpi;
    this.bytes = bytes;
    // A binary grey map begins with "P5 width height 255", then one byte a dot from the top.
    String head = new String(bytes, 0, 60, StandardCharsets.ISO_8859_1);
    String[] parts = head.split("\\s+", 5);
    this.width = Integer.parseInt(parts[1]);
    this.height = Integer.parseInt(parts[2]);
    this.offset = bytes.length - width * height;
  }

  static Raster of(byte[] pdf, int page, int dpi) {
    ExternalProgram pdftoppm = ExternalProgram.named("pdftoppm");
    try {
      Path folder = Files.createTempDirectory("raster");
      Path file = folder.resolve("page.pdf");
      Files.write(file, pdf);
      Path root = folder.resolve("page");
      pdftoppm.run("-gray", "-r", dpi, "-f", page, "-l", page, "-singlefile", file, root);
      Path grey = folder.resolve("page.pgm");
      Raster raster = new Raster(dpi, Files.readAllBytes(grey));
      Files.delete(file);
      Files.delete(grey);
      Files.delete(folder);
      return raster;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** 0 for white to 1 for black, of a dot counted from the lower left corner; white outside. */
  double darkness(int column, int row) {
    if (column < 0 || row < 0 || column >= width || row >= height) {
      return 0;
    }
    return 1 - (bytes[offset + (height - 1 - row) * width + column] & 0xff) / 255.0;
  }

  int dot(double mm) {
    return (int) Math.floor(mm * dpi / 25.4);
  }

  double mm(double dots) {
    return dots * 25.4 / dpi;
  }

  /** The darkest dot within {@code reach} dots of the place in mm. */
  double darkest(double x, double y, int reach) {
    double most = 0;
    for (int row = dot(y) - reach; row <= dot(y) + reach; row++) {
      for (int column = dot(x) - reach; column <= dot(x) + reach; column++) {
        most = Math.max(most, darkness(column, row));
      }
    }
    return most;
  }

  /**
   * Where the first dark stroke across a level scan from x1 to x2 stands, mm; may run backwards.
   */
  double firstAlongX(double y, double x1, double x2) {
    return first(dot(x1), dot(x2), column -> darkness(column, dot(y)));
  }

  /** Where the first dark stroke across an upright scan from y1 to y2 stands, mm. */
  double firstAlongY(double x, double y1, double y2) {
    return first(dot(y1), dot(y2), row -> darkness(dot(x), row));
  }

  private interface Scan {
    double darkness(int dot);
  }

  /** The centre of gravity of the first run of dots that are not white. */
  private double first(int from, int to, Scan scan) {
    int step = from <= to ? 1 : -1;
    double weight = 0;
    double sum = 0;
    for (int dot = from; dot != to; dot += step) {
      double dark = scan.darkness(dot);
      if (dark > 0.05) {
        weight += dark;
        sum += dark * (dot + 0.5);
      } else if (weight > 0) {
        break;
      }
    }
    if (weight == 0) {
      throw new AssertionError("nothing is drawn between " + mm(from) + " and " + mm(to));
    }
    return mm(sum / weight);
  }
}
