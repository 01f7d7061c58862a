package org.bearingline.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.export.font.Typeface;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.routing.grain.GrainClass;

/**
 * Says under a picture what each of its lines is. Only for pictures: on a full-size drawing the
 * samples would be lines that a machine cuts.
 */
final class PictureLegend {

  /** Rows and gaps in heights of the lettering. */
  private static final double ROW = 1.7;

  private static final double SAMPLE = 4;
  private static final double GAP = 0.6;
  private static final double BETWEEN = 1.6;

  /** Lettering of the legend beside that of the drawing: it is read once and near by. */
  private static final double SMALLER = 0.8;

  private static final Map<LayerName, String> WORDS =
      new EnumMap<>(
          Map.of(
              LayerName.LEFTOVER, "out of the bit's reach",
              LayerName.RECESS, "recess or ledge",
              LayerName.PART, "finished part",
              LayerName.ROUGH_LINE, "saw line",
              LayerName.CUTTER_CENTRE, "bit's centre",
              LayerName.TEMPLATE, "template edge",
              LayerName.MARKS, "marks"));

  private final Meant meant;
  private final double height;
  private final double left;
  private final double right;
  private double x;
  private double y;

  private PictureLegend(Bounds box, double height, Meant meant) {
    this.meant = meant;
    this.height = height;
    this.left = box.minX();
    this.right = box.maxX();
    this.x = left;
    this.y = box.minY() - 2 * ROW * height;
  }

  /**
   * What a picture shows that its layers alone do not tell.
   *
   * @param grains the classes of grain it marks
   * @param feed what its arrows mean
   * @param clamps whether clamps may stand somewhere
   * @param tape whether tape alone holds somewhere
   */
  record Meant(Set<GrainClass> grains, String feed, boolean clamps, boolean tape) {
    static final Meant NOTHING = new Meant(Set.of(), "", false, false);
  }

  /** The same drawing with a legend under it. */
  static Drawing under(Drawing drawing, Meant meant) {
    PictureLegend legend =
        new PictureLegend(drawing.bounds(), SMALLER * drawing.textHeight(), meant);
    List<Item> words = new ArrayList<>();
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      if (layer.name() == LayerName.LABELS) {
        words.addAll(0, layer.items());
        continue;
      }
      layers.add(legend.sampled(layer, words));
    }
    layers.add(PartDrawing.layer(LayerName.LABELS, words));
    return new Drawing(drawing.title(), layers, drawing.enlargement());
  }

  private Layer sampled(Layer layer, List<Item> words) {
    if (layer.name() == LayerName.HOLDING) {
      return holding(layer, words);
    }
    String said =
        layer.name() == LayerName.FEED
            ? meant.feed()
            : WORDS.getOrDefault(layer.name(), layer.title());
    List<Item> items = new ArrayList<>(layer.items());
    next(said, words);
    items.add(sample(layer));
    step(said);
    if (layer.name() == LayerName.FEED) {
      for (GrainClass grain : List.of(GrainClass.TEARS, GrainClass.END_GRAIN)) {
        grain(grain, meant.grains(), items, words);
      }
    }
    return new Layer(layer.name(), layer.role(), layer.title(), items);
  }

  private Layer holding(Layer layer, List<Item> words) {
    List<Item> items = new ArrayList<>(layer.items());
    if (meant.clamps()) {
      zone("clamps may stand here", true, items, words);
    }
    if (meant.tape()) {
      zone("tape or pins only", false, items, words);
    }
    return new Layer(layer.name(), layer.role(), layer.title(), items);
  }

  private void zone(String said, boolean clamps, List<Item> items, List<Item> words) {
    next(said, words);
    Bounds box = new Bounds(x, y - 0.55 * height, x + SAMPLE * height, y + 0.55 * height);
    items.addAll(new ZoneHatch(height / 12).items(Outline.of(Loop.rectangle(box)), clamps));
    step(said);
  }

  private void grain(
      GrainClass grain, Set<GrainClass> present, List<Item> items, List<Item> words) {
    if (!present.contains(grain)) {
      return;
    }
    String said = grain.words();
    next(said, words);
    double low = y - 0.6 * height;
    Path path = Path.of(new Line(new Point(x, low), new Point(x + SAMPLE * height, low)));
    items.addAll(new GrainMarks(height / 6).marks(path, grain, true));
    step(said);
  }

  private double width(String said) {
    return (SAMPLE + GAP) * height + Typeface.REGULAR.width(said, height) + BETWEEN * height;
  }

  /** Goes to where the next sample stands, and puts its words there. */
  private void next(String said, List<Item> words) {
    if (x > left && x + width(said) > right) {
      x = left;
      y -= ROW * height;
    }
    words.add(
        new Item.Text(
            new Point(x + (SAMPLE + GAP) * height, y), said, height, 0, Item.Text.Anchor.START));
  }

  private void step(String said) {
    x += width(said);
  }

  private Item sample(Layer layer) {
    Point from = new Point(x, y);
    Point to = new Point(x + SAMPLE * height, y);
    return switch (layer.name()) {
      case LEFTOVER ->
          new Item.Fill(Outline.of(Loop.rectangle(Bounds.of(from, to).grown(height / 3))));
      case FEED -> new Item.Arrow(Path.of(new Line(from, to)), height);
      default -> new Item.Stroke(Path.of(new Line(from, to)));
    };
  }
}
