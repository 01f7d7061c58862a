package org.bearingline.web;

import java.util.Map;
import org.bearingline.job.ProblemView;
import org.bearingline.job.Refused;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Answers that say what is wrong: always JSON with one sentence. */
final class Refusal {

  static final int MAKERS_MISTAKE = 422;
  static final int NOT_UNDERSTOOD = 400;
  static final int BUSY = 503;
  static final int DEFECT = 500;

  private Refusal() {}

  static Answer of(int status, String sentence) {
    return of(status, new ProblemView(sentence, sentence, null, null, null));
  }

  static Answer of(Refused refused) {
    return of(MAKERS_MISTAKE, refused.view());
  }

  static Answer of(Problem problem) {
    String place = problem.place().words();
    return of(
        MAKERS_MISTAKE,
        new ProblemView(
            problem.getMessage(),
            problem.spoken(),
            field(problem.place()),
            null,
            place.isEmpty() ? null : place));
  }

  private static String field(Place place) {
    if (place instanceof Place.Field field) {
      return "/" + field.name();
    }
    return place instanceof Place.Option option ? option.name().replaceFirst("--", "/") : null;
  }

  /** What is to be tried again a little later. */
  static Answer later(String sentence) {
    return of(BUSY, sentence).with("Retry-After", "1");
  }

  static Answer defect() {
    return of(
        DEFECT,
        "a defect in the program, please report it with what you did; the terminal says more");
  }

  private static Answer of(int status, ProblemView view) {
    return new Answer(status, Answer.JSON, Json.write(Map.of("problem", view)), Map.of());
  }
}
