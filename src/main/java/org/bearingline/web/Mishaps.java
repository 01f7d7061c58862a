package org.bearingline.web;

import java.io.IOException;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers what the library itself refuses, in the form of every other refusal. */
final class Mishaps extends ErrorHandler {

  private static final int FIRST_DEFECT = 500;

  private static final int TOO_SLOW = 408;

  private final Consumer<Throwable> defects;

  /**
   * @param defects is told whatever is thrown that no user can cause
   */
  Mishaps(Consumer<Throwable> defects) {
    this.defects = defects;
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    int status = response.getStatus();
    Object thrown = request.getAttribute(ERROR_EXCEPTION);
    if (thrown instanceof TimeoutException || thrown instanceof IOException) {
      // A sender that stopped half way.
      status = TOO_SLOW;
    } else if (status >= FIRST_DEFECT && thrown instanceof Throwable defect) {
      defects.accept(defect);
    }
    PageHandler.send(answer(status), request, response, callback);
    return true;
  }

  private static Answer answer(int status) {
    return status >= FIRST_DEFECT
        ? Refusal.defect()
        : Refusal.of(status, "this request cannot be understood");
  }
}
