package org.bearingline.shape;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads what a maker set a measure to. */
final class Setting {

  private static final Pattern NUMBER =
      Pattern.compile("([+-]?\\d{1,9}(?:\\.\\d{1,12})?|[+-]?\\.\\d{1,12})");
  private static final Pattern ANGLE = Pattern.compile(NUMBER.pattern() + "\\h*(?:deg|°)?");

  /** A limit of 5/8in is reached by 15.875mm: conversion rounds. */
  private static final double SLACK = 1e-9;

  private Setting() {}

  /** In mm, degrees, as a number, or the place of a word among the choices; within its range. */
  static double read(Measure measure, String text, Optional<Units> bareNumbers) {
    double value =
        switch (measure.kind()) {
          case LENGTH -> length(measure, text, bareNumbers);
          case ANGLE -> number(measure, text, ANGLE, "an angle, such as 30deg");
          case NUMBER -> number(measure, text, NUMBER, "a plain number");
          case COUNT -> count(measure, text);
          case CHOICE -> choice(measure, text);
        };
    double slack = SLACK * Math.max(1, Math.abs(value));
    if (value < measure.from() - slack || value > measure.to() + slack) {
      throw problem(
          measure,
          text
              + " is outside the range of this measure, "
              + measure.writtenFrom()
              + " to "
              + measure.writtenTo());
    }
    return value;
  }

  private static double length(Measure measure, String text, Optional<Units> bareNumbers) {
    try {
      return bareNumbers.isPresent() ? Length.parse(text, bareNumbers.get()) : Length.parse(text);
    } catch (Problem unread) {
      throw new Problem(Place.field(measure.name()), unread.getMessage(), unread);
    }
  }

  private static double number(Measure measure, String text, Pattern form, String wanted) {
    Matcher matcher = form.matcher(text);
    if (!matcher.matches()) {
      throw problem(measure, "“" + text + "” is not " + wanted);
    }
    return Double.parseDouble(matcher.group(1));
  }

  private static double count(Measure measure, String text) {
    double value = number(measure, text, NUMBER, "a whole number");
    if (value != Math.rint(value)) {
      throw problem(measure, "“" + text + "” is not a whole number");
    }
    return value;
  }

  private static double choice(Measure measure, String text) {
    int index = measure.choices().indexOf(text);
    if (index < 0) {
      throw problem(
          measure,
          "“"
              + text
              + "” is not one of "
              + String.join(", ", measure.choices())
              + NearestName.hint(measure.choices(), text));
    }
    return index;
  }

  private static Problem problem(Measure measure, String sentence) {
    return new Problem(Place.field(measure.name()), sentence);
  }
}
