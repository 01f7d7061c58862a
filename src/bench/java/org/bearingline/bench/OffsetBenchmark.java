package org.bearingline.bench;

import java.util.concurrent.TimeUnit;
import org.bearingline.oracle.BenchmarkShapes;
import org.bearingline.outline.Region;
import org.locationtech.jts.geom.Geometry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Warm offsets, one thread; the shape is made and flattened outside the timing. Single calls are
 * sampled, so that their median stays true on a machine that is busy with other work.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgs = "-Xmx2g")
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class OffsetBenchmark {

  @Param public BenchmarkShapes shape;

  @Param public Operation operation;

  private Subject subject;

  @Setup
  public void make() {
    subject = new Subject(shape);
  }

  @Benchmark
  public Region ours() {
    return subject.ours(operation);
  }

  @Benchmark
  public Geometry jts() {
    return subject.jts(operation);
  }
}
