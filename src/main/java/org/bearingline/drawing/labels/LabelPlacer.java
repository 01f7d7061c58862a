package org.bearingline.drawing.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.drawing.DimensionLayout;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Item.Text.Anchor;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.TextWidth;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.problem.CutOff;

/**
 * Places words and dimensions one after the other, clear of lines, of reserved boxes and of each
 * other. There is always a place: at worst, outside everything. The same calls in the same order
 * give the same places, so what matters most is placed first.
 */
public final class LabelPlacer {

  private final TextWidth width;
  private final double clearance;
  private final Obstacles obstacles;
  private final WordBoxes words;

  /**
   * @param width how wide words are
   * @param clearance mm kept between words and lines, more than 0
   */
  public LabelPlacer(TextWidth width, double clearance) {
    if (!(clearance > 0)) {
      throw new IllegalArgumentException("words need some clearance, got " + clearance);
    }
    this.width = width;
    this.clearance = clearance;
    this.obstacles = new Obstacles(8 * clearance);
    this.words = new WordBoxes(clearance);
  }

  /** Keeps later words clear of a line. */
  public LabelPlacer avoid(Path path) {
    path.primitives().forEach(obstacles::add);
    return this;
  }

  /** Keeps later words out of a box. */
  public LabelPlacer avoid(Bounds box) {
    obstacles.add(box);
    return this;
  }

  /** Keeps later words clear of everything on a layer but its dimensions, which come by place. */
  public LabelPlacer avoid(Layer layer) {
    layer.items().forEach(this::avoid);
    return this;
  }

  private void avoid(Item item) {
    if (item instanceof Item.Stroke stroke) {
      avoid(stroke.path());
    } else if (item instanceof Item.Fill fill) {
      fill.outline().loops().forEach(loop -> avoid(Path.of(loop)));
    } else if (item instanceof Item.Drill drill) {
      obstacles.add(Arc.circle(drill.at(), drill.diameter() / 2));
      obstacles.add(Bounds.of(drill.at()));
    } else if (item instanceof Item.Arrow arrow) {
      avoid(arrow.path());
      obstacles.add(Bounds.of(arrow.path().end()).grown(arrow.head() / 2));
    } else if (item instanceof Item.Text text) {
      words.of(text, width.of(text.text(), text.height())).forEach(obstacles::add);
    }
  }

  /**
   * Places one line of words: on the first preferred spot that is clear, else where it is nearest
   * to the target and its leader crosses least.
   *
   * @return the text, followed by a leader with its head at the target where the words had to move
   *     away from it or a line comes between
   */
  public List<Item> place(Wish wish) {
    CutOff.check();
    double wide = width.of(wish.text(), wish.height());
    List<Point> first = wish.preferred().isEmpty() ? List.of(wish.target()) : wish.preferred();
    for (Point middle : first) {
      Bounds box = WordBoxes.upright(middle, wide, wish.height());
      if (obstacles.isClear(box.grown(clearance))) {
        return List.of(written(wish, middle, box));
      }
    }
    Bounds box = nearest(wish.target(), wide, wish.height());
    List<Item> items = new ArrayList<>();
    items.add(written(wish, box.center(), box));
    leader(wish, box)
        .ifPresent(
            line -> {
              obstacles.add(line);
              double head = Math.min(wish.height() / 2, line.length() * 0.6);
              items.add(new Item.Arrow(Path.of(line), head));
            });
    return items;
  }

  private Item.Text written(Wish wish, Point middle, Bounds box) {
    obstacles.add(box);
    return new Item.Text(middle, wish.text(), wish.height(), 0, Anchor.MIDDLE);
  }

  private Bounds nearest(Point target, double wide, double height) {
    return new Spots(obstacles, clearance, target, wide, height).best();
  }

  /** A leader where the words are not close by, or where something lies between. */
  private Optional<Line> leader(Wish wish, Bounds box) {
    Line line = Spots.leader(box.grown(clearance / 3), wish.target());
    // What lies in the last quarter is most often the very thing the words speak of.
    Line approach = new Line(line.start(), line.pointAt(0.75));
    boolean plain =
        line.length() <= wish.height() * 0.8 && obstacles.isClear(approach, clearance / 8);
    return plain ? Optional.empty() : Optional.of(line);
  }

  /**
   * Moves a dimension until its line and figures are clear: a distance outward on its own side, a
   * radius's figures to the best spot round the arc's point.
   *
   * @param wanted with the least offset that would do; the sign of its offset is kept
   * @param longest the longest form in which its figures may be written
   * @param height size of the font of the figures, its em, in mm
   */
  public Item.Dimension place(Item.Dimension wanted, String longest, double height) {
    double wide = width.of(longest, height);
    Item.Dimension placed =
        wanted.isRadius() ? besideArc(wanted, wide, height) : outward(wanted, wide, height);
    DimensionLayout layout = DimensionLayout.of(placed, wide, height);
    layout.extensions().forEach(obstacles::add);
    layout.line().ifPresent(obstacles::add);
    words.of(layout, wide, height).forEach(obstacles::add);
    return placed;
  }

  private Item.Dimension besideArc(Item.Dimension wanted, double wide, double height) {
    Bounds box = nearest(wanted.to(), wide + height, height);
    // The pointer starts at the end of the figures that faces the arc.
    double x =
        box.center().x() < wanted.to().x() ? box.maxX() - height / 2 : box.minX() + height / 2;
    return new Item.Dimension(
        new Point(x, box.center().y()), wanted.to(), 0, wanted.prefix(), wanted.value());
  }

  private Item.Dimension outward(Item.Dimension wanted, double wide, double height) {
    double side = wanted.offset() < 0 ? -1 : 1;
    double distance = Math.abs(wanted.offset());
    Item.Dimension moved = wanted;
    // What stands in the way is finite, so going outward comes to an end.
    while (!isClear(DimensionLayout.of(moved, wide, height), wide, height)) {
      distance += height / 2;
      moved =
          new Item.Dimension(
              wanted.from(), wanted.to(), side * distance, wanted.prefix(), wanted.value());
    }
    return moved;
  }

  private boolean isClear(DimensionLayout layout, double wide, double height) {
    return layout.line().stream().allMatch(line -> obstacles.isClear(line, clearance))
        && words.of(layout, wide, height).stream()
            .allMatch(box -> obstacles.isClear(box.grown(clearance / 2)));
  }
}
