package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.labels.LabelPlacer;
import org.bearingline.drawing.labels.Wish;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Mark;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.RoughLine;
import org.bearingline.routing.RoutingResult;

/** Puts words and measures on a drawing, clear of its lines. */
final class PartLabels {

  /** Radii of more sizes than this would crowd the picture; the report has them all. */
  private static final int MOST_RADII = 5;

  /** Extra waste in mm, 1/64 in, that a bit takes without noticing. */
  static final double WORTH_A_WORD = 25.4 / 64;

  /** The same words nearer than this, in heights of the lettering, are said once. */
  private static final double SAME_PLACE = 14;

  /** Room that an opening's own labels want, in heights of the lettering. */
  private static final double ROOM = 3;

  private final Plate plate;
  private final RoutingResult result;
  private final Units units;
  private final double height;
  private final LabelPlacer placer;
  private final List<Item> items = new ArrayList<>();

  private PartLabels(Plate plate, Units units, List<Layer> layers, double enlargement) {
    this.plate = plate;
    this.result = plate.result();
    this.units = units;
    this.height = Drawing.TEXT_HEIGHT * enlargement;
    this.placer = new LabelPlacer(Typeface.REGULAR::width, height / 4);
    for (Layer layer : layers) {
      if (layer.name() == LayerName.HOLDING) {
        continue; // Words stand on the hatch.
      }
      for (Item item : layer.items()) {
        avoid(item);
      }
    }
  }

  /** The same layers and one more with the words. */
  static List<Layer> with(Plate plate, Units units, List<Layer> layers, double enlargement) {
    PartLabels labels = new PartLabels(plate, units, layers, enlargement);
    labels.leftovers();
    labels.bridges();
    labels.sizes();
    boolean picture = layers.stream().anyMatch(layer -> layer.name() == LayerName.FEED);
    if (picture) {
      labels.openings();
    }
    labels.radii(picture && OpeningSizes.measures(labels.result.part()));
    labels.marks();
    labels.words(plate.marks().words());
    if (layers.stream().anyMatch(layer -> layer.name() == LayerName.HOLDING)) {
      plate.zones().get().ifPresent(zones -> labels.words(ZoneHatch.words(zones)));
    }
    if (layers.stream().anyMatch(layer -> layer.name() == LayerName.FEED)) {
      plate.worked().grain().ifPresent(labels::grain);
    }
    List<Layer> all = new ArrayList<>(layers);
    all.add(PartDrawing.layer(LayerName.LABELS, labels.items));
    return all;
  }

  private void avoid(Item item) {
    if (item instanceof Item.Stroke stroke) {
      placer.avoid(stroke.path());
    } else if (item instanceof Item.Fill fill) {
      for (Loop loop : fill.outline().loops()) {
        placer.avoid(Path.of(loop));
      }
    } else if (item instanceof Item.Arrow arrow) {
      placer.avoid(arrow.bounds());
    } else {
      placer.avoid(item.bounds());
    }
  }

  private void leftovers() {
    for (Leftover leftover : result.reach().leftovers()) {
      items.addAll(placer.place(Wish.at(leftover.at(), leftover.number() + "", height * 1.2)));
    }
  }

  private void bridges() {
    if (result.roughLine().isEmpty()) {
      return;
    }
    for (RoughLine.Bridge bridge : result.roughLine().get().bridged()) {
      if (bridge.extraDepth() > WORTH_A_WORD) {
        items.addAll(
            placer.place(Wish.at(bridge.at(), "saw passes over " + bridge.number(), height)));
      }
    }
  }

  private void sizes() {
    Bounds box = result.part().outline().bounds();
    double away = 2.5 * height;
    Point low = new Point(box.minX(), box.minY());
    size(low, new Point(box.maxX(), box.minY()), -away);
    size(low, new Point(box.minX(), box.maxY()), away);
  }

  /** On pictures, not on sheets: those are held to the work itself. */
  private void openings() {
    for (Item.Dimension wanted : OpeningSizes.of(result.part(), 1.2 * height)) {
      String words = wanted.prefix() + Length.printDrawn(wanted.value(), units);
      items.add(placer.place(wanted, words, height));
    }
  }

  private void size(Point from, Point to, double offset) {
    double value = from.distanceTo(to);
    items.add(
        placer.place(
            new Item.Dimension(from, to, offset, "", value),
            Length.printDrawn(value, units),
            height));
  }

  /** Of circles whose diameter is told nothing is said again. */
  private void radii(boolean diametersTold) {
    List<Arc> different = new ArrayList<>();
    Arc tightest = null;
    boolean told = false;
    for (Loop loop : loops()) {
      boolean circle = diametersTold && OpeningSizes.isCircle(loop);
      for (Primitive piece : loop.primitives()) {
        if (piece instanceof Arc arc) {
          if (!circle && different.stream().noneMatch(other -> sameRadius(arc, other))) {
            different.add(arc);
          }
          if (!arc.isCounterClockwise() && (tightest == null || arc.radius() < tightest.radius())) {
            tightest = arc;
            told = circle;
          }
        }
      }
    }
    if (different.size() <= MOST_RADII) {
      different.forEach(arc -> radius(arc, "R "));
    } else if (tightest != null && !told) {
      // A free curve has an arc of its own at every bend: only the one a bit must fit is told.
      radius(tightest, "tightest inside R ");
    }
  }

  private void radius(Arc arc, String prefix) {
    String words = prefix + Length.printDrawn(arc.radius(), units);
    items.addAll(placer.place(Wish.at(arc.middle(), words, height)));
  }

  private static boolean sameRadius(Arc a, Arc b) {
    return Math.abs(a.radius() - b.radius()) < 0.01;
  }

  private List<Loop> loops() {
    List<Loop> loops = new ArrayList<>(result.part().outline().loops());
    result.part().cavities().forEach(cavity -> loops.add(cavity.contour().loop()));
    return loops;
  }

  private void marks() {
    List<PlateMarks.Said> told = new ArrayList<>();
    for (Mark mark : result.part().marks()) {
      PlateMarks.Said said = new PlateMarks.Said(mark.label(), target(mark));
      boolean isTold =
          told.stream()
              .anyMatch(
                  other ->
                      other.text().equals(said.text())
                          && other.at().distanceTo(said.at()) < SAME_PLACE * height);
      if (!mark.label().isEmpty() && !isTold) {
        told.add(said);
      }
    }
    words(told);
  }

  private void words(List<PlateMarks.Said> said) {
    for (PlateMarks.Said words : said) {
      items.addAll(placer.place(Wish.at(words.at(), words.text(), height)));
    }
  }

  private void grain(GrainWork grain) {
    words(GrainMarks.words(grain, plate.serves()));
  }

  private Point target(Mark mark) {
    if (mark instanceof Mark.DrillCentre drill) {
      return drill.at();
    }
    if (mark instanceof Mark.CentreLine line) {
      return free(line.from(), line.to());
    }
    Mark.ShoulderLine line = (Mark.ShoulderLine) mark;
    return free(line.from(), line.to());
  }

  /** Where a line leaves the openings and their labels alone, its middle if it may be. */
  private Point free(Point from, Point to) {
    for (double share : new double[] {0.5, 0.8, 0.2, 0.92, 0.08}) {
      Point at = from.towards(to, share);
      boolean busy =
          result.part().cavities().stream()
              .map(cavity -> cavity.contour().loop().bounds().grown(ROOM * height))
              .anyMatch(box -> box.contains(at));
      if (!busy) {
        return at;
      }
    }
    return from.towards(to, 0.5);
  }
}
