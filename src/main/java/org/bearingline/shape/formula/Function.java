package org.bearingline.shape.formula;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.bearingline.outline.Degrees;

/** The functions of shape files. Angles are in degrees. */
enum Function {
  MIN("min", 1, 20, Takes.SAME, Gives.SAME),
  MAX("max", 1, 20, Takes.SAME, Gives.SAME),
  HYPOT("hypot", 2, 2, Takes.SAME, Gives.SAME),
  ABS("abs", 1, 1, Takes.SAME, Gives.SAME),
  SQRT("sqrt", 1, 1, Takes.SQUARE, Gives.ROOT),
  SIN("sin", 1, 1, Takes.ANGLES, Gives.NUMBER),
  COS("cos", 1, 1, Takes.ANGLES, Gives.NUMBER),
  TAN("tan", 1, 1, Takes.ANGLES, Gives.NUMBER),
  ASIN("asin", 1, 1, Takes.NUMBERS, Gives.ANGLE),
  ACOS("acos", 1, 1, Takes.NUMBERS, Gives.ANGLE),
  ATAN("atan", 1, 1, Takes.NUMBERS, Gives.ANGLE),
  ATAN2("atan2", 2, 2, Takes.SAME, Gives.ANGLE),
  RADIANS("radians", 1, 1, Takes.ANGLES, Gives.NUMBER),
  ROUND("round", 1, 1, Takes.NUMBERS, Gives.NUMBER),
  FLOOR("floor", 1, 1, Takes.NUMBERS, Gives.NUMBER),
  CEILING("ceiling", 1, 1, Takes.NUMBERS, Gives.NUMBER),
  IF("if", 3, 3, Takes.BRANCHES, Gives.SAME);

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

  /** The dimension of what a function gives. */
  private enum Gives {
    /** That of its first operand. */
    SAME,
    /** The root of that. */
    ROOT,
    NUMBER,
    ANGLE
  }

  private static final Map<String, Function> BY_NAME = index();

  private final String word;
  private final int fewest;
  private final int most;
  private final Takes takes;
  private final Gives gives;

  Function(String word, int fewest, int most, Takes takes, Gives gives) {
    this.word = word;
    this.fewest = fewest;
    this.most = most;
    this.takes = takes;
    this.gives = gives;
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
    return switch (gives) {
      case SAME -> operand;
      case ROOT -> operand.root();
      case NUMBER -> Dimension.NUMBER;
      case ANGLE -> Dimension.ANGLE;
    };
  }

  /** The value for as many operands as it takes; not a number where it has none. */
  double of(double... v) {
    return switch (this) {
      case MIN -> Arrays.stream(v).min().orElseThrow();
      case MAX -> Arrays.stream(v).max().orElseThrow();
      case HYPOT -> Math.hypot(v[0], v[1]);
      case ABS -> Math.abs(v[0]);
      case SQRT -> v[0] < 0 ? Double.NaN : Math.sqrt(v[0]);
      case SIN -> Degrees.sin(v[0]);
      case COS -> Degrees.cos(v[0]);
      case TAN -> Degrees.sin(v[0]) / Degrees.cos(v[0]);
      case ASIN -> Math.toDegrees(Math.asin(v[0]));
      case ACOS -> Math.toDegrees(Math.acos(v[0]));
      case ATAN -> Math.toDegrees(Math.atan(v[0]));
      case ATAN2 -> Math.toDegrees(Math.atan2(v[0], v[1]));
      case RADIANS -> Math.toRadians(v[0]);
      case ROUND -> Math.rint(v[0]);
      case FLOOR -> Math.floor(v[0]);
      case CEILING -> Math.ceil(v[0]);
      case IF -> v[0] != 0 ? v[1] : v[2];
    };
  }
}
