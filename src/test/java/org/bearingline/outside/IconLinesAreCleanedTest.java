package org.bearingline.outside;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bearingline.external.ExternalFolder;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.clean.Cleaning;
import org.bearingline.outside.clean.CleaningSettings;
import org.bearingline.outside.svg.SvgReader;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateArrays;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/**
 * Closed lines that others drew, in the icons of GNOME as Debian's package librsvg2-tests brings
 * them, with all the hairs of drawing by hand: each icon 100 mm wide, each line cleaned by itself.
 * How far the clean line lies from the drawn one is measured apart, by dense sampling of both; a
 * line is refused only where JTS sees it meet itself, too.
 */
class IconLinesAreCleanedTest {

  /** Each seventh icon, to spare time. */
  private static final int STEP = 7;

  private static final double WIDTH = 100;

  /** Corners of less than this may be cut off beyond the told move. */
  private static final double CRUMB = 0.05;

  /** Degrees: a sharper point is a fold. */
  private static final double SHARPEST = 5;

  private int lines;
  private int faulty;
  private int drawn;
  private int clean;
  private double mostBeyond;

  @Test
  void linesOfIconsAreCleaned() throws IOException {
    ExternalFolder icons =
        ExternalFolder.of(
            "/usr/libexec/installed-tests/RSVG/fixtures/reftests/adwaita",
            "Debian's package librsvg2-tests");
    List<Path> files = icons.files(".svg");
    for (int i = 0; i < files.size(); i += STEP) {
      Path file = files.get(i);
      Sketch icon =
          SvgReader.read(file.toString(), Files.readAllBytes(file), ReadingSettings.USUAL);
      double factor = WIDTH / Sketches.bounds(icon).width();
      for (Figure figure : icon.figures()) {
        for (Stroke stroke : figure.strokes()) {
          if (stroke.closed()) {
            line(icon, figure, stroke, factor);
          }
        }
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%d closed lines of icons: %d with faults, %d pieces became %d, %.3f mm beyond what is told"
            + " at most%n",
        lines,
        faulty,
        drawn,
        clean,
        mostBeyond);
    assertTrue(lines > 200);
    assertTrue(clean <= 1.2 * drawn, drawn + " pieces became " + clean);
  }

  private void line(Sketch icon, Figure figure, Stroke stroke, double factor) {
    Figure alone = new Figure(List.of(stroke), figure.rule(), figure.source());
    Sketch sketch =
        new Sketch(icon.file(), List.of(alone), false, OptionalDouble.empty(), List.of());
    Bounds box = Sketches.bounds(sketch);
    if (Math.min(box.width(), box.height()) * factor < 0.2) {
      return;
    }
    CleanedOutline cleaned =
        Cleaning.clean(
            sketch,
            CleaningSettings.usual()
                .withSize(OptionalDouble.of(box.width() * factor), OptionalDouble.empty()));
    lines++;
    if (!cleaned.report().faults().isEmpty()) {
      faulty++;
      assertFalse(
          isPlain(cleaned.drawn()),
          () -> icon.file() + ", " + figure.source() + ": " + cleaned.report().faults());
      return;
    }
    drawn += cleaned.report().piecesBefore();
    clean += cleaned.report().piecesAfter();
    double off = Math.max(offDrawn(cleaned), offClean(cleaned));
    double beyond = off - cleaned.report().largestMove();
    mostBeyond = Math.max(mostBeyond, beyond);
    assertTrue(
        beyond <= CRUMB, () -> icon.file() + ", " + figure.source() + " lies " + off + " mm off");
  }

  /** Whether the drawn line neither meets itself, in the eyes of JTS, nor folds back on itself. */
  private static boolean isPlain(Sketch line) {
    List<Coordinate> points = new ArrayList<>();
    for (StrokePiece piece : Sketches.pieces(line)) {
      for (Point p : Sketches.sampled(piece, 200)) {
        points.add(new Coordinate(p.x(), p.y()));
      }
    }
    points.add(points.get(0));
    Coordinate[] ring = CoordinateArrays.removeRepeatedPoints(points.toArray(new Coordinate[0]));
    int n = ring.length - 1;
    for (int i = 0; i < n; i++) {
      double angle = Angle.angleBetween(ring[(i + n - 1) % n], ring[i], ring[i + 1]);
      if (Math.toDegrees(angle) < SHARPEST) {
        return false;
      }
    }
    return new IsSimpleOp(new GeometryFactory().createLineString(ring)).isSimple();
  }

  private static double offDrawn(CleanedOutline cleaned) {
    List<Sketches.Boxed> lines = Sketches.Boxed.of(cleaned.drawn());
    double most = 0;
    for (Loop loop : loops(cleaned)) {
      for (Primitive piece : loop.primitives()) {
        for (int i = 0; i <= 24; i++) {
          most = Math.max(most, Sketches.distance(piece.pointAt(i / 24.0), lines, WIDTH));
        }
      }
    }
    return most;
  }

  private static double offClean(CleanedOutline cleaned) {
    List<Loop> loops = loops(cleaned);
    double most = 0;
    for (StrokePiece piece : Sketches.pieces(cleaned.drawn())) {
      for (Point p : Sketches.sampled(piece, 100)) {
        double off = loops.stream().mapToDouble(loop -> loop.distanceTo(p)).min().orElseThrow();
        most = Math.max(most, off);
      }
    }
    return most;
  }

  private static List<Loop> loops(CleanedOutline cleaned) {
    List<Loop> loops = new ArrayList<>();
    for (Outline outline : cleaned.outlines()) {
      loops.addAll(outline.loops());
    }
    return loops;
  }
}
