package org.bearingline.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.bearingline.job.JobState;

/** What a request of the page asks for. */
final class PageRequest {

  private static final double LARGEST_LETTERING = 100;

  private final JsonNode body;

  private PageRequest(JsonNode body) {
    this.body = body;
  }

  static PageRequest read(byte[] body) {
    return new PageRequest(Json.read(body));
  }

  /** The state that it brings. */
  JobState state() {
    JsonNode state = body.path("state");
    JsonNode job = state.path("job");
    if (!job.isObject()) {
      throw new NotUnderstood("the request must bring a state with a job in it");
    }
    Map<String, Object> files = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> file : state.path("files").properties()) {
      if (!file.getValue().isTextual() && !file.getValue().isObject()) {
        throw new NotUnderstood("a file of the state is a text or an object");
      }
      files.put(file.getKey(), Json.tree(file.getValue()));
    }
    JsonNode opened = state.path("opened");
    return new JobState(fields(job), files, opened.isTextual() ? opened.textValue() : null);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> fields(JsonNode job) {
    return (Map<String, Object>) Json.tree(job);
  }

  boolean has(String field) {
    return body.hasNonNull(field);
  }

  String text(String field) {
    JsonNode value = body.path(field);
    if (!value.isTextual()) {
      throw new NotUnderstood("the request must bring “" + field + "”, a text");
    }
    return value.textValue();
  }

  /** Number of the template, 1 where none is named. */
  int plate() {
    JsonNode plate = body.path("plate");
    if (plate.isMissingNode() || plate.isNull()) {
      return 1;
    }
    if (!plate.canConvertToInt() || plate.intValue() < 1) {
      throw new NotUnderstood("“plate” is a whole number from 1");
    }
    return plate.intValue();
  }

  /** How much larger than usual the lettering is. */
  OptionalDouble enlargement() {
    JsonNode wanted = body.path("enlargement");
    if (wanted.isMissingNode() || wanted.isNull()) {
      return OptionalDouble.empty();
    }
    double value = wanted.isNumber() ? wanted.doubleValue() : 0;
    if (!(value > 0 && value <= LARGEST_LETTERING)) {
      throw new NotUnderstood("“enlargement” is a number above 0, at most 100");
    }
    return OptionalDouble.of(value);
  }
}
