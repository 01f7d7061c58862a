package org.bearingline.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads and writes what goes between page and server. */
final class Json {

  /** Deeper than any job. */
  private static final int DEEPEST = 40;

  private static final int LONGEST_TEXT = 1_000_000;
  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_NUMBER = 40;

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxStringLength(LONGEST_TEXT)
                          .maxNameLength(LONGEST_NAME)
                          .maxNumberLength(LONGEST_NUMBER)
                          .build())
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .defaultPropertyInclusion(
              JsonInclude.Value.construct(JsonInclude.Include.ALWAYS, JsonInclude.Include.ALWAYS))
          .build();

  private Json() {}

  /** A record, map or list of such as JSON in UTF-8. */
  static byte[] write(Object value) {
    try {
      return MAPPER.writeValueAsBytes(value);
    } catch (JsonProcessingException defect) {
      throw new UncheckedIOException(defect);
    }
  }

  /** The object that a request's body is. */
  static JsonNode read(byte[] body) {
    try {
      JsonNode node = MAPPER.readTree(body);
      if (node == null || !node.isObject()) {
        throw new NotUnderstood("the request must be a JSON object");
      }
      return node;
    } catch (IOException unreadable) {
      throw new NotUnderstood(
          "the request is no JSON that can be read here: malformed, too deep or too long");
    }
  }

  /**
   * Maps, lists and strings of a JSON value: numbers and yes or no as they are written. A field
   * that is null is as good as left out.
   */
  static Object tree(JsonNode node) {
    if (node.isObject()) {
      Map<String, Object> fields = new LinkedHashMap<>();
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        if (!field.getValue().isNull()) {
          fields.put(field.getKey(), tree(field.getValue()));
        }
      }
      return fields;
    }
    if (node.isArray()) {
      List<Object> items = new ArrayList<>();
      node.forEach(item -> items.add(tree(item)));
      return items;
    }
    return node.asText();
  }
}
