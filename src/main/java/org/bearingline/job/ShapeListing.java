package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.shape.CheckedShape;
import org.bearingline.shape.Measure;
import org.bearingline.shape.MeasureKind;
import org.bearingline.shape.ShapeLibrary;

/** What shapes there are and what can be set of each, as words for a table. */
public final class ShapeListing {

  private ShapeListing() {}

  /** One row a shape: name, about. */
  public static List<List<String>> all() {
    ShapeLibrary library = ShapeLibrary.builtIn();
    List<List<String>> rows = new ArrayList<>();
    for (String name : library.names()) {
      rows.add(List.of(name, library.find(name).about()));
    }
    return rows;
  }

  /** One line about a shape. */
  public static String about(String name) {
    return ShapeLibrary.builtIn().find(name).about();
  }

  /** One row a measure: name, default, range, about. */
  public static List<List<String>> measures(String name) {
    CheckedShape shape = ShapeLibrary.builtIn().find(name);
    List<List<String>> rows = new ArrayList<>();
    for (Measure measure : shape.measures()) {
      rows.add(List.of(measure.name(), measure.written(), range(measure), measure.about()));
    }
    return rows;
  }

  private static String range(Measure measure) {
    return measure.kind() == MeasureKind.CHOICE
        ? String.join(", ", measure.choices())
        : measure.writtenFrom() + " to " + measure.writtenTo();
  }
}
