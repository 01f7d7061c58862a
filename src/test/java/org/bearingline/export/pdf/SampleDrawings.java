package org.bearingline.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;

/** Drawings to print in tests; the parts are invented. */
public final class SampleDrawings {

  private SampleDrawings() {}

  /** A rail with an arched lower edge: length and height in mm, every kind of item on it. */
  public static Drawing rail(double length, double height) {
    double rise = height * 0.3;
    Loop part = arched(length, height, rise, 0);
    Loop template = arched(length + 60, height + 20, rise, -30);
    Point low = new Point(-30, -8);
    Loop rough = Loop.rectangle(new Bounds(low.x() + 26, low.y(), length + 4, height + 4));
    List<Item> marks = new ArrayList<>();
    marks.add(
        new Item.Stroke(
            Path.of(new Line(new Point(length / 2, -5), new Point(length / 2, height + 5)))));
    marks.add(new Item.Drill(new Point(length / 4, height * 0.75), Math.min(10, height / 8)));
    Loop corner =
        Loop.of(
            new Line(new Point(5, 0), new Point(0, 5)),
            new Line(new Point(0, 5), new Point(0, 0)),
            new Line(new Point(0, 0), new Point(5, 0)));
    return new Drawing(
        "Arched rail, " + Math.round(length) + " × " + Math.round(height) + " mm",
        List.of(
            layer(
                LayerName.LEFTOVER,
                Role.NOTE,
                "leftover: clean up by hand",
                new Item.Fill(Outline.of(corner))),
            layer(LayerName.PART, Role.NOTE, "finished part", new Item.Stroke(Path.of(part))),
            layer(
                LayerName.ROUGH_LINE,
                Role.SAW,
                "rough line: band-saw to it",
                new Item.Stroke(Path.of(rough))),
            layer(
                LayerName.TEMPLATE,
                Role.CUT,
                "template edge: work to this line",
                new Item.Stroke(Path.of(template))),
            new Layer(LayerName.MARKS, Role.MARK, "centre lines and holes", marks),
            layer(
                LayerName.FEED,
                Role.NOTE,
                "feed direction",
                new Item.Arrow(
                    Path.of(
                        new Line(
                            new Point(length * 0.4, height / 2),
                            new Point(length * 0.6, height / 2))),
                    Math.min(5, height / 6))),
            layer(
                LayerName.LABELS,
                Role.NOTE,
                "words",
                new Item.Text(
                    new Point(length / 2 + 5, height * 0.8),
                    "face A",
                    4,
                    0,
                    Item.Text.Anchor.START),
                new Item.Dimension(new Point(0, height), new Point(length, height), 25, "", length),
                new Item.Dimension(new Point(0, 0), new Point(0, height), 40, "", height))));
  }

  private static Loop arched(double length, double height, double rise, double x) {
    double inset = length * 0.1;
    double chord = length - 2 * inset;
    double radius = (chord * chord / 4 + rise * rise) / (2 * rise);
    Point a = new Point(x + inset, 0);
    Point b = new Point(x + length - inset, 0);
    Point center = new Point(x + length / 2, rise - radius);
    Arc arch = Arc.between(a, b, center, false);
    List<Primitive> around = new ArrayList<>();
    around.add(new Line(new Point(x, 0), a));
    around.add(arch);
    around.add(new Line(b, new Point(x + length, 0)));
    around.add(new Line(new Point(x + length, 0), new Point(x + length, height)));
    around.add(new Line(new Point(x + length, height), new Point(x, height)));
    around.add(new Line(new Point(x, height), new Point(x, 0)));
    return new Loop(around);
  }

  /** The same with lettering for a picture that is seen reduced. */
  public static Drawing enlarged(Drawing drawing, double enlargement) {
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      List<Item> items = layer.items().stream().map(item -> enlarged(item, enlargement)).toList();
      layers.add(new Layer(layer.name(), layer.role(), layer.title(), items));
    }
    return new Drawing(drawing.title(), layers, enlargement);
  }

  private static Item enlarged(Item item, double enlargement) {
    if (item instanceof Item.Text text) {
      return new Item.Text(
          text.at(), text.text(), text.height() * enlargement, text.degrees(), text.anchor());
    }
    return item;
  }

  /** The same without dimensions, which stand beside the part and ask for no page. */
  public static Drawing withoutDimensions(Drawing drawing) {
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      List<Item> items =
          layer.items().stream().filter(item -> !(item instanceof Item.Dimension)).toList();
      layers.add(new Layer(layer.name(), layer.role(), layer.title(), items));
    }
    return new Drawing(drawing.title(), layers);
  }

  /** A ring of two circles: pages in its middle stay empty. */
  public static Drawing ring(double outer, double inner) {
    Item out = new Item.Stroke(Path.of(Arc.circle(Point.ORIGIN, outer)));
    Item in = new Item.Stroke(Path.of(Arc.around(Point.ORIGIN, inner, 0, -360)));
    return new Drawing(
        "Ring",
        List.of(layer(LayerName.TEMPLATE, Role.CUT, "template edge: work to this line", out, in)));
  }

  /** One line on the template layer. */
  public static Drawing of(Primitive... primitives) {
    List<Item> strokes = new ArrayList<>();
    for (Primitive primitive : primitives) {
      strokes.add(new Item.Stroke(Path.of(primitive)));
    }
    return new Drawing(
        "Lines", List.of(new Layer(LayerName.TEMPLATE, Role.CUT, "template edge", strokes)));
  }

  /** A full circle turned to where its start is not on an axis. */
  public static Arc circle(double x, double y, double radius) {
    return Arc.circle(Point.ORIGIN, radius)
        .transformed(Similarity.rotation(17, Point.ORIGIN))
        .transformed(Similarity.translation(x, y));
  }

  private static Layer layer(LayerName name, Role role, String title, Item... items) {
    return new Layer(name, role, title, List.of(items));
  }
}
