package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Item;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.routing.grain.BackingBlock;
import org.bearingline.routing.grain.FeedStep;
import org.bearingline.routing.grain.GrainClass;
import org.bearingline.routing.grain.GrainReading;
import org.bearingline.routing.grain.GrainStretch;
import org.bearingline.routing.grain.ShortGrain;

/**
 * Marks of the grain along routed edges, told apart by form and not by colour: slanting ticks in
 * the wood where the fibres dive into it, two bars along the edge at end grain, a box where a
 * backing block is held, a line across a place of short grain. What is cut clean has its feed
 * arrows only. Sizes are of a full-size drawing, times its enlargement.
 */
final class GrainMarks {

  private static final double TICK = 4;
  private static final double TICK_SPACING = 6;
  private static final double CLEAR = 1.4;
  private static final double BAR = 9;
  private static final double BARS_APART = 1.8;
  private static final double BARS_SPACING = 60;
  private static final double BLOCK = 7;

  private final double enlargement;

  GrainMarks(double enlargement) {
    this.enlargement = enlargement;
  }

  /** Everything that belongs to edges of the given names. */
  List<Item> items(GrainWork grain, List<String> edges) {
    List<Item> items = new ArrayList<>();
    for (GrainReading reading : grain.readings()) {
      boolean left = reading.approach().isWoodOnLeft();
      for (GrainStretch stretch : reading.stretches()) {
        if (edges.contains(stretch.edge())) {
          items.addAll(marks(stretch.path(), stretch.grain(), left));
        }
      }
    }
    grain.plan().ifPresent(plan -> plan.steps().forEach(step -> blocks(step, edges, items)));
    for (ShortGrain place : grain.shortGrain()) {
      items.add(new Item.Stroke(place.chord()));
    }
    return items;
  }

  /** The marks of one stretch. */
  List<Item> marks(Path path, GrainClass grain, boolean woodOnLeft) {
    return switch (grain) {
      case TEARS -> ticks(path, woodOnLeft);
      case END_GRAIN -> bars(path, woodOnLeft);
      default -> List.of();
    };
  }

  private List<Item> ticks(Path path, boolean woodOnLeft) {
    List<Item> items = new ArrayList<>();
    for (Station at : stations(path, TICK_SPACING * enlargement)) {
      Point in = at.in(woodOnLeft);
      Point foot = at.point().plus(in.times(CLEAR * enlargement));
      Point lean = in.plus(at.along()).unit().times(TICK * enlargement);
      items.add(stroke(foot, foot.plus(lean)));
    }
    return items;
  }

  private List<Item> bars(Path path, boolean woodOnLeft) {
    List<Item> items = new ArrayList<>();
    double half = Math.min(BAR * enlargement, path.length() * 0.8) / 2;
    for (Station at : stations(path, BARS_SPACING * enlargement)) {
      Point in = at.in(woodOnLeft);
      Point along = at.along().times(half);
      for (int i = 0; i < 2; i++) {
        double deep = (CLEAR + i * BARS_APART) * enlargement;
        Point middle = at.point().plus(in.times(deep));
        items.add(stroke(middle.minus(along), middle.plus(along)));
      }
    }
    return items;
  }

  private void blocks(FeedStep step, List<String> edges, List<Item> items) {
    boolean left = step.approach().isWoodOnLeft();
    for (BackingBlock block : step.blocks()) {
      if (edges.contains(block.edge())) {
        Point in = left ? block.travel().left() : block.travel().left().times(-1);
        Point out = block.travel().times(BLOCK * enlargement);
        Point deep = in.times(2 * BLOCK * enlargement);
        Point a = block.at();
        items.add(
            new Item.Stroke(
                Path.of(
                    new Line(a, a.plus(out)),
                    new Line(a.plus(out), a.plus(out).plus(deep)),
                    new Line(a.plus(out).plus(deep), a.plus(deep)),
                    new Line(a.plus(deep), a))));
      }
    }
  }

  /** What to write beside the numbered places. */
  static List<PlateMarks.Said> words(GrainWork grain, List<String> edges) {
    List<PlateMarks.Said> words = new ArrayList<>();
    grain
        .plan()
        .ifPresent(
            plan -> {
              for (BackingBlock block : plan.blocks()) {
                if (edges.contains(block.edge())) {
                  words.add(new PlateMarks.Said("block " + block.number(), block.at()));
                }
              }
            });
    for (ShortGrain place : grain.shortGrain()) {
      words.add(new PlateMarks.Said("short grain " + place.number(), place.at()));
    }
    return words;
  }

  /** A place on an edge with the direction of travel there. */
  private record Station(Point point, Point along) {
    Point in(boolean woodOnLeft) {
      return woodOnLeft ? along.left() : along.left().times(-1);
    }
  }

  /** Places along a path, evenly apart, at least one. */
  private static List<Station> stations(Path path, double spacing) {
    double length = path.length();
    int count = Math.max(1, (int) Math.round(length / spacing));
    List<Station> stations = new ArrayList<>();
    double before = 0;
    int next = 0;
    for (Primitive piece : path.primitives()) {
      double upTo = before + piece.length();
      while (next < count && (next + 0.5) * length / count <= upTo) {
        double share = ((next + 0.5) * length / count - before) / piece.length();
        double held = Math.max(0, Math.min(1, share));
        stations.add(new Station(piece.pointAt(held), piece.tangentAt(held)));
        next++;
      }
      before = upTo;
    }
    return stations;
  }

  private static Item stroke(Point from, Point to) {
    return new Item.Stroke(Path.of(new Line(from, to)));
  }
}
