package org.bearingline.export.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Point;

/** Writes the fields of one object. */
final class Fields {

  private static final int DECIMALS = 9;

  private final JsonGenerator json;

  Fields(JsonGenerator json) {
    this.json = json;
  }

  /** Writes one value. */
  @FunctionalInterface
  interface Value<T> {
    void write(T value) throws IOException;
  }

  /** Null where there is none. */
  Fields text(String name, Optional<String> value) throws IOException {
    if (value.isPresent()) {
      return text(name, value.get());
    }
    json.writeNullField(name);
    return this;
  }

  Fields text(String name, String value) throws IOException {
    json.writeStringField(name, value);
    return this;
  }

  Fields whole(String name, int value) throws IOException {
    json.writeNumberField(name, value);
    return this;
  }

  Fields number(String name, double value) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(plain(value));
    return this;
  }

  Fields number(String name, OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      return number(name, value.getAsDouble());
    }
    json.writeNullField(name);
    return this;
  }

  /** A position as [x, y]. */
  Fields point(String name, Point at) throws IOException {
    json.writeFieldName(name);
    point(at);
    return this;
  }

  void point(Point at) throws IOException {
    json.writeStartArray();
    json.writeNumber(plain(at.x()));
    json.writeNumber(plain(at.y()));
    json.writeEndArray();
  }

  <T> Fields list(String name, List<T> values, Value<T> each) throws IOException {
    json.writeArrayFieldStart(name);
    for (T value : values) {
      each.write(value);
    }
    json.writeEndArray();
    return this;
  }

  /** An object's fields, or null. */
  <T> Fields object(String name, Optional<T> value, Value<T> fields) throws IOException {
    json.writeFieldName(name);
    if (value.isPresent()) {
      object(value.get(), fields);
    } else {
      json.writeNull();
    }
    return this;
  }

  <T> void object(T value, Value<T> fields) throws IOException {
    json.writeStartObject();
    fields.write(value);
    json.writeEndObject();
  }

  static BigDecimal plain(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    // 1E+2 is stripped too far for a plain number.
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
