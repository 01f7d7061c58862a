package org.bearingline.outside.dxf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bearingline.outside.Affine;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.outside.DrawnLayer;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Quoted;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePen;
import org.bearingline.outside.Tally;
import org.bearingline.problem.Problem;

/** Walks over all that a drawing shows in model space, inserted blocks too, and draws it. */
final class DxfWalk {

  /** More layers than this in a sentence nobody reads. */
  private static final int MOST_NAMES = 8;

  /** As measured: a copy of nothing takes as long as so many letters. */
  private static final int LETTERS_A_COPY = 40;

  private static final String UNNAMED = "0";

  private final DxfFile drawing;
  private final Optional<String> layer;
  private final Tally ignored;
  private final DrawingLimits limits = new DrawingLimits();
  private final List<Figure> figures = new ArrayList<>();
  private final Set<String> layersSeen = new TreeSet<>();
  private final DrawnLayer.Count drawnOn = new DrawnLayer.Count();

  /** The blocks that are being inserted, so that none is inserted into itself. */
  private final Set<String> inserting = new HashSet<>();

  DxfWalk(DxfFile drawing, Optional<String> layer, Tally ignored) {
    this.drawing = drawing;
    this.layer = layer.map(DxfFile::key);
    this.ignored = ignored;
  }

  List<Figure> figures() {
    return figures;
  }

  /** A few layers on which there is a line. */
  List<String> layersSeen() {
    return layersSeen.stream().limit(MOST_NAMES).toList();
  }

  /** Every layer on which a line was drawn. */
  List<DrawnLayer> layers() {
    return drawnOn.layers();
  }

  /** Walks over the whole drawing. */
  void all(Affine map) {
    entities(drawing.entities(), map, UNNAMED);
  }

  /**
   * @param layerOutside the layer of the INSERT that they come by: what is on layer 0 of a block
   *     takes it
   */
  private void entities(List<DxfEntity> entities, Affine map, String layerOutside) {
    for (DxfEntity entity : entities) {
      limits.addElement(entity.place());
      if (!inserting.isEmpty()) {
        limits.addLetters(entity.letters(), entity.place());
      }
      String on = entity.layer().equals(UNNAMED) ? layerOutside : entity.layer();
      if (entity.flags(67) == 1) {
        ignored.add("entity of a paper page", "entities of paper pages");
      } else if (entity.flags(60) == 1) {
        ignored.add("hidden entity", "hidden entities");
      } else if (isFrozen(on) || isOff(on) && !isInsert(entity)) {
        ignored.add(
            "entity on layer " + Quoted.of(on) + ", which is off or frozen",
            "entities on layer " + Quoted.of(on) + ", which is off or frozen");
      } else {
        entity(entity, map, on);
      }
    }
  }

  private static boolean isInsert(DxfEntity entity) {
    return entity.kind().equals("INSERT");
  }

  private boolean isFrozen(String name) {
    DxfFile.Layer found = drawing.layers().get(DxfFile.key(name));
    return !isAsked(name) && found != null && found.isFrozen();
  }

  private boolean isOff(String name) {
    DxfFile.Layer found = drawing.layers().get(DxfFile.key(name));
    return !isAsked(name) && found != null && found.isOff();
  }

  private boolean isAsked(String name) {
    return layer.isPresent() && layer.get().equals(DxfFile.key(name));
  }

  private void entity(DxfEntity entity, Affine map, String on) {
    if (isInsert(entity)) {
      Optional<Affine> plane = EntityStrokes.plane(entity);
      if (plane.isPresent()) {
        insert(entity, map.of(plane.get()), on);
      } else {
        ignored.add("block in a tilted plane", "blocks in tilted planes");
      }
      return;
    }
    Optional<EntityWords> other = EntityWords.of(entity);
    if (other.isPresent()) {
      ignored.add(other.get().one(), other.get().many());
      return;
    }
    layersSeen.add(Quoted.of(on));
    if (layer.isPresent() && !isAsked(on)) {
      ignored.add("entity on another layer", "entities on other layers");
      return;
    }
    StrokePen pen = new StrokePen(map, limits, entity.place());
    List<Stroke> strokes = EntityStrokes.draw(entity, map, pen, limits, ignored);
    if (!strokes.isEmpty()) {
      figures.add(new Figure(strokes, FillRule.EVEN_ODD, entity.source()));
      drawnOn.add(on);
    }
  }

  private void insert(DxfEntity insert, Affine map, String on) {
    String key = DxfFile.key(insert.name());
    DxfFile.Block block = drawing.blocks().get(key);
    if (block == null) {
      ignored.add("insert of a block that is missing", "inserts of blocks that are missing");
      return;
    }
    if (block.isElsewhere()) {
      ignored.add("block of another file", "blocks of other files");
      return;
    }
    if (inserting.size() >= DrawingLimits.DEEPEST || !inserting.add(key)) {
      throw new Problem(
          insert.place(),
          "the block “"
              + Quoted.of(insert.name())
              + "” is inserted into itself, without end; remove it");
    }
    List<Affine> places = Inserts.places(insert, block.base());
    limits.addLetters((long) LETTERS_A_COPY * places.size(), insert.place());
    for (Affine place : places) {
      entities(block.entities(), DrawingLimits.near(map.of(place), insert.place()), on);
    }
    inserting.remove(key);
  }
}
