package org.bearingline.export;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Item.Text.Anchor;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.drawing.labels.LabelPlacer;
import org.bearingline.drawing.labels.Wish;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/** A made-up drawing with every layer and every kind of item, on no part that anyone would make. */
public final class DemoDrawing {

  private DemoDrawing() {}

  /** A plate with a round end, a keyhole and a slot; {@code size} 1 is 240 mm long. */
  public static Loop plate(double size) {
    double r = 30 * size;
    Point a = new Point(0, 0);
    Point b = new Point(200 * size, 0);
    Point c = new Point(200 * size, 2 * r);
    Point d = new Point(0, 2 * r);
    return Loop.of(
        new Line(a, b),
        Arc.between(b, c, new Point(200 * size, r), true),
        new Line(c, d),
        new Line(d, a));
  }

  /** A keyhole: nearly a full circle of 300° and a neck below it. */
  public static Loop keyhole(Point center, double radius) {
    Arc round = Arc.around(center, radius, -60, 300);
    Point left = new Point(round.end().x(), center.y() - 2.2 * radius);
    Point right = new Point(round.start().x(), center.y() - 2.2 * radius);
    return Loop.of(
        round, new Line(round.end(), left), new Line(left, right), new Line(right, round.start()));
  }

  public static Loop slot(Point center, double length, double radius) {
    double half = length / 2 - radius;
    Point right = center.plus(new Point(half, 0));
    Point left = center.minus(new Point(half, 0));
    Point down = new Point(0, -radius);
    Point up = new Point(0, radius);
    return Loop.of(
        new Line(left.plus(down), right.plus(down)),
        Arc.between(right.plus(down), right.plus(up), right, true),
        new Line(right.plus(up), left.plus(up)),
        Arc.between(left.plus(up), left.plus(down), left, true));
  }

  private static Item stroke(Loop loop) {
    return new Item.Stroke(Path.of(loop));
  }

  /** All items at a size: 1 is 240 mm long, 0.1 is tiny, 12 is nearly 3 m. */
  public static Drawing of(double size) {
    Bounds box = plate(size).bounds().grown(14 * size);
    return of(size, Drawing.enlargementFor(box));
  }

  public static Drawing of(double size, double enlargement) {
    double text = Drawing.TEXT_HEIGHT * enlargement;
    Point key = new Point(60 * size, 36 * size);
    Point slotAt = new Point(140 * size, 30 * size);
    Loop rough = Loop.rectangle(new Bounds(-6 * size, -6 * size, 236 * size, 66 * size));
    Loop notch =
        Loop.of(
            new Line(new Point(2 * size, 0), new Point(0, 2 * size)),
            new Line(new Point(0, 2 * size), new Point(0, 0)),
            new Line(new Point(0, 0), new Point(2 * size, 0)));
    Loop speck =
        Loop.polygon(
            List.of(
                new Point(140 * size, 30 * size),
                new Point(140.4 * size, 30 * size),
                new Point(140.2 * size, 30.4 * size)));
    Path feed = Path.of(Arc.around(new Point(200 * size, 30 * size), 34 * size, -60, 120));
    Path centreLine =
        Path.of(new Line(new Point(-10 * size, 30 * size), new Point(240 * size, 30 * size)));
    List<Layer> layers = new ArrayList<>();
    layers.add(
        layer(
            LayerName.STOCK,
            Role.LOCATE,
            stroke(Loop.rectangle(new Bounds(-12 * size, -12 * size, 242 * size, 72 * size)))));
    layers.add(
        layer(
            LayerName.HOLDING,
            Role.NOTE,
            stroke(Loop.rectangle(new Bounds(20 * size, 5 * size, 60 * size, 15 * size)))));
    layers.add(
        layer(
            LayerName.LEFTOVER,
            Role.NOTE,
            new Item.Fill(Outline.of(notch)),
            new Item.Fill(Outline.of(speck))));
    layers.add(layer(LayerName.GROOVE, Role.NOTE, stroke(slot(slotAt, 76 * size, 18 * size))));
    layers.add(layer(LayerName.PANEL, Role.NOTE, stroke(slot(slotAt, 72 * size, 16 * size))));
    layers.add(
        layer(
            LayerName.RECESS,
            Role.NOTE,
            new Item.Stroke(Path.of(Arc.circle(new Point(205 * size, 30 * size), 12 * size)))));
    layers.add(
        layer(LayerName.PART, Role.NOTE, stroke(plate(size)), stroke(keyhole(key, 10 * size))));
    layers.add(layer(LayerName.ROUGH_LINE, Role.SAW, stroke(rough)));
    layers.add(layer(LayerName.CUTTER_CENTRE, Role.NOTE, stroke(keyhole(key, 7 * size))));
    layers.add(
        layer(
            LayerName.TEMPLATE,
            Role.CUT,
            stroke(plate(size)),
            stroke(slot(slotAt, 60 * size, 10 * size))));
    layers.add(
        layer(
            LayerName.MARKS,
            Role.MARK,
            new Item.Stroke(centreLine),
            new Item.Drill(new Point(20 * size, 48 * size), 8 * size)));
    layers.add(layer(LayerName.FEED, Role.NOTE, new Item.Arrow(feed, 4 * enlargement)));
    LabelPlacer placer = new LabelPlacer(Typeface.REGULAR::width, text / 2);
    for (Layer layer : layers) {
      placer.avoid(layer);
    }
    List<Item> labels = new ArrayList<>();
    labels.add(
        new Item.Text(
            new Point(-14 * size, -30 * size - 3 * text),
            "réglé à 90° <&> \"words\"",
            text,
            0,
            Anchor.START));
    labels.add(new Item.Text(new Point(252 * size, 30 * size), "turned", text, 90, Anchor.MIDDLE));
    placer.avoid(new Layer(LayerName.LABELS, Role.NOTE, "fixed words", labels));
    for (Item.Dimension wanted :
        List.of(
            new Item.Dimension(
                new Point(0, 0), new Point(230 * size, 0), -2 * text, "", 230 * size),
            new Item.Dimension(new Point(0, 60 * size), new Point(0, 0), -2 * text, "", 60 * size),
            new Item.Dimension(
                new Point(70 * size, 60 * size),
                new Point(50 * size, 60 * size),
                -2 * text,
                "Ø ",
                20 * size))) {
      labels.add(placer.place(wanted, wanted.prefix() + "8888 88/88″", text));
    }
    labels.addAll(placer.place(Wish.at(new Point(0.7 * size, 0.7 * size), "1", text)));
    labels.addAll(placer.place(Wish.at(new Point(140.2 * size, 30.2 * size), "2", text)));
    labels.addAll(
        placer.place(
            Wish.at(new Point(20 * size, 48 * size), "Ø 5/16″ × 1½″ deep, ± 2°, 10′", text)));
    labels.addAll(placer.place(Wish.at(new Point(205 * size, 30 * size), "pull recess", text)));
    labels.addAll(
        placer.place(Wish.at(new Point(100 * size, 0), "template: work to this line", text)));
    layers.add(new Layer(LayerName.LABELS, Role.NOTE, "words & sizes", labels));
    return new Drawing("Trial plate <" + size + ">", layers, enlargement);
  }

  private static Layer layer(LayerName name, Role role, Item... items) {
    return new Layer(name, role, "the " + name.id() + " of it", List.of(items));
  }
}
