package org.bearingline.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.bearingline.job.JobInHand;
import org.bearingline.job.JobState;
import org.bearingline.job.MeasureView;
import org.bearingline.job.Refused;
import org.bearingline.job.ShopView;

/**
 * How long the page's answers take to work out, warm: for every shape of the library each measure
 * is moved through its neighbourhood, as a maker would, and every state is a new one.
 */
public final class PageTable {

  private static final int ROUNDS = Integer.getInteger("rounds", 40);
  private static final int MOVES = 6;

  /** Time of this thread on a core: other programs do not disturb it. */
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private PageTable() {}

  public static void main(String[] args) {
    ShopView shop = ShopView.shipped();
    for (int i = 0; i < ROUNDS; i++) {
      shop.shapes()
          .forEach(shape -> times(shape, job -> job.view("part", 1, OptionalDouble.empty())));
    }
    System.out.println("| shape | draw ms | p95 | rack ms | p95 | pages ms | p95 |");
    System.out.println("|---|--:|--:|--:|--:|--:|--:|");
    List<List<Double>> sums = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (ShopView.ShapeView shape : shop.shapes()) {
      StringBuilder row = new StringBuilder("| " + shape.name());
      int column = 0;
      for (Consumer<JobInHand> work : works()) {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
          times.addAll(times(shape, work));
        }
        sums.get(column++).addAll(times);
        row.append(quantiles(times));
      }
      System.out.println(row.append(" |"));
    }
    StringBuilder row = new StringBuilder("| all");
    sums.forEach(times -> row.append(quantiles(times)));
    System.out.println(row.append(" |"));
  }

  private static List<Consumer<JobInHand>> works() {
    return List.of(
        job -> job.view("part", 1, OptionalDouble.empty()),
        job -> job.rack("part"),
        job -> job.pages("part", 1));
  }

  private static String quantiles(List<Double> times) {
    double[] sorted = times.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return String.format(
        Locale.ROOT,
        " | %.2f | %.2f",
        sorted[sorted.length / 2],
        sorted[Math.min(sorted.length - 1, (int) (sorted.length * 0.95))]);
  }

  private static List<Double> times(ShopView.ShapeView shape, Consumer<JobInHand> work) {
    List<Double> times = new ArrayList<>();
    for (MeasureView measure : shape.measures()) {
      if (!measure.kind().equals("length")) {
        continue;
      }
      for (int i = 0; i < MOVES; i++) {
        double mm = (double) measure.value() + (i - MOVES / 2.0) * 25.4 / 16;
        Map<String, String> texts =
            state(shape.name(), Map.of(measure.name(), Math.max(0, mm) + "mm")).texts();
        long start = CLOCK.getCurrentThreadCpuTime();
        try {
          work.accept(JobInHand.of(texts));
        } catch (Refused outOfRange) {
          continue;
        }
        times.add((CLOCK.getCurrentThreadCpuTime() - start) / 1e6);
      }
    }
    return times;
  }

  private static JobState state(String shape, Map<String, Object> measures) {
    Map<String, Object> part = new LinkedHashMap<>();
    part.put("name", "part");
    part.put("shape", shape);
    part.put("measures", measures);
    part.put("bit", "1/2in");
    Map<String, Object> job = new LinkedHashMap<>();
    job.put("job", "bench");
    job.put("parts", List.of(part));
    return new JobState(job, Map.of());
  }
}
