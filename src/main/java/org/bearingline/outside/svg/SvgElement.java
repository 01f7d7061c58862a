package org.bearingline.outside.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.outside.Quoted;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** One element of an SVG file. */
final class SvgElement {

  /** As measured: a class is read in the time of so many letters of path data. */
  private static final int LETTERS_OF_A_CLASS = 20;

  private final String file;
  private final String name;
  private final Map<String, String> attributes = new HashMap<>();
  private final List<SvgElement> children = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private final int line;
  private final int column;
  private SvgElement parent;
  private String source;
  private int number;
  private int depth;
  private long letters;

  /**
   * @param file as the user named it
   * @param name without prefix; empty for an element of another language
   */
  SvgElement(String file, String name, int line, int column) {
    this.file = file;
    this.name = name;
    this.line = Math.max(1, line);
    this.column = Math.max(1, column);
  }

  String name() {
    return name;
  }

  boolean isA(String other) {
    return name.equals(other);
  }

  Optional<String> attribute(String attribute) {
    return Optional.ofNullable(attributes.get(attribute)).map(String::strip);
  }

  void set(String attribute, String value) {
    attributes.put(attribute, value);
    letters += (long) value.length() * (attribute.equals("class") ? LETTERS_OF_A_CLASS : 1);
  }

  /** How many letters of path data are read in the time that its attributes take. */
  long letters() {
    return letters;
  }

  List<SvgElement> children() {
    return children;
  }

  void add(SvgElement child) {
    child.parent = this;
    child.number = children.size();
    child.depth = depth + 1;
    children.add(child);
  }

  /** What it lies in, as written; null of the root. */
  SvgElement parent() {
    return parent;
  }

  /** In how many elements it lies. */
  int depth() {
    return depth;
  }

  /** What is written before it in the same element; null of the first. */
  SvgElement previous() {
    return number == 0 ? null : parent.children.get(number - 1);
  }

  /** What stands between its tags; kept for style sheets only. */
  StringBuilder text() {
    return text;
  }

  Optional<String> id() {
    return attribute("id").filter(id -> !id.isEmpty());
  }

  Place place() {
    return Place.spot(file, line, column);
  }

  Problem problem(String sentence) {
    return new Problem(place(), sentence);
  }

  /** What and where it is: {@code path #apron, line 12}. */
  String source() {
    // Copies of an element share it.
    if (source == null) {
      source = described();
    }
    return source;
  }

  private String described() {
    return name + id().map(id -> " #" + Quoted.of(id)).orElse("") + ", line " + line;
  }
}
