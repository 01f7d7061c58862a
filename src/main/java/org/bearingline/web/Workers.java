package org.bearingline.web;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.bearingline.job.Refused;
import org.bearingline.problem.Problem;

/**
 * A few threads that work answers out, with a short queue before them. What takes longer than its
 * patience is cut off and answered in words.
 */
final class Workers implements AutoCloseable {

  private static final int QUEUE = 64;

  private final ThreadPoolExecutor threads;
  private final ScheduledExecutorService clock;
  private final Consumer<Throwable> defects;

  /**
   * @param count of threads
   * @param defects is told whatever is thrown that no user can cause
   */
  Workers(int count, Consumer<Throwable> defects) {
    ThreadFactory daemons =
        work -> {
          Thread thread = new Thread(work, "page-worker");
          thread.setDaemon(true);
          return thread;
        };
    this.threads =
        new ThreadPoolExecutor(
            count, count, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(QUEUE), daemons);
    this.clock = Executors.newSingleThreadScheduledExecutor(daemons);
    this.defects = defects;
  }

  /**
   * Works an answer out on one of the threads.
   *
   * @param patience milliseconds, waiting in the queue included
   * @return completes with an answer or a refusal, never with a failure
   */
  CompletableFuture<Answer> answer(long patience, Supplier<Answer> work) {
    CompletableFuture<Answer> answer = new CompletableFuture<>();
    Future<?> running;
    try {
      running = threads.submit(() -> answer.complete(worked(work)));
    } catch (RejectedExecutionException full) {
      answer.complete(Refusal.later("too many requests wait already; try again in a moment"));
      return answer;
    }
    Future<?> end =
        clock.schedule(
            () -> {
              if (answer.complete(
                  Refusal.later(
                      "this takes too long to work out, so it was cut off; make the part simpler,"
                          + " or use the command, which may take its time"))) {
                running.cancel(true);
              }
            },
            patience,
            TimeUnit.MILLISECONDS);
    answer.whenComplete((done, failure) -> end.cancel(false));
    return answer;
  }

  private Answer worked(Supplier<Answer> work) {
    try {
      return work.get();
    } catch (Refused refused) {
      return Refusal.of(refused);
    } catch (Problem problem) {
      return Refusal.of(problem);
    } catch (NotUnderstood request) {
      return Refusal.of(Refusal.NOT_UNDERSTOOD, request.getMessage());
    } catch (OutOfMemoryError large) {
      return Refusal.of(
          Refusal.MAKERS_MISTAKE,
          "this is too large to be worked out here; make it smaller, or use the command");
    } catch (RuntimeException | Error defect) {
      if (Thread.currentThread().isInterrupted()) {
        // Cut off half way: the answer was given already.
        return Refusal.later("cut off");
      }
      defects.accept(defect);
      return Refusal.defect();
    }
  }

  @Override
  public void close() {
    threads.shutdownNow();
    clock.shutdownNow();
  }
}
