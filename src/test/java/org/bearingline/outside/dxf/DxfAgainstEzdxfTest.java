package org.bearingline.outside.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Sketches;
import org.bearingline.outside.Sketches.Boxed;
import org.bearingline.outside.StrokePiece;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every entity that is a line, written by ezdxf in four versions, bare and in blocks that are
 * turned, scaled, mirrored, stretched, nested and arrayed. Where its points are is ezdxf's own
 * word.
 */
class DxfAgainstEzdxfTest {

  /** Rounding of coordinates of some thousands, in mm. */
  private static final double SAME = 1e-6;

  /** How finely ezdxf flattens curves, in mm. */
  private static final double FLATTENED = 2e-3;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"R12", "R2000", "R2010", "R2018"})
  void everyEntityLiesWhereEzdxfSays(String version) throws IOException, URISyntaxException {
    ExternalProgram python = ExternalProgram.pythonWith("ezdxf");
    Path script = Path.of(getClass().getResource("/org/bearingline/outside/write_dxf.py").toURI());
    Path drawing = folder.resolve("drawing.dxf");
    Path points = folder.resolve("points.txt");
    python.run(script, version, drawing, points);
    Sketch sketch =
        DxfReader.read("drawing.dxf", Files.readAllBytes(drawing), ReadingSettings.USUAL);
    assertEquals(
        List.of("1 entity on layer SHUT, which is off or frozen", "1 face", "1 point", "1 text"),
        sketch.ignored());
    List<List<Point>> theirs = polylines(points);
    assertTrue(theirs.size() > 100, "ezdxf wrote only " + theirs.size());
    List<Boxed> ours = Boxed.of(sketch);
    double worst = 0;
    for (List<Point> line : theirs) {
      for (Point p : line) {
        double off = Sketches.distance(p, ours, 1);
        assertTrue(off < SAME, () -> p + " is off by " + off);
        worst = Math.max(worst, off);
      }
    }
    double flattest = 0;
    for (StrokePiece piece : Sketches.pieces(sketch)) {
      for (Point p : Sketches.sampled(piece, 23)) {
        double off = nearest(p, theirs);
        assertTrue(off < FLATTENED, () -> p + " of " + piece + " is nowhere in ezdxf: " + off);
        flattest = Math.max(flattest, off);
      }
    }
    System.out.printf(
        "%s: %d of our pieces, %d of ezdxf's; off by %.1e, flattened by %.1e%n",
        version, ours.size(), theirs.size(), worst, flattest);
  }

  private static double nearest(Point p, List<List<Point>> lines) {
    double least = Double.POSITIVE_INFINITY;
    for (List<Point> line : lines) {
      Bounds box = Sketches.box(line);
      if (p.x() > box.minX() - 1
          && p.x() < box.maxX() + 1
          && p.y() > box.minY() - 1
          && p.y() < box.maxY() + 1) {
        least = Math.min(least, Sketches.distance(p, line));
      }
    }
    return least;
  }

  private static List<List<Point>> polylines(Path file) throws IOException {
    List<List<Point>> all = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      String[] numbers = line.split(" ");
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < numbers.length; i += 2) {
        points.add(new Point(Double.parseDouble(numbers[i]), Double.parseDouble(numbers[i + 1])));
      }
      all.add(points);
    }
    return all;
  }
}
