package org.bearingline.outside.dxf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import org.bearingline.outline.Point;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.problem.Problem;

/** What a DXF file holds, by its sections. */
final class DxfFile {

  /** Bits of group 70 of a layer and a block. */
  private static final int FROZEN = 1;

  private static final int FROM_ANOTHER_FILE = 4 | 8;

  /**
   * What a layer's entry in its table says.
   *
   * @param isFrozen whether it is left out altogether
   * @param isOff whether its lines are; a layer that is off has its colour negated
   */
  record Layer(boolean isFrozen, boolean isOff) {}

  /**
   * A block.
   *
   * @param base which of its points an INSERT puts at its own place
   * @param isElsewhere whether its entities are in another file
   * @param entities in its own coordinates
   */
  record Block(Point base, boolean isElsewhere, List<DxfEntity> entities) {}

  private final DxfTags tags;
  private final Map<String, Layer> layers = new HashMap<>();
  private final Map<String, Block> blocks = new HashMap<>();
  private final List<DxfEntity> entities = new ArrayList<>();
  private OptionalInt units = OptionalInt.empty();
  private int count;

  private DxfFile(DxfTags tags) {
    this.tags = tags;
  }

  /** Reads a whole file; what is damaged or cut short is a Problem at its line. */
  static DxfFile read(String file, byte[] bytes) {
    DxfFile drawing = new DxfFile(new DxfTags(file, bytes));
    drawing.sections();
    return drawing;
  }

  /** By {@link #key}. */
  Map<String, Layer> layers() {
    return layers;
  }

  /** By {@link #key}. */
  Map<String, Block> blocks() {
    return blocks;
  }

  List<DxfEntity> entities() {
    return entities;
  }

  /** The code of {@code $INSUNITS}; empty where the file does not say. */
  OptionalInt units() {
    return units;
  }

  private void sections() {
    while (true) {
      DxfTag tag = tags.next();
      if (tag.is(0, "EOF")) {
        return;
      }
      if (!tag.is(0, "SECTION")) {
        throw new Problem(tag.place(), "a SECTION must begin here; the file is damaged or no DXF");
      }
      DxfTag name = tags.next();
      switch (name.value()) {
        case "HEADER" -> header();
        case "TABLES" -> tables();
        case "BLOCKS" -> blocksSection();
        case "ENTITIES" -> entities(entities, "ENDSEC");
        default -> skip();
      }
      tags.next();
    }
  }

  /** Goes on to the end of the section, which stays the next pair. */
  private void skip() {
    while (!atEnd("ENDSEC")) {
      tags.next();
    }
  }

  private boolean atEnd(String end) {
    DxfTag tag = tags.peek();
    if (tag.is(0, "EOF") || tag.is(0, "SECTION")) {
      throw new Problem(tag.place(), end + " is missing before this; the file is damaged");
    }
    return tag.is(0, end);
  }

  private void header() {
    String variable = "";
    while (!atEnd("ENDSEC")) {
      DxfTag tag = tags.next();
      if (tag.code() == 9) {
        variable = tag.value();
      } else if (variable.equals("$INSUNITS") && tag.code() == 70) {
        units = OptionalInt.of(tag.whole());
      }
    }
  }

  private void tables() {
    while (!atEnd("ENDSEC")) {
      DxfTag tag = tags.next();
      if (tag.is(0, "LAYER")) {
        DxfEntity layer = entity(tag);
        layers.put(
            key(layer.name()), new Layer((layer.flags(70) & FROZEN) != 0, layer.number(62, 7) < 0));
      }
    }
  }

  private void blocksSection() {
    while (!atEnd("ENDSEC")) {
      DxfTag tag = tags.next();
      if (tag.is(0, "BLOCK")) {
        DxfEntity head = entity(tag);
        List<DxfEntity> inside = new ArrayList<>();
        entities(inside, "ENDBLK");
        Point base = new Point(head.number(10, 0), head.number(20, 0));
        boolean isElsewhere = (head.flags(70) & FROM_ANOTHER_FILE) != 0;
        blocks.put(key(head.name()), new Block(base, isElsewhere, inside));
        entity(tags.next());
      }
    }
  }

  /** Reads entities up to an end mark, which stays the next pair. */
  private void entities(List<DxfEntity> into, String end) {
    DxfEntity polyline = null;
    while (!atEnd(end)) {
      DxfTag tag = tags.next();
      if (tag.code() != 0) {
        continue;
      }
      DxfEntity entity = entity(tag);
      switch (entity.kind()) {
        case "VERTEX" -> {
          if (polyline != null) {
            polyline.add(entity);
          }
        }
        case "SEQEND" -> polyline = null;
        default -> {
          polyline = entity.kind().equals("POLYLINE") ? entity : null;
          into.add(entity);
        }
      }
    }
  }

  /** The entity that a pair with code 0 begins. */
  private DxfEntity entity(DxfTag kind) {
    if (++count > DrawingLimits.MOST_POINTS) {
      throw new Problem(
          kind.place(), "the drawing has more than 4,000,000 entities; take a part of it");
    }
    DxfEntity entity = new DxfEntity(kind);
    while (tags.peek().code() != 0) {
      entity.take(tags.next());
    }
    return entity;
  }

  /** Names of layers and blocks do not tell capitals from small letters. */
  static String key(String name) {
    return name.toUpperCase(Locale.ROOT);
  }
}
