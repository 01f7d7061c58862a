package org.bearingline.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import org.bearingline.job.DrawnWishes;
import org.bearingline.job.LayoutJob;
import org.bearingline.job.Wishes;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.topology.OutlineCheck;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.clean.Cleaning;
import org.bearingline.outside.clean.CleaningSettings;

/**
 * Times cleaning, checking and offsetting a drawn outline of more and more points, and prints a
 * table with the exponent of growth from row to row: n log n from 10,000 to 100,000 is 1.10.
 */
public final class CleaningTable {

  private static final int ROUNDS = 7;

  private static final int ROUNDS_OF_LAYOUT = 3;

  /** Rounds that are not counted. */
  private static final int WARM = 6;

  private CleaningTable() {}

  /** Takes the largest number of points; none means a million. */
  public static void main(String[] arguments) {
    int most = arguments.length == 0 ? 1_000_000 : Integer.parseInt(arguments[0]);
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println(
        "| drawing | points | clean ms | check ms | closing 6.35 ms | layout of the SVG ms | pieces"
            + " | growth | growth of the layout |");
    out.println("|---|--:|--:|--:|--:|--:|--:|--:|--:|");
    for (String kind : List.of("traced rail", "wavy trace")) {
      double wholeBefore = 0;
      double before = 0;
      for (int n = 1000; n <= most; n *= 10) {
        double[] ms = row(kind, n, out);
        double all = ms[0] + ms[1] + ms[2];
        out.println(growth(before, all) + " | " + growth(wholeBefore, ms[3]) + " |");
        before = all;
        wholeBefore = ms[3];
      }
    }
  }

  private static String growth(double before, double now) {
    return before == 0 ? "" : String.format(Locale.ROOT, "%.2f", Math.log10(now / before));
  }

