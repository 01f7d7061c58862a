package org.bearingline.bench;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.bearingline.oracle.BenchmarkShapes;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs the benchmark and prints one table of times, errors and sizes. */
public final class OffsetTable {

  private final PrintStream out;

  private OffsetTable(PrintStream out) {
    this.out = out;
  }

  /** Takes the shapes to run; none means all. */
  public static void main(String[] arguments) throws RunnerException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    List<BenchmarkShapes> shapes =
        arguments.length == 0
            ? List.of(BenchmarkShapes.values())
            : Stream.of(arguments).map(BenchmarkShapes::valueOf).toList();
    new OffsetTable(out).print(shapes);
  }

  private void print(List<BenchmarkShapes> shapes) throws RunnerException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include(OffsetBenchmark.class.getSimpleName())
                    .param("shape", shapes.stream().map(Enum::name).toArray(String[]::new))
                    .verbosity(VerboseMode.SILENT)
                    .build())
            .run();
    out.println();
    out.println(
        "Offsets against the JTS buffer of a copy flattened to 0.001 mm (simplify factor 1e-4).");
    out.println(
        "Median of warm calls, one thread; error by dense sampling both ways. NOISY_100K: both thin by 2 µm first.");
    out.println();
    out.println(
        "| shape | operation | ours µs | JTS µs | JTS / ours | ours error mm | JTS error mm"
            + " | ours pieces | JTS vertices |");
    out.println("|---|---|--:|--:|--:|--:|--:|--:|--:|");
    for (BenchmarkShapes shape : shapes) {
      Truth truth = new Truth(new Subject(shape));
      for (Operation operation : Operation.values()) {
        row(shape, operation, results, truth);
      }
    }
  }

  private void row(
      BenchmarkShapes shape, Operation operation, Collection<RunResult> results, Truth truth) {
    Map<Side, Double> times = new EnumMap<>(Side.class);
    for (RunResult result : results) {
      var parameters = result.getParams();
      if (parameters.getParam("shape").equals(shape.name())
          && parameters.getParam("operation").equals(operation.name())) {
        Side side = parameters.getBenchmark().endsWith(".ours") ? Side.OURS : Side.JTS;
        times.put(side, result.getPrimaryResult().getStatistics().getPercentile(50));
      }
    }
    double ours = times.get(Side.OURS);
    double jts = times.get(Side.JTS);
    Truth.Row row = truth.of(operation);
    out.printf(
        Locale.ROOT,
        "| %s | %s | %.1f | %.1f | %.1f | %.1e | %.1e | %d | %d |%n",
        shape.name().toLowerCase(Locale.ROOT).replace('_', ' '),
        operation.title,
        ours,
        jts,
        jts / ours,
        row.ourError(),
        row.jtsError(),
        row.ourPieces(),
        row.jtsVertices());
  }

  private enum Side {
    OURS,
    JTS
  }
}
