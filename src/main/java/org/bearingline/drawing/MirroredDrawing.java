package org.bearingline.drawing;

import java.util.List;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/** A drawing seen in a mirror, its words still to be read: lines change sides, letters do not. */
public final class MirroredDrawing {

  private final Similarity mirror;

  private MirroredDrawing(Similarity mirror) {
    this.mirror = mirror;
  }

  /**
   * The mirror image.
   *
   * @param mirror a mirroring that keeps lengths
   */
  public static Drawing of(Drawing drawing, Similarity mirror) {
    MirroredDrawing mirrored = new MirroredDrawing(mirror);
    return new Drawing(
        drawing.title(),
        drawing.layers().stream().map(mirrored::layer).toList(),
        drawing.enlargement());
  }

  private Layer layer(Layer layer) {
    List<Item> items = layer.items().stream().map(this::item).toList();
    return new Layer(layer.name(), layer.role(), layer.title(), items);
  }

  private Item item(Item item) {
    if (item instanceof Item.Stroke stroke) {
      return new Item.Stroke(stroke.path().transformed(mirror));
    }
    if (item instanceof Item.Fill fill) {
      return new Item.Fill(fill.outline().transformed(mirror));
    }
    if (item instanceof Item.Drill drill) {
      return new Item.Drill(mirror.apply(drill.at()), drill.diameter());
    }
    if (item instanceof Item.Arrow arrow) {
      return new Item.Arrow(arrow.path().transformed(mirror), arrow.head());
    }
    if (item instanceof Item.Dimension dimension) {
      return new Item.Dimension(
          mirror.apply(dimension.from()),
          mirror.apply(dimension.to()),
          -dimension.offset(),
          dimension.prefix(),
          dimension.value());
    }
    return text((Item.Text) item);
  }

  /** Words take up the mirror image of their place, written the way that is read. */
  private Item text(Item.Text text) {
    Point along = Point.polar(1, text.degrees());
    Point image = mirror.apply(along).minus(mirror.apply(Point.ORIGIN));
    boolean ahead = image.x() > 1e-9 || (Math.abs(image.x()) <= 1e-9 && image.y() > 0);
    Point reading = ahead ? image : image.times(-1);
    return new Item.Text(
        mirror.apply(text.at()),
        text.text(),
        text.height(),
        Degrees.of(reading),
        ahead ? text.anchor() : turned(text.anchor()));
  }

  private static Item.Text.Anchor turned(Item.Text.Anchor anchor) {
    return switch (anchor) {
      case START -> Item.Text.Anchor.END;
      case MIDDLE -> Item.Text.Anchor.MIDDLE;
      case END -> Item.Text.Anchor.START;
    };
  }
}
