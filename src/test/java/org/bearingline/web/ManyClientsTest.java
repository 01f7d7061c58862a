package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * Many clients at once: none meets an error, and memory does not grow. A few seconds in the suite;
 * {@code -Dpage.load.seconds=60} for the minute whose figures are in {@code DEVELOPERS.md}.
 */
class ManyClientsTest {

  private static final int CLIENTS = 50;

  /** Answers that each client asks for and gets. */
  private static final int LEAST = 3;

  private static final int SECONDS = Integer.getInteger("page.load.seconds", 5);

  /** What is held after a full collection may differ by so much, in bytes: caches fill. */
  private static final long ROOM = 24_000_000;

  private static String state(int measure) {
    return "{\"part\":\"a\",\"state\":{\"job\":{\"parts\":[{\"name\":\"a\",\"shape\":\"cloud-lift-rail\","
        + "\"bit\":\"3/4in\",\"measures\":{\"length\":\""
        + (500 + measure % 400)
        + "mm\"}}]}}}";
  }

  private static long held() {
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
  }

  /** All clients for some seconds; milliseconds of each answer. */
  private static List<Double> round(ShopServer server, int seconds, List<String> errors)
      throws InterruptedException {
    ExecutorService clients = Executors.newFixedThreadPool(CLIENTS);
    ConcurrentLinkedQueue<Double> times = new ConcurrentLinkedQueue<>();
    AtomicInteger measure = new AtomicInteger();
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    String[] paths = {"/api/draw", "/api/draw", "/api/draw", "/api/rack", "/api/pages"};
    for (int i = 0; i < CLIENTS; i++) {
      int client = i;
      clients.execute(
          () -> {
            // So many at least, however slow the machine.
            for (int n = 0; n < LEAST || System.nanoTime() < end; n++) {
              long start = System.nanoTime();
              HttpResponse<byte[]> answer =
                  server.ask(paths[(client + n) % paths.length], state(measure.incrementAndGet()));
              times.add((System.nanoTime() - start) / 1e6);
              if (answer.statusCode() != 200) {
                errors.add(answer.statusCode() + " " + new String(answer.body()));
              }
            }
          });
    }
    clients.shutdown();
    assertTrue(clients.awaitTermination(seconds + 300L, TimeUnit.SECONDS), "a client hangs");
    return new ArrayList<>(times);
  }

  @Test
  void fiftyClientsMeetNoErrorAndMemoryStaysFlat() throws InterruptedException {
    try (ShopServer server = ShopServer.start()) {
      List<String> errors = Collections.synchronizedList(new ArrayList<>());
      round(server, Math.max(2, SECONDS / 5), errors);
      long before = held();
      List<Double> times = round(server, SECONDS, errors);
      long after = held();
      assertEquals(List.of(), errors.stream().limit(5).toList());
      assertEquals(List.of(), server.defects());
      times.sort(null);
      System.out.printf(
          Locale.ROOT,
          "%d clients, %d s: %d answers, median %.0f ms, 95 %% %.0f ms, held %.1f MB before, %.1f MB"
              + " after%n",
          CLIENTS,
          SECONDS,
          times.size(),
          times.get(times.size() / 2),
          times.get(times.size() * 95 / 100),
          before / 1e6,
          after / 1e6);
      assertTrue(times.size() >= LEAST * CLIENTS, "few answers: " + times.size());
      assertTrue(after < before + ROOM, before + " bytes before, " + after + " after");
    }
  }
}
