package org.bearingline.shape.formula;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.bearingline.outline.Degrees;

/** The functions of shape files. Angles are in degrees. */
enum Function {
  MIN("min", 1, 20, Takes.SAME, same -> same, v -> Arrays.stream(v).min().orElseThrow()),
  MAX("max", 1, 20, Takes.SAME, same -> same, v -> Arrays.stream(v).max().orElseThrow()),
  HYPOT("hypot", 2, 2, Takes.SAME, same -> same, v -> Math.hypot(v[0], v[1])),
  ABS("abs", 1, 1, Takes.SAME, same -> same, v -> Math.abs(v[0])),
  SQRT("sqrt", 1, 1, Takes.SQUARE, Dimension::root, v -> v[0] < 0 ? Double.NaN : Math.sqrt(v[0])),
  SIN("sin", 1, 1, Takes.ANGLES, in -> Dimension.NUMBER, v -> Degrees.sin(v[0])),
  COS("cos", 1, 1, Takes.ANGLES, in -> Dimension.NUMBER, v -> Degrees.cos(v[0])),
  TAN(
      "tan",
      1,
      1,
      Takes.ANGLES,
      in -> Dimension.NUMBER,
      v -> Degrees.sin(v[0]) / Degrees.cos(v[0])),
  ASIN("asin", 1, 1, Takes.NUMBERS, in -> Dimension.ANGLE, v -> Math.toDegrees(Math.asin(v[0]))),
  ACOS("acos", 1, 1, Takes.NUMBERS, in -> Dimension.ANGLE, v -> Math.toDegrees(Math.acos(v[0]))),
  ATAN("atan", 1, 1, Takes.NUMBERS, in -> Dimension.ANGLE, v -> Math.toDegrees(Math.atan(v[0]))),
  ATAN2(
      "atan2",
      2,
      2,
      Takes.SAME,
      in -> Dimension.ANGLE,
      v -> Math.toDegrees(Math.atan2(v[0], v[1]))),
  RADIANS("radians", 1, 1, Takes.ANGLES, in -> Dimension.NUMBER, v -> Math.toRadians(v[0])),
  ROUND("round", 1, 1, Takes.NUMBERS, in -> Dimension.NUMBER, v -> Math.rint(v[0])),
  FLOOR("floor", 1, 1, Takes.NUMBERS, in -> Dimension.NUMBER, v -> Math.floor(v[0])),
  CEILING("ceiling", 1, 1, Takes.NUMBERS, in -> Dimension.NUMBER, v -> Math.ceil(v[0])),
  IF("if", 3, 3, Takes.BRANCHES, same -> same, v -> v[0] != 0 ? v[1] : v[2]);

  /** What a function's operands must be. */
  enum Takes {
    /** All of one dimension. */
    SAME,
    /** A quantity with even exponents. */
    SQUARE,
    ANGLES,
    NUMBERS,
    /** A yes-or-no, then two of one dimension. */
    BRANCHES
  }

  private static final Map<String, Function> BY_NAME = index();

  private final String word;
  private final int fewest;
  private final int most;
  private final Takes takes;
  private final UnaryOperator<Dimension> result;
  private final ToDoubleFunction<double[]> rule;

  Function(
      String word,
      int fewest,
      int most,
      Takes takes,
      UnaryOperator<Dimension> result,
      ToDoubleFunction<double[]> rule) {
    this.word = word;
    this.fewest = fewest;
    this.most = most;
    this.takes = takes;
    this.result = result;
    this.rule = rule;
  }

  private static Map<String, Function> index() {
    Map<String, Function> index = new LinkedHashMap<>();
    for (Function function : values()) {
      index.put(function.word, function);
    }
    return Collections.unmodifiableMap(index);
  }

  static Map<String, Function> byName() {
    return BY_NAME;
  }

  String word() {
    return word;
  }

  int fewest() {
    return fewest;
  }

  int most() {
    return most;
  }

  Takes takes() {
    return takes;
  }

  Dimension result(Dimension operand) {
    return result.apply(operand);
  }

  ToDoubleFunction<double[]> rule() {
    return rule;
  }
}
