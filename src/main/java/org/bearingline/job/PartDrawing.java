package org.bearingline.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.part.Cavity;
import org.bearingline.part.Mark;
import org.bearingline.routing.CutterRun;
import org.bearingline.routing.FeedArrow;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Station;
import org.bearingline.routing.Template;

/** Turns what routing found of one part and one of its templates into layers, full size. */
final class PartDrawing {

  /** Length of a feed arrow in mm on a full-size drawing. */
  private static final double ARROW = 18;

  private static final double ARROW_HEAD = 5;

  /** A shrunk arrow keeps this share of its length. */
  private static final double SHORTEST_ARROW = 0.4;

  private static final Map<LayerName, Role> ROLES =
      new EnumMap<>(
          Map.of(
              LayerName.TEMPLATE, Role.CUT,
              LayerName.ROUGH_LINE, Role.SAW,
              LayerName.MARKS, Role.MARK));

  private static final Map<LayerName, String> TITLES =
      new EnumMap<>(
          Map.of(
              LayerName.HOLDING,
                  "where clamps may stand, or tape where the dots slant the other way: no line to cut",
              LayerName.LEFTOVER, "leftover: wood the bit cannot reach",
              LayerName.RECESS, "recess or ledge: cut to its depth only",
              LayerName.PART, "finished part",
              LayerName.ROUGH_LINE, "rough line: saw here first",
              LayerName.CUTTER_CENTRE, "path of the bit's centre",
              LayerName.TEMPLATE, "template edge: work to this line",
              LayerName.MARKS, "marks to transfer",
              LayerName.LABELS, "words and measures"));

  private final RoutingResult result;

  /** The edges that the drawing's template shapes; other templates have their own drawing. */
  private final List<String> serves;

  private final PlateMarks beside;
  private final Optional<GrainWork> grain;
  private final Set<Station> stations;

  private final Map<LayerName, List<Item>> items = new EnumMap<>(LayerName.class);

  private PartDrawing(Plate plate) {
    this.result = plate.result();
    this.serves = plate.serves();
    this.beside = plate.marks();
    this.grain = plate.worked().grain();
    this.stations = plate.stations();
  }

  /**
   * Every layer but the words and where clamps may stand.
   *
   * @param withPlate whether the plate's own edge is drawn, where there is one
   */
  static List<Layer> layers(Plate plate, double enlargement, boolean withPlate) {
    PartDrawing drawing = new PartDrawing(plate);
    drawing.part();
    drawing.beside.grooves().forEach(item -> drawing.add(LayerName.GROOVE, item));
    plate.template().ifPresent(template -> drawing.along(template, enlargement, withPlate));
    drawing.marks();
    return drawing.layers();
  }

  private void along(Template template, double enlargement, boolean withPlate) {
    leftovers();
    roughLine();
    cutterCentre();
    if (withPlate) {
      outline(LayerName.TEMPLATE, template.plate());
    }
    feed(enlargement);
  }

  static Layer layer(LayerName name, List<Item> items) {
    return new Layer(name, ROLES.getOrDefault(name, Role.NOTE), TITLES.get(name), items);
  }

  private List<Layer> layers() {
    List<Layer> layers = new ArrayList<>();
    items.forEach(
        (name, drawn) ->
            layers.add(
                switch (name) {
                  case GROOVE -> new Layer(name, Role.NOTE, beside.grooveTitle(), drawn);
                  case FEED -> new Layer(name, Role.NOTE, FeedWords.title(stations), drawn);
                  default -> layer(name, drawn);
                }));
    return layers;
  }

  private void add(LayerName name, Item item) {
    items.computeIfAbsent(name, unused -> new ArrayList<>()).add(item);
  }

  private void outline(LayerName name, Outline outline) {
    for (Loop loop : outline.loops()) {
      add(name, new Item.Stroke(Path.of(loop)));
    }
  }

  private void part() {
    outline(LayerName.PART, result.part().outline());
    for (Cavity cavity : result.part().cavities()) {
      if (cavity.kind() != Cavity.Kind.THROUGH) {
        add(LayerName.RECESS, new Item.Stroke(Path.of(cavity.contour().loop())));
      }
    }
  }

  private void leftovers() {
    for (Leftover leftover : result.reach().leftovers()) {
      add(LayerName.LEFTOVER, new Item.Fill(leftover.piece()));
    }
  }

  private void roughLine() {
    result
        .roughLine()
        .ifPresent(
            line -> {
              line.paths().forEach(path -> add(LayerName.ROUGH_LINE, new Item.Stroke(path)));
              line.openings().forEach(path -> add(LayerName.ROUGH_LINE, new Item.Stroke(path)));
            });
  }

  private void cutterCentre() {
    for (CutterRun run : result.cutterCentre()) {
      if (serves.contains(run.edge())) {
        add(LayerName.CUTTER_CENTRE, new Item.Stroke(run.path()));
      }
    }
  }

  private void marks() {
    for (Mark mark : result.part().marks()) {
      add(LayerName.MARKS, item(mark));
    }
    beside.marks().forEach(item -> add(LayerName.MARKS, item));
  }

  private static Item item(Mark mark) {
    if (mark instanceof Mark.DrillCentre drill) {
      return new Item.Drill(drill.at(), drill.diameter());
    }
    if (mark instanceof Mark.CentreLine line) {
      return new Item.Stroke(Path.of(new Line(line.from(), line.to())));
    }
    Mark.ShoulderLine line = (Mark.ShoulderLine) mark;
    return new Item.Stroke(Path.of(new Line(line.from(), line.to())));
  }

  private void feed(double enlargement) {
    double wanted = ARROW * enlargement;
    Point last = null;
    String lastEdge = "";
    for (FeedArrow drawn : result.feed()) {
      FeedArrow arrow = grain.map(work -> work.first(drawn)).orElse(drawn);
      // Between two arrows as much is left free as an arrow is long, or they run into one band.
      boolean crowded = last != null && last.distanceTo(arrow.at()) < 2 * wanted;
      if (!serves.contains(arrow.edge())
          || (crowded && arrow.edge().equals(lastEdge))
          || grain.map(work -> work.waitsAt(arrow)).orElse(false)) {
        continue;
      }
      last = arrow.at();
      lastEdge = arrow.edge();
      // In a tight place the arrow shrinks, but never below what the eye can read.
      double length = Math.min(wanted, Math.max(arrow.room(), wanted * SHORTEST_ARROW));
      Point half = Point.polar(length / 2, arrow.degrees());
      Path shaft = Path.of(new Line(arrow.at().minus(half), arrow.at().plus(half)));
      add(LayerName.FEED, new Item.Arrow(shaft, ARROW_HEAD * length / ARROW));
    }
    grain.ifPresent(
        work ->
            new GrainMarks(enlargement)
                .items(work, serves)
                .forEach(item -> add(LayerName.FEED, item)));
  }
}
