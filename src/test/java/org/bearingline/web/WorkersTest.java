package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.bearingline.job.JobInHand;
import org.junit.jupiter.api.Test;

/** That work which takes too long is ended, and that the queue has an end. */
class WorkersTest {

  private static final Answer DONE = Answer.bytes("text/plain", new byte[0]);

  private final List<Throwable> defects = new CopyOnWriteArrayList<>();

  private static Answer wait(CompletableFuture<Answer> answer) throws Exception {
    return answer.get(2, TimeUnit.MINUTES);
  }

  /** A list that is repeated 200 times within a list that is, and so on: it would take years. */
  private static String endless() {
    StringBuilder shape =
        new StringBuilder("name: endless\nabout: never drawn\noutline:\n  - start: [0mm, 0mm]\n");
    String indent = "  ";
    for (int i = 0; i < 6; i++) {
      shape.append(indent).append("- repeat:\n");
      shape.append(indent).append("    times: 200\n");
      shape.append(indent).append("    steps:\n");
      indent += "      ";
    }
    shape.append(indent).append("- when: {holds: 1 > 2, steps: [{line: {right: 1mm}}]}\n");
    return shape.toString();
  }

  @Test
  void whatTakesTooLongIsEndedAndSaidInWords() throws Exception {
    Map<String, String> texts =
        Map.of(
            JobInHand.FILE,
            "parts:\n  - {name: a, shape: endless.yaml}\n",
            "endless.yaml",
            endless());
    try (Workers workers = new Workers(1, defects::add)) {
      Answer cut =
          wait(
              workers.answer(
                  500,
                  () -> Answer.json(JobInHand.of(texts).view("a", 1, OptionalDouble.empty()))));
      assertEquals(503, cut.status());
      String said = new String(cut.content(), StandardCharsets.UTF_8);
      assertTrue(said.contains("takes too long"), said);
      // The one thread there is works again: the endless work really ended.
      assertEquals(200, wait(workers.answer(60_000, () -> DONE)).status());
    }
    assertEquals(List.of(), defects);
  }

  @Test
  void tooManyAreSentAway() throws Exception {
    CountDownLatch gate = new CountDownLatch(1);
    try (Workers workers = new Workers(1, defects::add)) {
      List<CompletableFuture<Answer>> all = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        all.add(
            workers.answer(
                60_000,
                () -> {
                  try {
                    gate.await();
                  } catch (InterruptedException ended) {
                    Thread.currentThread().interrupt();
                  }
                  return DONE;
                }));
      }
      assertEquals("1", wait(all.get(199)).headers().get("Retry-After"));
      gate.countDown();
      int served = 0;
      for (CompletableFuture<Answer> one : all) {
        served += wait(one).status() == 200 ? 1 : 0;
      }
      assertTrue(served >= 50 && served < 200, "served " + served);
    }
  }

  @Test
  void aDefectIsToldAndHidden() throws Exception {
    try (Workers workers = new Workers(1, defects::add)) {
      Answer answer =
          wait(
              workers.answer(
                  60_000,
                  () -> {
                    throw new IllegalStateException("secret");
                  }));
      assertEquals(500, answer.status());
      assertTrue(!new String(answer.content(), StandardCharsets.UTF_8).contains("secret"));
      assertEquals(1, defects.size());
    }
  }
}