  /** From the file to every file of the part: read, cleaned, checked, routed, drawn, written. */
  private static double layout(List<Point> points) {
    StringBuilder path = new StringBuilder();
    for (Point p : points) {
      path.append(path.isEmpty() ? "M" : "L");
      path.append(String.format(Locale.ROOT, "%.4f %.4f", 400 + p.x(), 400 - p.y()));
    }
    Wishes asked = wishes(evened());
    double[] ms = new double[ROUNDS_OF_LAYOUT];
    try {
      Path folder = Files.createTempDirectory("cleaning-table");
      Path file =
          Files.writeString(
              folder.resolve("trace.svg"),
              "<svg xmlns='http://www.w3.org/2000/svg' width='1200mm' height='800mm'"
                  + " viewBox='0 0 1200 800'><path d='"
                  + path
                  + "Z'/></svg>");
      for (int i = -1; i < ROUNDS_OF_LAYOUT; i++) {
        long start = System.nanoTime();
        LayoutJob.run(file.toString(), asked, folder.resolve("out"));
        ms[Math.max(0, i)] = (System.nanoTime() - start) / 1e6;
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    Arrays.sort(ms);
    return ms[ROUNDS_OF_LAYOUT / 2];
  }

  private static Wishes wishes(DrawnWishes drawn) {
    Wishes none = Wishes.NONE;
    return new Wishes(
        none.measures(),
        none.bits(),
        none.bearing(),
        none.collar(),
        none.kit(),
        none.thickness(),
        none.allowance(),
        none.sawBlade(),
        none.runOut(),
        none.deepestPass(),
        none.router(),
        none.routerBase(),
        none.kerf(),
        none.paper(),
        none.margin(),
        none.printed(),
        none.units(),
        drawn);
  }

  private static DrawnWishes evened() {
    DrawnWishes none = DrawnWishes.NONE;
    return new DrawnWishes(
        none.width(),
        none.height(),
        none.unit(),
        OptionalDouble.of(0.06),
        none.gap(),
        none.drillUpTo(),
        none.layer(),
        none.outline(),
        none.symmetric(),
        none.unite(),
        none.sawnEdges());
  }

  private static double[] row(String kind, int n, PrintStream out) {
    List<Point> points = kind.startsWith("wavy") ? wavy(n) : rail(n);
    Sketch sketch = sketch(points);
    double[][] ms = new double[3][ROUNDS];
    int pieces = 0;
    for (int i = -WARM; i < ROUNDS; i++) {
      long start = System.nanoTime();
      CleanedOutline cleaned = Cleaning.clean(sketch, CleaningSettings.usual());
      long clean = System.nanoTime();
      Outline outline = cleaned.sound().outlines().get(0);
      if (!OutlineCheck.faults(outline).isEmpty()) {
        throw new IllegalStateException("the outline is not sound");
      }
      long check = System.nanoTime();
      Morphology.close(Region.of(outline), 6.35);
      long end = System.nanoTime();
      pieces = outline.size();
      if (i >= 0) {
        ms[0][i] = (clean - start) / 1e6;
        ms[1][i] = (check - clean) / 1e6;
        ms[2][i] = (end - check) / 1e6;
      }
    }
    double[] median = new double[4];
    median[3] = layout(points);
    for (int k = 0; k < 3; k++) {
      Arrays.sort(ms[k]);
      median[k] = ms[k][ROUNDS / 2];
    }
    out.printf(
        Locale.ROOT,
        "| %s | %,d | %.1f | %.2f | %.2f | %.0f | %d | ",
        kind,
        n,
        median[0],
        median[1],
        median[2],
        median[3],
        pieces);
    return median;
  }

  private static Sketch sketch(List<Point> points) {
    Stroke stroke = new Stroke(List.of(new StrokePiece.Chords(points)), true);
    return new Sketch(
        "trace",
        List.of(new Figure(List.of(stroke), FillRule.NON_ZERO, "trace")),
        true,
        OptionalDouble.of(0.06),
        List.of());
  }

  /** A board with rounded corners, traced with a noise of 0.03 mm. */
  private static List<Point> rail(int n) {
    Bounds box = new Bounds(0, 0, 600, 60);
    List<Primitive> pieces = new ArrayList<>();
    double[] radii = {8, 12, 20, 30};
    Point[] corners = {
      new Point(box.maxX(), 0),
      new Point(box.maxX(), box.maxY()),
      new Point(0, box.maxY()),
      new Point(0, 0)
    };
    Point[] inward = {new Point(-1, 1), new Point(-1, -1), new Point(1, -1), new Point(1, 1)};
    for (int i = 0; i < 4; i++) {
      Point center = corners[i].plus(inward[i].times(radii[i]));
      pieces.add(Arc.around(center, radii[i], -90 + 90.0 * i, 90));
    }
    List<Primitive> edge = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      edge.add(pieces.get(i));
      edge.add(new Line(pieces.get(i).end(), pieces.get((i + 1) % 4).start()));
    }
    return traced(new Loop(edge), n);
  }

  private static List<Point> traced(Loop loop, int n) {
    Random random = new Random(n);
    List<Point> points = new ArrayList<>(n);
    for (Primitive piece : loop.primitives()) {
      int count = (int) Math.max(1, Math.round(n * piece.length() / loop.length()));
      for (int i = 0; i < count; i++) {
        points.add(noisy(piece.pointAt((double) i / count), random));
      }
    }
    return points;
  }

  private static Point noisy(Point p, Random random) {
    return p.plus(Point.polar(0.03 * Math.sqrt(random.nextDouble()), 360 * random.nextDouble()));
  }

  /** A round form of many waves that no few arcs follow. */
  private static List<Point> wavy(int n) {
    Random random = new Random(n);
    List<Point> points = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      double t = 2 * Math.PI * i / n;
      double r = 300 + 20 * Math.sin(7 * t) + 10 * Math.sin(19 * t);
      points.add(noisy(Point.polar(r, Math.toDegrees(t)), random));
    }
    return points;
  }
}
